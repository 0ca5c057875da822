namespace Calx.Papers.Drawings.Parts;

/// <summary>A test tube, 19 mm wide and 150 mm long, round at its foot. Common practice, no source.</summary>
internal static class Tube
{
    /// <summary>Half its width.</summary>
    public const double Half = 9.5;

    /// <summary>Height at which a clamp grips it, near its mouth.</summary>
    public const double Grip = 122;

    private const double Length = 150;

    /// <summary>How far control points of a quarter circle lie from its ends, in radii: the usual 4/3 tan(π/8).</summary>
    private const double Quarter = 0.5523;

    public static PartShape Shape()
    {
        double lean = Half * Quarter;
        Stroke half = new Pen(0, 0).Curve(new(lean, 0), new(Half, Half - lean), new(Half, Half)).To(Half, Length).Open();
        Spot[] right = [.. half.Points, new(Half + 2, Length + 1.5)];
        return new PartShape(
            [half with { Points = [.. right.Skip(1).Reverse().Select(p => new Spot(-p.X, p.Y)), .. right] }],
            PartShape.BothSides(new(Half, 75), new(Half, 90), new(Half, 142)),
            Cavity: new Cavity(half.Points));
    }
}
