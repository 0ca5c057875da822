namespace Calx.Papers.Drawings.Parts;

/// <summary>A conical flask of 250 cm³: 84 mm wide, 141 mm high. Common practice, no source.</summary>
internal static class Flask
{
    /// <summary>Half the width of the neck.</summary>
    public const double Neck = 15;

    /// <summary>Height at which the lip begins: the narrowest of the mouth.</summary>
    public const double Mouth = 138;

    /// <summary>Height at which a clamp grips the neck.</summary>
    public const double Grip = 122;

    private const double Half = 42;
    private const double Shoulder = 105;

    public static PartShape Shape()
    {
        Stroke half = new Pen(Half - 7, 0).Curve(new(Half + 1, 0), new(Half + 0.5, 5), new(Half - 2, 12))
            .To(Neck + 2, Shoulder - 6).Curve(new(Neck + 0.6, Shoulder - 2), new(Neck, Shoulder), new(Neck, Shoulder + 4)).To(Neck, Mouth).Open();
        Spot[] right = [.. half.Points, new(Neck + 3, Mouth + 3)];
        var cavity = new Cavity(half.Points);
        return new PartShape(
            [half with { Points = [.. right.Reverse().Select(p => new Spot(-p.X, p.Y)), .. right] }],
            PartShape.BothSides([.. new double[] { 50, 65, 80, 95 }.Select(y => new Spot(cavity.HalfAt(y), y))]),
            Top: Mouth,
            cavity);
    }
}
