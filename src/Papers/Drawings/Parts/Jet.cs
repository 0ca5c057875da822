namespace Calx.Papers.Drawings.Parts;

/// <summary>Gas that burns at the hole of a reduction tube. Common practice, no source.</summary>
internal static class Jet
{
    private const double Height = 28;

    /// <summary>The flame over the hole, where the tube lies along the x axis.</summary>
    public static PartShape Shape()
    {
        Stroke flame = new Pen(ReductionTube.HalfHole, 0).Curve(new(7, 7), new(4, 17), new(0, Height)).AndMirrored().Open(Stroke.Fine);
        Spot[] middle = [.. new double[] { 16, 9, 21 }.Select(y => new Spot(0, y))];
        return new PartShape([flame, flame with { Points = [.. flame.Points.Select(p => new Spot(0.5 * p.X, 0.5 * p.Y))] }], [.. flame.Points.Where((_, i) => i is 10 or 16 or 34 or 40), middle[0]])
            .Moved(ReductionTube.Hole, ReductionTube.Half);
    }
}
