namespace Calx.Papers.Drawings.Parts;

/// <summary>A tripod, 210 mm high, cut through its ring: what lies behind the cut is not drawn. Common practice, no source.</summary>
internal static class Tripod
{
    private const double Height = 210;

    /// <summary>Half the width of the ring's opening.</summary>
    private const double Opening = 46;

    /// <summary>Half the width over the ring.</summary>
    private const double Ring = 62;

    private const double RingThickness = 4;
    private const double LegAtRing = Ring - LegThickness;
    private const double LegAtFoot = 72.5;
    private const double LegThickness = 7;

    /// <summary>The tripod; where nothing lies on it, the far side of the ring is drawn, so that it is seen to be one thing.</summary>
    public static PartShape Shape(bool bare)
    {
        Stroke[] far = bare ? [new Pen(-Opening, Height).To(Opening, Height).Open(Stroke.Fine)] : [];
        Stroke leg = new Pen(Opening, Height).To(Ring, Height).To(Ring, Height - RingThickness)
            .To(LegAtFoot + LegThickness, 0).To(LegAtFoot, 0).To(LegAtRing, Height - RingThickness).To(Opening, Height - RingThickness).Closed();
        return new PartShape([.. far, leg.Mirrored(), leg], PartShape.BothSides([.. new double[] { 20, 40, 60, 80, 100, 120, 140, 160, 180 }.Select(MiddleOfLeg)]), Top: Height);
    }

    private static Spot MiddleOfLeg(double height) =>
        new(LegAtFoot + (LegThickness / 2) - ((LegAtFoot - LegAtRing) * height / (Height - RingThickness)), height);
}
