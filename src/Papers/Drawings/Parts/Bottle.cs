namespace Calx.Papers.Drawings.Parts;

/// <summary>A plastic bottle of 2 dm³: 108 mm wide, 290 mm high. Common practice, no source.</summary>
internal static class Bottle
{
    /// <summary>Half the width of the neck.</summary>
    public const double Neck = 13;

    private const double Half = 54;
    private const double Mouth = 290;

    public static PartShape Shape()
    {
        Stroke half = new Pen(Half - 10, 0).Curve(new(Half - 3, 0), new(Half, 4), new(Half, 12)).To(Half, 185)
            .Curve(new(Half, 225), new(Neck, 225), new(Neck, 265)).To(Neck, Mouth).Open();
        return new PartShape(
            [half with { Points = [.. half.Points.Reverse().Select(p => new Spot(-p.X, p.Y)), .. half.Points] }],
            PartShape.BothSides([.. new double[] { 90, 115, 140, 165 }.Select(y => new Spot(Half, y))]),
            Top: Mouth,
            new Cavity(half.Points));
    }
}
