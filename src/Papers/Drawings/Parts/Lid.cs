namespace Calx.Papers.Drawings.Parts;

/// <summary>The lid of a crucible, 44 mm wide, with its knob. Common practice, no source.</summary>
internal static class Lid
{
    /// <summary>How far a lid that leaves a gap is pushed to the side: it still lies flat on the rim, its middle inside.</summary>
    public const double Ajar = 13;

    private const double Half = 22;

    public static PartShape Shape() => new(
        [
            new Pen(Half, 0).To(Half, 2.2).Curve(new(14, 2.6), new(8, 3.4), new(3.4, 4.6)).To(2.8, 6.4)
                .Curve(new(5.4, 7.4), new(4.4, 11.4), new(0, 11.4)).AndMirrored().Closed(),
        ],
        [.. PartShape.BothSides(new(Half - 6, 1.4), new(Half - 10, 1.6)), new(0, 8.6)]);
}
