namespace Calx.Papers.Drawings.Parts;

/// <summary>Leads that join instruments in one loop: from each to the next over what stands between, and from the last back to the
/// first above them all. Common practice, no source.</summary>
internal static class Leads
{
    private const double Over = 16;
    private const double Back = 42;
    private const double Corner = 9;
    private const double BelowCorner = 14;
    private const int LabelSpots = 5;

    /// <summary>How far two heights of a lead by itself are apart.</summary>
    private const double LooseHeight = 14;

    /// <summary>The leads between terminals.</summary>
    /// <param name="joined">Of each thing that is joined its left and its right terminal, from left to right.</param>
    /// <param name="tallestInMillimetres">Height of the tallest of what is joined.</param>
    public static PartShape Between(IReadOnlyList<(Spot Left, Spot Right)> joined, double tallestInMillimetres)
    {
        if (joined.Count == 0)
        {
            Stroke loose = new Pen(-40, 0).Curve(new(-20, LooseHeight), new(-10, LooseHeight), new(0, 0)).Curve(new(10, LooseHeight), new(20, LooseHeight), new(40, 0)).Open();
            return new PartShape([loose], [loose.Points[12], loose.Points[36]]);
        }

        Stroke[] links = [.. joined.Zip(joined.Skip(1), (one, next) => Lead(one.Right, next.Left, tallestInMillimetres + Over))];
        double height = tallestInMillimetres + Back;
        (Spot first, Spot last) = (joined[0].Left, joined[^1].Right);
        double width = last.X - first.X;
        return new PartShape(
            [.. links, Lead(last, first, height)],
            [
                new(first.X, height - BelowCorner), new(last.X, height - BelowCorner),
                .. Enumerable.Range(0, LabelSpots).Select(i => new Spot(first.X + ((i + 0.5) / LabelSpots * width), height)),
            ]);
    }

    /// <summary>Up, across and down, its corners rounded.</summary>
    private static Stroke Lead(Spot from, Spot to, double height)
    {
        double turn = Math.Min(Corner, Math.Abs(to.X - from.X) / 2) * Math.Sign(to.X - from.X);
        double drop = Math.Abs(turn);
        return new Pen(from.X, from.Y).To(from.X, height - drop).Curve(new(from.X, height), new(from.X, height), new(from.X + turn, height))
            .To(to.X - turn, height).Curve(new(to.X, height), new(to.X, height), new(to.X, height - drop)).To(to.X, to.Y).Open();
    }
}
