namespace Calx.Papers.Drawings.Parts;

/// <summary>The cap of a spirit burner: it sits on the holder and covers the wick. Common practice, no source.</summary>
internal static class Cap
{
    private const double Half = 12;
    private const double Height = 20;

    public static PartShape Shape() => new(
        [new Pen(Half, 0).To(Half, Height - 5).Curve(new(Half, Height - 2), new(Half - 2, Height), new(Half - 5, Height)).AndMirrored().Open()],
        PartShape.BothSides(new(Half, 10), new(Half, 6), new(6, Height)),
        Top: Height);
}
