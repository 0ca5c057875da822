namespace Calx.Measurement.Statistics;

/// <summary>What all one-way analyses need of the groups: sizes, means about a centre, sums of squares.</summary>
internal sealed class GroupTotals
{
    private GroupTotals(IReadOnlyList<IReadOnlyList<double>> groups)
    {
        double[] all = [.. groups.SelectMany(group => group)];
        Moments whole = Moments.Of(all);
        Centre = whole.Mean;
        TotalSquares = whole.SumOfSquares;
        ValueCount = all.Length;
        Sizes = [.. groups.Select(group => group.Count)];
        Moments[] parts = [.. groups.Select(group => Moments.Of([.. group]))];
        Offsets = Array.ConvertAll(parts, part => whole.DeviationOf(part));
        WithinSquares = Sum(parts.Select(part => (1.0, part.SumOfSquares)));
        BetweenSquares = Sum(Offsets.Select((offset, i) => (Sizes[i] * offset, offset)));
    }

    /// <summary>The mean of all values.</summary>
    public double Centre { get; }

    public int[] Sizes { get; }

    /// <summary>Each group's mean less the mean of all values.</summary>
    public double[] Offsets { get; }

    public double WithinSquares { get; }

    public double BetweenSquares { get; }

    public double TotalSquares { get; }

    public int GroupCount => Sizes.Length;

    public int ValueCount { get; }

    public int WithinDegrees => ValueCount - GroupCount;

    /// <summary>Why spread within and spread between cannot be told apart, or null where they can.</summary>
    public string? Reason =>
        GroupCount < 2 ? "one group cannot show how groups differ"
        : WithinDegrees == 0 ? "each group has a single result, so nothing shows the spread within a group"
        : null;

    public static GroupTotals Of(IReadOnlyList<IReadOnlyList<double>> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        if (groups.Count == 0)
        {
            throw new ArgumentException("At least one group is needed.", nameof(groups));
        }

        foreach (IReadOnlyList<double> group in groups)
        {
            Require.Finite([.. group], 1, nameof(groups));
        }

        return new GroupTotals(groups);
    }

    private static double Sum(IEnumerable<(double Left, double Right)> products)
    {
        DoubleDouble sum = 0;
        foreach ((double left, double right) in products)
        {
            sum += DoubleDouble.Product(left, right);
        }

        return sum.High;
    }
}
