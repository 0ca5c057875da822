using Calx.Practicals.Definition;

namespace Calx.Papers.Drawings;

/// <summary>A part with all that it carries, or several side by side: mm, standing at y = 0.</summary>
internal sealed record Cluster(IReadOnlyList<Placed> Parts)
{
    /// <summary>Nothing.</summary>
    public static Cluster Empty { get; } = new([]);

    public double Left => Parts.Min(p => p.Shape.Left);

    public double Right => Parts.Max(p => p.Shape.Right);

    public double Foot => Parts.Min(p => p.Shape.Foot);

    public double Height => Parts.Max(p => p.Shape.Height);

    /// <summary>One part, on what it stands on.</summary>
    public static Cluster Of(DrawnPart part, PartShape shape, DrawnPart? support) => new([new Placed(part, shape, support)]);

    /// <summary>Both.</summary>
    public Cluster With(Cluster other) => new([.. Parts, .. other.Parts]);

    /// <summary>The whole moved.</summary>
    public Cluster Moved(double dx, double dy) => new([.. Parts.Select(p => p.Moved(dx, dy))]);

    /// <summary>The whole turned about (0, 0), from x towards y.</summary>
    public Cluster Turned(double radians) => new([.. Parts.Select(p => p.Turned(radians))]);

    /// <summary>Height of the lowest line between two places from left to right, or null where there is none.</summary>
    public double? LowestOver(double left, double right) => Parts
        .SelectMany(p => p.Shape.Strokes).SelectMany(s => s.Pieces)
        .Where(piece => Math.Min(piece.From.X, piece.To.X) < right && Math.Max(piece.From.X, piece.To.X) > left)
        .Select(piece => (double?)Math.Min(piece.From.Y, piece.To.Y)).Min();
}
