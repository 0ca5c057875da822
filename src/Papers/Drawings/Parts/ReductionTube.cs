namespace Calx.Papers.Drawings.Parts;

/// <summary>A reduction tube of hard glass, 22 mm wide and 175 mm long, with a small hole near its closed end. Drawn lying along
/// the x axis, its hole to the left and upwards; <see cref="Tilt"/> then lowers the hole's end a little, so that drops run away from the heat.
/// Common practice, no source.</summary>
internal static class ReductionTube
{
    /// <summary>By how much its axis is off the level when it is clamped, in radians.</summary>
    public const double Tilt = 4 * Math.PI / 180;

    /// <summary>By how much its axis is off the level when it leans in a beaker: its foot in the middle, its side on the rim.</summary>
    public const double Leaning = (90 - 16.29) * Math.PI / 180;

    /// <summary>Half its width.</summary>
    public const double Half = 11;

    /// <summary>Where a clamp grips it, near its mouth.</summary>
    public const double Grip = 66;

    /// <summary>Where its mouth is.</summary>
    public const double Mouth = 86;

    /// <summary>Where the hole is, and half its width.</summary>
    public const double Hole = -65;

    /// <summary>Half the width of the hole.</summary>
    public const double HalfHole = 3;

    /// <summary>Where the round end begins.</summary>
    public const double End = -80;

    private const double Lip = 1.5;

    /// <summary>How high its axis is at x = 0 above the lowest of it, when it is clamped.</summary>
    public static readonly double AxisAbove = -Shape().Turned(Tilt).Foot;

    /// <summary>How far control points of a quarter circle lie from its ends, in radii: the usual 4/3 tan(π/8).</summary>
    private const double Quarter = 0.5523;

    public static PartShape Shape()
    {
        double lean = Half * Quarter;
        // A heap is widest at its foot; its powder lies on the lower wall, over the flame.
        var heap = new Cavity([new(36, -Half), new(30, -Half + 4), new(16, -Half + 9), new(4, -Half + 13)]);
        return new PartShape(
            [
                new Pen(Mouth + Lip, Half + 2).To(Mouth, Half).To(Hole + HalfHole, Half).Open(),
                new Pen(Hole - HalfHole, Half).To(End, Half).Curve(new(End - lean, Half), new(End - Half, lean), new(End - Half, 0))
                    .Curve(new(End - Half, -lean), new(End - lean, -Half), new(End, -Half)).To(Mouth, -Half).To(Mouth + Lip, -Half - 2).Open(),
            ],
            [new(-48, -Half), new(-66, -Half), new(44, Half), new(26, Half), new(50, -Half), new(-45, Half)],
            Cavity: heap);
    }
}
