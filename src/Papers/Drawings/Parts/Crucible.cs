namespace Calx.Papers.Drawings.Parts;

/// <summary>A porcelain crucible of 15 cm³: 39 mm wide at the mouth, 32 mm high. Common practice, no source.</summary>
internal static class Crucible
{
    private const double Mouth = 19.5;
    private const double Height = 32;
    private const double Foot = 10;

    public static PartShape Shape()
    {
        Stroke half = new Pen(Foot, 0).Curve(new(15.5, 2), new(17.5, 14), new(Mouth, Height)).Open();
        Stroke wall = half with { Points = [.. half.Points.Reverse().Select(p => new Spot(-p.X, p.Y)), .. half.Points] };
        var cavity = new Cavity(half.Points);
        return new PartShape(
            [wall],
            PartShape.BothSides([.. new double[] { 9, 23, 26, 29 }.Select(y => new Spot(cavity.HalfAt(y), y))]),
            Top: Height,
            cavity);
    }
}
