using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>A part in its place among the others.</summary>
/// <param name="Part">What the practical says of it.</param>
/// <param name="Shape">How it is drawn, where it is: mm, the bench at y = 0.</param>
/// <param name="Support">What it stands on, in or is held by; null for the bench.</param>
internal sealed record Placed(DrawnPart Part, PartShape Shape, DrawnPart? Support)
{
    /// <summary>The part and its shape moved.</summary>
    public Placed Moved(double dx, double dy) => this with { Shape = Shape.Moved(dx, dy) };

    /// <summary>The part and its shape turned about (0, 0), from x towards y.</summary>
    public Placed Turned(double radians) => this with { Shape = Shape.Turned(radians) };
}
