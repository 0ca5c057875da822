namespace Calx.Papers.Drawings;

/// <summary>Draws one line from place to place; curves become short straight pieces, so that whatever is drawn can be
/// measured.</summary>
internal sealed class Pen
{
    /// <summary>Pieces of a curve: at the largest scale each is shorter than the line is wide.</summary>
    private const int Pieces = 24;

    private readonly List<Spot> points = [];

    /// <summary>Sets the pen down.</summary>
    public Pen(double x, double y) => points.Add(new Spot(x, y));

    /// <summary>A straight line.</summary>
    public Pen To(double x, double y)
    {
        points.Add(new Spot(x, y));
        return this;
    }

    /// <summary>A cubic Bézier curve with two places that it leans to.</summary>
    public Pen Curve(Spot first, Spot second, Spot end)
    {
        Spot start = points[^1];
        for (int i = 1; i <= Pieces; i++)
        {
            double t = (double)i / Pieces;
            double s = 1 - t;
            double a = s * s * s, b = 3 * s * s * t, c = 3 * s * t * t, d = t * t * t;
            points.Add(new Spot(
                (a * start.X) + (b * first.X) + (c * second.X) + (d * end.X),
                (a * start.Y) + (b * first.Y) + (c * second.Y) + (d * end.Y)));
        }

        return this;
    }

    /// <summary>The line as drawn so far, followed by its mirror image at x = 0 backwards: half a vessel makes the whole.</summary>
    public Pen AndMirrored()
    {
        points.AddRange(Enumerable.Reverse(points).Select(p => new Spot(-p.X, p.Y)).ToArray());
        return this;
    }

    /// <summary>An open line.</summary>
    public Stroke Open(string role = Stroke.Wall) => new(points, Closed: false, role);

    /// <summary>A line that ends where it began.</summary>
    public Stroke Closed(string role = Stroke.Body) => new(points, Closed: true, role);

    /// <summary>A rectangle between two corners.</summary>
    public static Stroke Box(double left, double bottom, double right, double top, string role = Stroke.Body) =>
        new Pen(left, bottom).To(right, bottom).To(right, top).To(left, top).Closed(role);

    /// <summary>A circle; a grain needs fewer corners than a ring to look round.</summary>
    public static Stroke Circle(double x, double y, double radius, string role = Stroke.Body)
    {
        int corners = Math.Clamp((int)(10 * radius), 8, 2 * Pieces);
        IEnumerable<double> angles = Enumerable.Range(0, corners).Select(i => 2 * Math.PI * i / corners);
        return new Stroke([.. angles.Select(a => new Spot(x + (radius * Math.Cos(a)), y + (radius * Math.Sin(a))))], Closed: true, role);
    }

    /// <summary>A band of even width along the line drawn so far, square at its ends.</summary>
    public Stroke Band(double width, string role = Stroke.Body)
    {
        var left = new List<Spot>();
        var right = new List<Spot>();
        for (int i = 0; i < points.Count; i++)
        {
            Spot before = points[Math.Max(0, i - 1)];
            Spot after = points[Math.Min(points.Count - 1, i + 1)];
            double length = before.To(after);
            double dx = -(after.Y - before.Y) / length * width / 2;
            double dy = (after.X - before.X) / length * width / 2;
            left.Add(points[i].Moved(dx, dy));
            right.Add(points[i].Moved(-dx, -dy));
        }

        right.Reverse();
        return new Stroke([.. left, .. right], Closed: true, role);
    }
}
