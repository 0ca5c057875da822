namespace Calx.Papers.Drawings.Parts;

/// <summary>A variable resistor with a slider, 84 mm wide: a winding between two ends, and the slider above it. Common practice,
/// no source.</summary>
internal static class Resistor
{
    private const double Half = 42;
    private const double Foot = 8;
    private const double Bottom = 8;
    private const double Top = 32;
    private const double End = 44;
    private const double Turns = 14;

    public static PartShape Shape() => new(
        [
            Side(1), Side(-1), Pen.Box(-Half + Foot, Bottom, Half - Foot, Top), .. Enumerable.Range(1, (int)Turns - 1).Select(Turn),
            Pen.Box(-Half + Foot, End - 5, Half - Foot, End - 2, Stroke.Body), Pen.Box(2, Top, 14, End + 4),
            .. Socket.At(-Half + (Foot / 2), End), .. Socket.At(Half - (Foot / 2), End),
        ],
        PartShape.BothSides(new(Half - (Foot / 2), 12), new(Half - (Foot / 2), 22), new(Half - (Foot / 2), 33)),
        Terminals: [new(-Half + (Foot / 2), End + Socket.Height), new(Half - (Foot / 2), End + Socket.Height)]);

    private static Stroke Side(int right) => Pen.Box(right > 0 ? Half - Foot : -Half, 0, right > 0 ? Half : -Half + Foot, End);

    private static Stroke Turn(int i)
    {
        double x = -Half + Foot + ((2 * (Half - Foot)) * i / Turns);
        return new Pen(x - 1.2, Bottom).To(x + 1.2, Top).Open(Stroke.Fine);
    }
}
