namespace Calx.Papers.Drawings;

/// <summary>A line of the drawing as a label sees it: its straight pieces, with the box around them so that lines far off are
/// passed over at once.</summary>
internal sealed class SeenStroke
{
    private readonly double left;
    private readonly double right;
    private readonly double top;
    private readonly double bottom;

    public SeenStroke(Stroke stroke)
    {
        Pieces = [.. stroke.Pieces];
        left = stroke.Points.Min(p => p.X);
        right = stroke.Points.Max(p => p.X);
        top = stroke.Points.Min(p => p.Y);
        bottom = stroke.Points.Max(p => p.Y);
    }

    /// <summary>Its straight pieces.</summary>
    public (Spot From, Spot To)[] Pieces { get; }

    /// <summary>Whether a ruled line meets it.</summary>
    public bool Meets((Spot From, Spot To) line) => Array.Exists(Pieces, piece => Plane.Meet(piece, line));

    /// <summary>Whether a spot is nearer to it than a distance.</summary>
    public bool IsNear(Spot spot, double distance) =>
        spot.X > left - distance && spot.X < right + distance && spot.Y > top - distance && spot.Y < bottom + distance
        && Array.Exists(Pieces, piece => Plane.Distance(piece, spot) < distance);

    /// <summary>Whether a ruled line comes as near as a distance to the box around it.</summary>
    public bool MayReach((Spot From, Spot To) line, double distance) =>
        left <= Math.Max(line.From.X, line.To.X) + distance && right >= Math.Min(line.From.X, line.To.X) - distance
        && top <= Math.Max(line.From.Y, line.To.Y) + distance && bottom >= Math.Min(line.From.Y, line.To.Y) - distance;
}
