namespace Calx.Papers.Drawings.Parts;

/// <summary>A low-voltage supply for direct current, 100 mm wide: its positive terminal on the left, its negative on the right, a
/// knob between. Common practice, no source.</summary>
internal static class Supply
{
    private const double Half = 50;
    private const double Height = 84;
    private const double Terminal = 32;
    private const double Sign = 5;
    private const double SignAt = 66;

    public static PartShape Shape() => new(
        [
            Pen.Box(-Half, 4, Half, Height), Pen.Box(-Half + 8, 0, -Half + 20, 4), Pen.Box(Half - 20, 0, Half - 8, 4),
            .. Socket.At(-Terminal, Height), .. Socket.At(Terminal, Height),
            new Pen(-Terminal - Sign, SignAt).To(-Terminal + Sign, SignAt).Open(), new Pen(-Terminal, SignAt - Sign).To(-Terminal, SignAt + Sign).Open(),
            new Pen(Terminal - Sign, SignAt).To(Terminal + Sign, SignAt).Open(),
            Pen.Circle(0, 34, 14), new Pen(0, 34).To(8, 45).Open(),
        ],
        PartShape.BothSides(new(Half - 8, 20), new(Half - 8, 32), new(Half - 8, 46), new(Half - 3, Height - 4), new(Half, Height - 12)),
        Terminals: [new(-Terminal, Height + Socket.Height), new(Terminal, Height + Socket.Height)]);
}
