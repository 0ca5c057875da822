namespace Calx.Papers.Drawings.Parts;

/// <summary>A metal can of 250 cm³: 66 mm wide, 90 mm high, its rim rolled outwards. Common practice, no source.</summary>
internal static class Can
{
    /// <summary>Half its width.</summary>
    public const double Half = 33;

    /// <summary>Height at which a clamp grips it, above the middle, clear of the flame.</summary>
    public const double Grip = 68;

    private const double Height = 90;
    private const double Rim = 1.6;

    public static PartShape Shape()
    {
        Stroke wall = new Pen(-Half, Height).To(-Half, 0).To(Half, 0).To(Half, Height).Open();
        return new PartShape(
            [wall, Pen.Circle(Half + Rim, Height, Rim), Pen.Circle(-Half - Rim, Height, Rim)],
            PartShape.BothSides([.. new double[] { 12, 50, 82 }.Select(y => new Spot(Half, y))]),
            Top: Height,
            new Cavity([new(Half, 0), new(Half, Height)]));
    }
}
