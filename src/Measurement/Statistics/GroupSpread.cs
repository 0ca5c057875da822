namespace Calx.Measurement.Statistics;

/// <summary>
/// Precision of a method from groups of results, in the terms of ISO 5725: repeatability is same people, same kit;
/// reproducibility is across groups. All in the unit of the results.
/// </summary>
public sealed class GroupSpread
{
    internal GroupSpread(double mean, double standardUncertainty, double repeatability, BetweenSpread spread, GroupTotals totals)
    {
        Mean = mean;
        StandardUncertainty = standardUncertainty;
        Repeatability = repeatability;
        Spread = spread;
        GroupCount = totals.GroupCount;
        ValueCount = totals.ValueCount;
    }

    /// <summary>The general mean (ISO 5725-2: m).</summary>
    public double Mean { get; }

    /// <summary>The standard uncertainty of <see cref="Mean"/> from both spreads; degrees of freedom GroupCount - 1.</summary>
    public double StandardUncertainty { get; }

    /// <summary>The standard deviation within groups (s_r); 0 where all results of each group are equal.</summary>
    public double Repeatability { get; }

    /// <summary>The spread between groups, or that none was seen.</summary>
    public BetweenSpread Spread { get; }

    /// <summary>The standard deviation between groups (s_L); 0 where none was seen.</summary>
    public double Between => Spread.StandardDeviation;

    /// <summary>The standard deviation of one result of any group (s_R): the root of s_r² + s_L².</summary>
    public double Reproducibility => double.Hypot(Repeatability, Between);

    /// <summary>How many groups, 2 or more.</summary>
    public int GroupCount { get; }

    /// <summary>How many results in all groups.</summary>
    public int ValueCount { get; }
}

/// <summary>Whether the spread within groups and the spread between them could be told apart.</summary>
public abstract record GroupSpreadResult
{
    private GroupSpreadResult()
    {
    }

    /// <summary>Both spreads were found.</summary>
    public sealed record Separated : GroupSpreadResult
    {
        internal Separated(GroupSpread spread) => Spread = spread;

        /// <summary>The two spreads and the mean.</summary>
        public GroupSpread Spread { get; }
    }

    /// <summary>The data cannot tell the two spreads apart.</summary>
    public sealed record NotSeparable : GroupSpreadResult
    {
        internal NotSeparable(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}
