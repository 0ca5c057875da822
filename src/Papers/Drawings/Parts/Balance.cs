namespace Calx.Papers.Drawings.Parts;

/// <summary>A top-pan balance, 190 mm wide, with display and pan. Common practice, no source.</summary>
internal static class Balance
{
    private const double Half = 95;
    private const double Case = 58;
    private const double Pan = 70;

    public static PartShape Shape() => new(
        [
            Pen.Box(-78, 0, -60, 7),
            Pen.Box(60, 0, 78, 7),
            Pen.Box(-8, Case, 8, Pan),
            new Pen(Half - 8, 7).Curve(new(Half - 3, 7), new(Half, 10), new(Half, 15)).To(Half - 4, Case - 8)
                .Curve(new(Half - 5, Case - 3), new(Half - 8, Case), new(Half - 14, Case)).AndMirrored().Closed(),
            Pen.Box(-50, 20, 22, 44),
            Pen.Circle(44, 32, 6),
            Pen.Circle(66, 32, 6),
            Pen.Box(-66, Pan, 66, Pan + 4),
        ],
        PartShape.BothSides(new(Half - 10, 20), new(Half - 14, 48)),
        Top: Pan + 4);
}
