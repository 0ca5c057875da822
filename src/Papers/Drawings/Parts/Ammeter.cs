namespace Calx.Papers.Drawings.Parts;

/// <summary>An ammeter, 72 mm wide: a display with the letter A, a terminal to either side. Common practice, no source.</summary>
internal static class Ammeter
{
    private const double Half = 36;
    private const double Height = 72;
    private const double Terminal = 24;

    public static PartShape Shape() => new(
        [
            Pen.Box(-Half, 0, Half, Height), .. Socket.At(-Terminal, Height), .. Socket.At(Terminal, Height),
            Pen.Circle(0, 38, 20),
            new Pen(-8, 28).To(0, 49).To(8, 28).Open(), new Pen(-5.2, 35.5).To(5.2, 35.5).Open(),
        ],
        PartShape.BothSides(new(Half - 3, Height - 4), new(Half, Height - 10), new(Half - 3, Height - 16)),
        Terminals: [new(-Terminal, Height + Socket.Height), new(Terminal, Height + Socket.Height)]);
}
