namespace Calx.Papers.Drawings.Parts;

/// <summary>A loose plug of wool in the neck of a vessel, with the threads by which it is told from a stopper. Common practice,
/// no source.</summary>
internal static class Plug
{
    private const double Depth = 18;
    private const double Dome = 9;

    /// <summary>A plug that fills a neck; the mouth is at y = 0.</summary>
    /// <param name="neck">Half the width of the neck, in mm.</param>
    public static PartShape In(double neck) => new(
        [
            new Pen(0, -Depth - 4).Curve(new(6, -Depth - 6), new(neck - 2, -Depth), new(neck, -Depth + 3)).To(neck, 0)
                .Curve(new(neck, Dome - 3), new(7, Dome - 2), new(0, Dome)).AndMirrored().Closed(),
            Thread(neck, -13), Thread(neck, -7), Thread(neck, -1),
        ],
        PartShape.BothSides(new(neck - 5, 5), new(neck - 8, 6), new(neck - 9, -6)),
        Top: Dome);

    private static Stroke Thread(double neck, double y) => new Pen(-neck + 4, y)
        .Curve(new(-neck + 8, y + 6), new(-5, y + 6), new(0, y)).Curve(new(5, y - 6), new(neck - 8, y - 6), new(neck - 4, y)).Open(Stroke.Fine);
}
