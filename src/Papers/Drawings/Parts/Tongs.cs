namespace Calx.Papers.Drawings.Parts;

/// <summary>Crucible tongs, 205 mm long, lying, as seen from above: two arms that cross at a rivet, their jaws meeting.
/// Common practice, no source.</summary>
internal static class Tongs
{
    private const double Middle = 22;
    private const double Thickness = 5;
    private const double Ring = 11;
    private const double RingAt = -92;

    public static PartShape Shape()
    {
        Stroke arm = new Pen(RingAt + 8, Middle - 6).Curve(new(-50, 24), new(-20, Middle - 2), new(0, Middle))
            .Curve(new(24, Middle + 4), new(30, Middle + 16), new(52, Middle + 15)).Curve(new(70, Middle + 14), new(78, Middle + 3), new(106, Middle + 2.5)).Band(Thickness);
        Stroke other = arm with { Points = [.. arm.Points.Select(p => new Spot(p.X, (2 * Middle) - p.Y))] };
        return new PartShape(
            [
                other, arm,
                Pen.Circle(RingAt, Middle - Ring, Ring), Pen.Circle(RingAt, Middle - Ring, Ring - Thickness),
                Pen.Circle(RingAt, Middle + Ring, Ring), Pen.Circle(RingAt, Middle + Ring, Ring - Thickness),
                Pen.Circle(0, Middle, 2.5),
            ],
            [new(52, Middle + 15), new(52, Middle - 15), new(96, Middle + 2.6), new(RingAt, Middle + (2 * Ring) - 2.5), new(RingAt - Ring + 2.5, Middle + Ring), new(-40, Middle + 1)]);
    }
}
