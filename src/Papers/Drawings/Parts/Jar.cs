namespace Calx.Papers.Drawings.Parts;

/// <summary>A wide jar of 1 dm³: 100 mm wide, 150 mm high. Common practice, no source.</summary>
internal static class Jar
{
    /// <summary>Half its width.</summary>
    public const double Half = 50;

    private const double Height = 150;

    public static PartShape Shape()
    {
        Stroke half = new Pen(Half - 8, 0).Curve(new(Half - 3, 0), new(Half, 3), new(Half, 8)).To(Half, Height).Open();
        return new PartShape(
            [half with { Points = [.. half.Points.Reverse().Select(p => new Spot(-p.X, p.Y)), .. half.Points] }],
            PartShape.BothSides([.. new double[] { 60, 80, 100, 120 }.Select(y => new Spot(Half, y))]),
            Top: Height,
            new Cavity(half.Points));
    }
}
