namespace Calx.Papers.Drawings.Parts;

/// <summary>A beaker of 250 cm³: 70 mm wide, 95 mm high, with its lip. Common practice, no source.</summary>
internal static class Beaker
{
    /// <summary>Height at which the foot of a basin is that sits in the mouth: its wall is then 36 mm from the middle where the lip is.</summary>
    public const double BasinSits = 76.15;

    private const double Height = 95;
    private const double Half = 35;

    public static PartShape Shape()
    {
        Stroke half = new Pen(Half - 7, 0).Curve(new(Half - 3, 0), new(Half, 3), new(Half, 7)).To(Half, Height - 4).Open();
        Spot[] left = [new(-Half - 4, Height + 1), new(-Half, Height - 6), .. half.Points.Reverse().Skip(1).Select(p => new Spot(-p.X, p.Y))];
        return new PartShape(
            [half with { Points = [.. left, .. half.Points, new(Half + 1, Height)] }],
            PartShape.BothSides([.. new double[] { 15, 55, 70, 82 }.Select(y => new Spot(Half, y))]),
            Cavity: new Cavity([.. half.Points, new(Half, Height)]));
    }
}
