namespace Calx.Papers.Drawings.Parts;

/// <summary>A holder across the rim of a beaker that keeps strips apart: a bar with a slot for each. Common practice, no
/// source.</summary>
internal static class Holder
{
    private const double HalfLength = 46;
    private const double Thick = 8;
    private const double FirstSlot = 16;

    /// <summary>How far from the middle each of so many strips hangs, from left to right.</summary>
    public static double[] Slots(int strips) => strips switch { 0 => [], 1 => [-FirstSlot], _ => [-FirstSlot, FirstSlot] };

    /// <summary>The holder with a slot for each strip.</summary>
    public static PartShape Shape(int strips)
    {
        double[] edges = [-HalfLength, .. Slots(strips).SelectMany(x => new[] { x - Strip.Half, x + Strip.Half }), HalfLength];
        return new PartShape(
            [.. edges.Chunk(2).Select(piece => Pen.Box(piece[0], 0, piece[1], Thick))],
            PartShape.BothSides(new(HalfLength - 6, Thick / 2), new(HalfLength - 14, Thick - 1)),
            Top: Thick);
    }
}
