namespace Calx.Papers.Drawings.Parts;

/// <summary>A gauze, 125 mm wide, cut across: the ends of its wires in two lines. Common practice, no source.</summary>
internal static class Gauze
{
    private const double Half = 64;
    private const double Thickness = 3;

    public static PartShape Shape() => new(
        [Pen.Box(-Half, 0, Half, Thickness), .. Enumerable.Range(0, 15).Select(i => Wire((i - 7) * 8))],
        PartShape.BothSides(new Spot(Half - 3, Thickness), new Spot(Half - 12, Thickness)),
        Top: Thickness);

    private static Stroke Wire(double x) => new Pen(x - 2, 0).To(x + 2, Thickness).Open(Stroke.Fine);
}
