namespace Calx.Papers.Drawings.Parts;

/// <summary>A stand with a clamp: a base, a rod beside, a boss on it, and an arm to two jaws that grip from both sides.
/// Common practice, no source.</summary>
internal static class Clamp
{
    /// <summary>Height of the base's upper face.</summary>
    public const double Base = 9;

    private const double Rod = 86;
    private const double HalfRod = 4;
    private const double Boss = 12;
    private const double Jaw = 6;
    private const double AboveBoss = 40;
    private const double LeastHeight = 260;

    /// <summary>Where the rod stands behind a tube that lies nearly level.</summary>
    private const double RodBehind = ReductionTube.Grip;

    /// <summary>The stand behind a tube that lies nearly level, its jaws above and below the tube near its mouth.</summary>
    /// <param name="axisInMillimetres">Height of the tube's axis at its middle.</param>
    public static PartShape Across(double axisInMillimetres)
    {
        const double HalfJaw = 8;
        const double Outer = ReductionTube.Half + Jaw;
        double height = Math.Max(LeastHeight, axisInMillimetres + (2 * AboveBoss));
        double Edge(double x, int up) => axisInMillimetres + (x * Math.Tan(ReductionTube.Tilt)) + (up * Outer / Math.Cos(ReductionTube.Tilt));
        Stroke Side(double x, int up) => new Pen(x, Edge(x, up)).To(x, up > 0 ? height : Base).Open();
        Stroke Gripping(int up) => Pen.Box(RodBehind - HalfJaw, up * ReductionTube.Half, RodBehind + HalfJaw, up * Outer);
        (double left, double right) = (RodBehind - HalfRod, RodBehind + HalfRod);
        return new PartShape(
            [
                Pen.Box(-70, 0, RodBehind + 40, Base),
                Side(left, -1), Side(right, -1), Side(left, 1), Side(right, 1), new Pen(left, height).To(right, height).Open(),
                .. new PartShape([Gripping(1), Gripping(-1)], []).Turned(ReductionTube.Tilt).Moved(0, axisInMillimetres).Strokes,
            ],
            [.. new[] { height - 12, height - 25, 60, 90, 40 }.Select(y => new Spot(right, y)), new(left, height - 12)],
            Top: Base);
    }

    /// <summary>The stand with its jaws around something.</summary>
    /// <param name="gripInMillimetres">Height of the jaws' middle.</param>
    /// <param name="halfInMillimetres">Half the width of what they grip.</param>
    public static PartShape Around(double gripInMillimetres, double halfInMillimetres)
    {
        double grip = gripInMillimetres;
        double half = halfInMillimetres;
        double height = Math.Max(LeastHeight, grip + AboveBoss);
        return new PartShape(
            [
                Pen.Box(-70, 0, Rod + 20, Base),
                new Pen(Rod - HalfRod, Base).To(Rod - HalfRod, height).To(Rod + HalfRod, height).To(Rod + HalfRod, Base).Open(),
                Pen.Box(half + Jaw, grip - 2.5, Rod - Boss, grip + 2.5),
                Pen.Box(Rod - Boss, grip - Boss, Rod + Boss, grip + Boss),
                Pen.Box(-half - Jaw, grip - 8, -half, grip + 8),
                Pen.Box(half, grip - 8, half + Jaw, grip + 8),
            ],
            [
                .. new[] { height - 15, grip - 30, grip - 60, 60, 40 }.Select(y => new Spot(Rod + HalfRod, y)),
                new(Rod, grip), new(-half - (Jaw / 2), grip), new(-half - (Jaw / 2), grip + 5),
            ],
            Top: Base);
    }
}
