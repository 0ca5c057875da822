namespace Calx.Papers.Drawings;

/// <summary>A part of the apparatus as drawn: mm of real apparatus, x to the right from its middle, y up from where it stands.</summary>
/// <param name="Strokes">Its lines, in the order in which they are drawn.</param>
/// <param name="LabelSpots">Where a label's line may end: on it or inside it.</param>
/// <param name="Top">Height of the surface on which another part may stand.</param>
/// <param name="Cavity">What holds contents, or null.</param>
/// <param name="Region">Outline of contents, which have no edge of their own; null for all else.</param>
/// <param name="Dips">What hangs into its contents, of a vessel that is not moved yet; null for nothing.</param>
/// <param name="Terminals">Where leads end on it, from left to right; null where it has none.</param>
internal sealed record PartShape(
    IReadOnlyList<Stroke> Strokes,
    IReadOnlyList<Spot> LabelSpots,
    double Top = 0,
    Cavity? Cavity = null,
    IReadOnlyList<Spot>? Region = null,
    IReadOnlyList<Dip>? Dips = null,
    IReadOnlyList<Spot>? Terminals = null)
{
    /// <summary>How far it reaches to the left.</summary>
    public double Left => Strokes.Min(s => s.Points.Min(p => p.X));

    /// <summary>How far it reaches to the right.</summary>
    public double Right => Strokes.Max(s => s.Points.Max(p => p.X));

    /// <summary>How low it reaches.</summary>
    public double Foot => Strokes.Min(s => s.Points.Min(p => p.Y));

    /// <summary>How high it reaches.</summary>
    public double Height => Strokes.Max(s => s.Points.Max(p => p.Y));

    /// <summary>Places at the same distance to the left and right of the middle.</summary>
    public static IReadOnlyList<Spot> BothSides(params Spot[] right) => [.. right, .. right.Select(p => new Spot(-p.X, p.Y))];

    /// <summary>The part moved.</summary>
    public PartShape Moved(double dx, double dy) => Mapped(p => p.Moved(dx, dy));

    /// <summary>The part turned about (0, 0), from x towards y.</summary>
    public PartShape Turned(double radians) => Mapped(p => p.Turned(radians));

    /// <summary>The part with every place of it elsewhere.</summary>
    public PartShape Mapped(Func<Spot, Spot> to) => this with
    {
        Strokes = [.. Strokes.Select(s => s with { Points = [.. s.Points.Select(to)] })],
        LabelSpots = [.. LabelSpots.Select(to)],
        Region = Region is null ? null : [.. Region.Select(to)],
        Terminals = Terminals is null ? null : [.. Terminals.Select(to)],
    };
}
