namespace Calx.Papers.Drawings.Parts;

/// <summary>Gas that is led into the mouth of a reduction tube: a bung, a glass tube through it, rubber tubing, and an arrow the
/// way the gas goes. Common practice, no source.</summary>
internal static class Gas
{
    private const double Inside = ReductionTube.Mouth - 10;
    private const double Outside = ReductionTube.Mouth + 10;
    private const double HalfGlass = 2.2;
    private const double HalfRubber = 4;
    private const double RubberFrom = 110;
    private const double RubberTo = 142;
    private const double ArrowTip = 148;
    private const double ArrowEnd = 176;

    /// <summary>It, where the tube lies along the x axis.</summary>
    public static PartShape Shape()
    {
        const double Half = ReductionTube.Half;
        return new PartShape(
            [
                new Pen(Inside, Half - 1).To(ReductionTube.Mouth, Half).To(Outside, Half + 2).To(Outside, -Half - 2).To(ReductionTube.Mouth, -Half).To(Inside, -Half + 1).Closed(),
                new Pen(Inside - 8, HalfGlass).To(RubberFrom, HalfGlass).Open(), new Pen(Inside - 8, -HalfGlass).To(RubberFrom, -HalfGlass).Open(),
                new Pen(RubberFrom, HalfRubber).To(RubberTo, HalfRubber).Open(), new Pen(RubberFrom, -HalfRubber).To(RubberTo, -HalfRubber).Open(),
                new Pen(RubberFrom, HalfRubber).To(RubberFrom, HalfGlass).Open(), new Pen(RubberFrom, -HalfRubber).To(RubberFrom, -HalfGlass).Open(),
                new Pen(ArrowEnd, 0).To(ArrowTip + 8, 0).Open(), new Pen(ArrowTip, 0).To(ArrowTip + 11, 4.5).To(ArrowTip + 11, -4.5).Closed(Stroke.Grain),
            ],
            [new(126, HalfRubber), new(136, HalfRubber), new(126, -HalfRubber), new(136, -HalfRubber), new(ArrowEnd - 4, 0), new(Outside - 4, 4)]);
    }
}
