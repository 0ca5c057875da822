namespace Calx.Papers.Drawings;

/// <summary>One line of a drawing, drawn in a go.</summary>
/// <param name="Points">Its corners; a curve is many of them.</param>
/// <param name="Closed">Whether it ends where it began.</param>
/// <param name="Role">How it is drawn, a role of <see cref="Charts.ChartStyle"/>.</param>
internal sealed record Stroke(IReadOnlyList<Spot> Points, bool Closed, string Role)
{
    /// <summary>The line of a wall or an edge that was cut.</summary>
    public const string Wall = "wall";

    /// <summary>A closed part that hides what it was drawn over, such as the collar of a burner.</summary>
    public const string Body = "body";

    /// <summary>A thinner line: flame, level, paper, bench.</summary>
    public const string Fine = "fine";

    /// <summary>A small mark filled with ink: a grain, the head of an arrow.</summary>
    public const string Grain = "grain";

    /// <summary>Its straight pieces, the closing one included.</summary>
    public IEnumerable<(Spot From, Spot To)> Pieces
    {
        get
        {
            for (int i = 1; i < Points.Count; i++)
            {
                yield return (Points[i - 1], Points[i]);
            }

            if (Closed)
            {
                yield return (Points[^1], Points[0]);
            }
        }
    }

    /// <summary>The line moved.</summary>
    public Stroke Moved(double dx, double dy) => this with { Points = [.. Points.Select(p => p.Moved(dx, dy))] };

    /// <summary>The line mirrored at x = 0.</summary>
    public Stroke Mirrored() => this with { Points = [.. Points.Select(p => new Spot(-p.X, p.Y))] };
}
