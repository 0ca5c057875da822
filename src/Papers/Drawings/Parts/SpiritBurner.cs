namespace Calx.Papers.Drawings.Parts;

/// <summary>A spirit burner, 74 mm high: a squat glass bowl, a metal holder on its neck, and a wick that hangs down into the
/// spirit; with its flame where it is lit. Common practice, no source.</summary>
internal static class SpiritBurner
{
    /// <summary>Height of the end of the wick.</summary>
    public const double Wick = 74;

    /// <summary>Height of the metal holder's upper edge, on which a cap sits round the wick.</summary>
    private const double Holder = 69;

    private const double Neck = 11;
    private const double NeckTop = 60;
    private const double HalfHolder = 13;
    private const double HalfWick = 3;
    private const double WickFoot = 5;

    /// <summary>A burner with a flame, or without one.</summary>
    /// <param name="flameInMillimetres">Height of the flame, or null where it is not lit.</param>
    public static PartShape Shape(double? flameInMillimetres)
    {
        Stroke half = new Pen(22, 0).Curve(new(36, 1), new(40, 16), new(36, 30)).Curve(new(32, 42), new(Neck, 42), new(Neck, 52)).To(Neck, NeckTop).Open();
        Stroke bowl = half with { Points = [.. half.Points.Reverse().Select(p => new Spot(-p.X, p.Y)), .. half.Points] };
        var cavity = new Cavity(half.Points);
        Stroke[] holder = [HolderSide(), HolderSide().Mirrored()];
        Stroke[] wick = [WickSide(), WickSide().Mirrored(), new Pen(-HalfWick, Wick).To(HalfWick, Wick).Open()];
        return new PartShape(
            [bowl, .. holder, .. wick, .. flameInMillimetres is double flame ? Flame(flame) : []],
            PartShape.BothSides([new(HalfHolder, 64), .. new double[] { 10, 28, 34, 39 }.Select(y => new Spot(cavity.HalfAt(y), y))]),
            Top: Holder,
            cavity,
            Dips: [new Dip(-HalfWick, HalfWick, WickFoot)]);
    }

    private static Stroke HolderSide() => Pen.Box(HalfWick, NeckTop, HalfHolder, Holder);

    private static Stroke WickSide() => new Pen(HalfWick, WickFoot).To(HalfWick, Wick).Open();

    private static Stroke[] Flame(double height) =>
    [
        new Pen(HalfWick, Wick).Curve(new(HalfWick + 9, Wick + (0.2 * height)), new(5, Wick + (0.6 * height)), new(0, Wick + height))
            .AndMirrored().Open(Stroke.Fine),
    ];
}
