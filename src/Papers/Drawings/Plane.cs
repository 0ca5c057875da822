namespace Calx.Papers.Drawings;

/// <summary>Plane geometry of straight pieces.</summary>
internal static class Plane
{
    /// <summary>Whether two pieces have a point in common, ends included.</summary>
    public static bool Meet((Spot From, Spot To) a, (Spot From, Spot To) b) =>
        Side(a, b.From) * Side(a, b.To) <= 0 && Side(b, a.From) * Side(b, a.To) <= 0 && Boxes(a, b);

    /// <summary>The shortest way between two pieces.</summary>
    public static double Apart((Spot From, Spot To) a, (Spot From, Spot To) b) => Meet(a, b)
        ? 0
        : Math.Min(Math.Min(Distance(a, b.From), Distance(a, b.To)), Math.Min(Distance(b, a.From), Distance(b, a.To)));

    /// <summary>The shortest way from a piece to a spot.</summary>
    public static double Distance((Spot From, Spot To) piece, Spot spot)
    {
        double dx = piece.To.X - piece.From.X;
        double dy = piece.To.Y - piece.From.Y;
        double length = (dx * dx) + (dy * dy);
        double share = length == 0 ? 0 : Math.Clamp((((spot.X - piece.From.X) * dx) + ((spot.Y - piece.From.Y) * dy)) / length, 0, 1);
        return spot.To(piece.From.Moved(share * dx, share * dy));
    }

    /// <summary>Whether a spot is inside an outline, by the number of its pieces to the right of it.</summary>
    public static bool Inside(IReadOnlyList<Spot> outline, Spot spot)
    {
        bool inside = false;
        for (int i = 0; i < outline.Count; i++)
        {
            Spot a = outline[i];
            Spot b = outline[(i + 1) % outline.Count];
            inside ^= a.Y > spot.Y != b.Y > spot.Y && spot.X < a.X + ((spot.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X));
        }

        return inside;
    }

    private static double Side((Spot From, Spot To) line, Spot spot) =>
        ((line.To.X - line.From.X) * (spot.Y - line.From.Y)) - ((line.To.Y - line.From.Y) * (spot.X - line.From.X));

    private static bool Boxes((Spot From, Spot To) a, (Spot From, Spot To) b) =>
        Math.Max(a.From.X, a.To.X) >= Math.Min(b.From.X, b.To.X) && Math.Max(b.From.X, b.To.X) >= Math.Min(a.From.X, a.To.X)
        && Math.Max(a.From.Y, a.To.Y) >= Math.Min(b.From.Y, b.To.Y) && Math.Max(b.From.Y, b.To.Y) >= Math.Min(a.From.Y, a.To.Y);
}
