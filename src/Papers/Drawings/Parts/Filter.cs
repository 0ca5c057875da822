namespace Calx.Papers.Drawings.Parts;

/// <summary>A filter funnel with its paper: a cone of 60°, 75 mm wide, on a stem of 70 mm, two parallel lines open at its
/// tip. Common practice, no source.</summary>
internal static class Filter
{
    /// <summary>Half the width of the stem.</summary>
    public const double Stem = 4;

    /// <summary>Height at which a clamp grips the stem.</summary>
    public const double Grip = 56;

    private const double Cone = 70;
    private const double Mouth = 37.5;
    private const double PaperOff = 3;
    private const double PaperBelow = 8;

    /// <summary>Width of a cone of 60° to one side of its middle, for its height.</summary>
    private static readonly double Widening = Math.Tan(Math.PI / 6);

    public static PartShape Shape()
    {
        double top = Cone + ((Mouth - Stem) / Widening);
        double paperTop = top - PaperBelow;
        double fold = Cone - ((Stem - PaperOff) / Widening);
        var paper = new Cavity([new(0, fold), new(HalfOutsideAt(paperTop) - PaperOff, paperTop)]);
        return new PartShape(
            [
                new Pen(-Mouth, top).To(-Stem, Cone).To(-Stem, 0).Open(),
                new Pen(Mouth, top).To(Stem, Cone).To(Stem, 4).Open(),
                new Pen(-paper.HalfAt(paperTop), paperTop).To(0, fold).To(paper.HalfAt(paperTop), paperTop).Open(Stroke.Fine),
            ],
            PartShape.BothSides([.. new double[] { 88, 100, 118, 124 }.Select(y => new Spot(HalfOutsideAt(y), y))]),
            Cavity: paper);
    }

    /// <summary>Half the width of the funnel at a height.</summary>
    public static double HalfOutsideAt(double height) => Stem + (Math.Max(0, height - Cone) * Widening);

    /// <summary>The height at which the cone has half a width: what fits into a mouth hangs there.</summary>
    public static double HeightAt(double half) => Cone + ((half - Stem) / Widening);
}
