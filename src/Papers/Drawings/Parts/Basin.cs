namespace Calx.Papers.Drawings.Parts;

/// <summary>An evaporating basin, 80 mm wide with its lip, 34 mm deep. Common practice, no source.</summary>
internal static class Basin
{
    public static PartShape Shape()
    {
        Stroke half = new Pen(15, 0).Curve(new(28, 2), new(37, 14), new(40, 34)).Open();
        Spot[] left = [new(-44, 36), .. half.Points.Reverse().Select(p => new Spot(-p.X, p.Y))];
        var cavity = new Cavity(half.Points);
        return new PartShape(
            [half with { Points = [.. left, .. half.Points] }],
            PartShape.BothSides([.. new double[] { 8, 18, 26 }.Select(y => new Spot(cavity.HalfAt(y), y))]),
            Cavity: cavity);
    }
}
