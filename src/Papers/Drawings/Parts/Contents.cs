namespace Calx.Papers.Drawings.Parts;

/// <summary>What fills a vessel up to a height: a liquid by its level, a solid by small marks, a ribbon by its coil. Without an
/// edge of its own, for the wall of the vessel is its edge.</summary>
internal static class Contents
{
    private const double OffWall = 2.2;

    /// <summary>Between the edge of a mark and the wall, in mm.</summary>
    private const double MarkOffWall = 1.2;

    /// <summary>Half the width of contents whose marks are as given here; wider ones have larger marks, further apart.</summary>
    private const double Narrow = 16;

    /// <summary>A liquid: a level line from wall to wall, and short dashes below it.</summary>
    public static PartShape Liquid(Cavity vessel, double heightInMillimetres, double bottomInMillimetres, IReadOnlyList<Dip> dips)
    {
        double half = vessel.HalfAt(heightInMillimetres);
        List<Stroke> strokes = [.. Level(half, heightInMillimetres, dips)];
        int row = 0;
        for (double y = heightInMillimetres - 6; y > bottomInMillimetres + 2; y -= 7, row++)
        {
            double room = Math.Min(vessel.HalfAt(y), vessel.HalfAt(y - 1)) - OffWall;
            strokes.AddRange(Places(room - 3, 15, row % 2 == 0).Where(x => !dips.Any(d => d.Covers(x - 3, x + 3, y)))
                .Select(x => new Pen(x - 3, y).To(x + 3, y).Open(Stroke.Fine)));
        }

        return Filling(vessel, strokes, heightInMillimetres, bottomInMillimetres, dips);
    }

    /// <summary>The level from wall to wall, but for what dips in.</summary>
    private static IEnumerable<Stroke> Level(double half, double height, IReadOnlyList<Dip> dips)
    {
        double from = -half;
        foreach (Dip dip in dips.Where(d => d.Bottom < height).OrderBy(d => d.Left))
        {
            if (dip.Left > from)
            {
                yield return new Pen(from, height).To(dip.Left, height).Open(Stroke.Fine);
            }

            from = Math.Max(from, dip.Right);
        }

        if (from < half)
        {
            yield return new Pen(from, height).To(half, height).Open(Stroke.Fine);
        }
    }

    /// <summary>A powder: dots, staggered.</summary>
    public static PartShape Powder(Cavity vessel, double heightInMillimetres, IReadOnlyList<Dip> dips) =>
        Marks(vessel, heightInMillimetres, dips, 2.4, 0.55, (x, y, reach) => Pen.Circle(x, y, reach, Stroke.Grain));

    /// <summary>Crystals: small squares on their corners.</summary>
    public static PartShape Crystals(Cavity vessel, double heightInMillimetres, IReadOnlyList<Dip> dips) => Marks(
        vessel,
        heightInMillimetres,
        dips,
        3.6,
        1.3,
        (x, y, reach) => new Pen(x, y - reach).To(x + reach, y).To(x, y + reach).To(x - reach, y).Closed(Stroke.Fine));

    /// <summary>A ribbon in a loose coil that lies on the bottom.</summary>
    public static PartShape Ribbon(Cavity vessel)
    {
        const int Turns = 5;
        const double Radius = 4.2;
        double y = vessel.Bottom + Radius + 1.6;
        double half = vessel.HalfAt(vessel.Bottom + 1.6) - 3.2;
        double low = -Math.PI / 2;
        Spot[] coil =
        [
            .. Enumerable.Range(0, (Turns * 24) + 1).Select(i => (double)i / (Turns * 24))
                .Select(t => new Spot((((2 * t) - 1) * half) + (2.2 * Math.Cos(low + (2 * Math.PI * Turns * t))), y + (Radius * Math.Sin(low + (2 * Math.PI * Turns * t))))),
        ];
        return new PartShape(
            [new Stroke(coil, Closed: false, Stroke.Fine)],
            [coil[48], coil[51], coil[69], coil[60], coil[27], coil[93]],
            Region: [new(-half - 2, y - Radius), new(half + 2, y - Radius), new(half + 2, y + Radius), new(-half - 2, y + Radius)]);
    }

    private static PartShape Marks(
        Cavity vessel, double height, IReadOnlyList<Dip> dips, double usuallyApart, double usualReach, Func<double, double, double, Stroke> mark)
    {
        double size = Math.Clamp(vessel.HalfAt(height) / Narrow, 1, 2);
        double apart = usuallyApart * size;
        double reach = usualReach * size;
        var marks = new List<Stroke>();
        int row = 0;
        for (double y = vessel.Bottom + (apart * 0.55); y < height; y += apart * 0.8, row++)
        {
            double room = new[] { y - reach, y, y + reach }.Min(vessel.HalfAt) - reach - MarkOffWall;
            marks.AddRange(Places(room, apart, row % 2 == 0).Where(x => !dips.Any(d => d.Covers(x - reach, x + reach, y + reach))).Select(x => mark(x, y, reach)));
        }

        if (marks.Count == 0)
        {
            marks.Add(mark(0, vessel.Bottom + (2 * apart), reach));
        }

        return Filling(vessel, marks, height, vessel.Bottom, dips);
    }

    private static PartShape Filling(Cavity vessel, List<Stroke> strokes, double height, double bottom, IReadOnlyList<Dip> dips)
    {
        double middle = bottom + ((height - bottom) * 0.55);
        double half = vessel.HalfAt(middle);
        Spot[] spots = [new(0, middle), .. PartShape.BothSides(new(half * 0.4, middle), new(half * 0.7, middle))];
        Spot[] free = [.. spots.Where(p => !dips.Any(d => d.Covers(p.X, p.X, p.Y)))];
        return new PartShape(
            strokes,
            free.Length > 0 ? free : spots,
            Region: vessel.Filled(height));
    }

    /// <summary>Places from side to side, evenly apart about the middle, staggered by half a step in every other row.</summary>
    private static IEnumerable<double> Places(double room, double apart, bool even)
    {
        double first = even ? 0 : apart / 2;
        for (double x = first; x <= room; x += apart)
        {
            yield return x;
            if (x > 0)
            {
                yield return -x;
            }
        }
    }
}
