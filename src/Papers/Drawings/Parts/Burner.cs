namespace Calx.Papers.Drawings.Parts;

/// <summary>A gas burner, 150 mm high, in outline: base, barrel with its collar and air hole, and the inlet for gas as a
/// section of tubing. Common practice, no source.</summary>
internal static class Burner
{
    /// <summary>Height of the barrel's mouth.</summary>
    public const double Height = 150;

    private const double Barrel = 6.5;
    private const double Base = 38;
    private const double Collar = 9.5;

    /// <summary>A burner with a flame, or without one.</summary>
    /// <param name="flameInMillimetres">Height of the flame, or null where it is not lit.</param>
    public static PartShape Shape(double? flameInMillimetres)
    {
        Stroke foot = new Pen(Base, 0).To(Base, 5).Curve(new(30, 8), new(15, 8), new(12, 14)).To(12, 22).AndMirrored().Closed();
        Stroke collar = Pen.Box(-Collar, 28, Collar, 48);
        Stroke hole = Pen.Circle(0, 38, 4);
        Stroke[] barrel = [new Pen(-Barrel, 22).To(-Barrel, Height).Open(), new Pen(Barrel, 22).To(Barrel, Height).Open()];
        Stroke[] inlet = [new Pen(12, 19.5).To(52, 19.5).Open(), new Pen(12, 14).To(52, 14).Open()];
        return new PartShape(
            [.. barrel, foot, collar, hole, .. inlet, .. flameInMillimetres is double flame ? Flame(flame) : []],
            [.. PartShape.BothSides(new(Barrel, 120), new(Barrel, 90), new(Barrel, 65), new(28, 4))]);
    }

    /// <summary>An outer flame and its inner cone.</summary>
    private static Stroke[] Flame(double height)
    {
        Stroke outer = new Pen(Barrel, Height).Curve(new(Barrel + 6, Height + (0.25 * height)), new(3, Height + (0.7 * height)), new(0, Height + height))
            .AndMirrored().Open(Stroke.Fine);
        Stroke inner = new Pen(Barrel - 2.5, Height).Curve(new(Barrel - 1, Height + (0.15 * height)), new(1.5, Height + (0.35 * height)), new(0, Height + (0.5 * height)))
            .AndMirrored().Open(Stroke.Fine);
        return [outer, inner];
    }
}
