namespace Calx.Papers.Drawings.Parts;

/// <summary>A heat-resistant mat, 6 mm thick, as wide as what stands on it asks for. Common practice, no source.</summary>
internal static class Mat
{
    private const double Thickness = 6;
    private const double Least = 200;
    private const double Margin = 14;

    /// <summary>The mat under a row of parts.</summary>
    /// <param name="carriedInMillimetres">How wide the row is.</param>
    public static PartShape Under(double carriedInMillimetres)
    {
        double half = Math.Max(Least, carriedInMillimetres + (2 * Margin)) / 2;
        return new PartShape(
            [Pen.Box(-half, 0, half, Thickness)],
            PartShape.BothSides(new Spot(half - 4, Thickness / 2), new Spot(half - 7, Thickness - 1.5), new Spot(half - 7, 1.5)),
            Top: Thickness);
    }
}
