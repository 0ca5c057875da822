namespace Calx.Papers.Drawings.Parts;

/// <summary>A strip of metal, 80 mm long: seen from its edge where it hangs, from its side where it lies. Common practice, no
/// source.</summary>
internal static class Strip
{
    /// <summary>Half its thickness, drawn thicker than it is.</summary>
    public const double Half = 2;

    /// <summary>How far it hangs below what holds it.</summary>
    public const double Below = 66;

    private const double Above = 16;
    private const double Thick = 3;
    private const double HalfLength = 40;

    /// <summary>A strip that hangs; the holder's lower edge is at y = 0.</summary>
    public static PartShape Hanging() => new(
        [Pen.Box(-Half, -Below, Half, Above)],
        [new(0, Above - 4), new(0, -Below + 8), new(0, -Below + 20), new(0, -Below + 32)],
        Terminals: [new(0, Above)]);

    /// <summary>A strip that lies flat.</summary>
    public static PartShape Lying() => new(
        [Pen.Box(-HalfLength, 0, HalfLength, Thick)],
        PartShape.BothSides(new(HalfLength - 6, Thick / 2), new(HalfLength - 14, Thick)),
        Top: Thick);
}
