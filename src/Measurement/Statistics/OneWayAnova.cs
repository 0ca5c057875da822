using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>
/// The table of a one-way analysis of variance: do the means of groups differ by more than the spread within groups
/// explains?
/// </summary>
public sealed class OneWayAnova
{
    private OneWayAnova(GroupTotals totals)
    {
        BetweenSumOfSquares = totals.BetweenSquares;
        BetweenDegreesOfFreedom = totals.GroupCount - 1;
        WithinSumOfSquares = totals.WithinSquares;
        WithinDegreesOfFreedom = totals.WithinDegrees;
    }

    /// <summary>The sum of squares of group means about the general mean, weighted with group sizes.</summary>
    public double BetweenSumOfSquares { get; }

    /// <summary>Groups less 1.</summary>
    public int BetweenDegreesOfFreedom { get; }

    /// <summary>The sum of squares of results about their group's mean.</summary>
    public double WithinSumOfSquares { get; }

    /// <summary>Results less groups.</summary>
    public int WithinDegreesOfFreedom { get; }

    /// <summary>The mean square between groups.</summary>
    public double BetweenMeanSquare => BetweenSumOfSquares / BetweenDegreesOfFreedom;

    /// <summary>The mean square within groups.</summary>
    public double WithinMeanSquare => WithinSumOfSquares / WithinDegreesOfFreedom;

    /// <summary>The pooled standard deviation within groups.</summary>
    public double ResidualStandardDeviation => Math.Sqrt(WithinMeanSquare);

    /// <summary>The share of all squares that lies between groups; 0 where nothing varies.</summary>
    public double RSquared =>
        BetweenSumOfSquares > 0 ? BetweenSumOfSquares / (BetweenSumOfSquares + WithinSumOfSquares) : 0;

    /// <summary>The ratio of mean squares; 0 where no means differ, +∞ where only means differ.</summary>
    public double FStatistic => BetweenSumOfSquares > 0 ? BetweenMeanSquare / WithinMeanSquare : 0;

    /// <summary>The chance of such an F or more if all groups had one true mean.</summary>
    public double Probability => FisherF.UpperTail(FStatistic, BetweenDegreesOfFreedom, WithinDegreesOfFreedom);

    /// <summary>Compares groups of any sizes.</summary>
    /// <param name="groups">The results of each group, all in one unit.</param>
    /// <exception cref="ArgumentException">No groups, an empty group, or a number that is not finite.</exception>
    public static AnovaResult Compare(IReadOnlyList<IReadOnlyList<double>> groups) =>
        GroupTotals.Of(groups) switch
        {
            { Reason: { } reason } => new AnovaResult.NotCompared(reason),
            var totals => new AnovaResult.Compared(new OneWayAnova(totals)),
        };
}

/// <summary>Whether groups could be compared.</summary>
public abstract record AnovaResult
{
    private AnovaResult()
    {
    }

    /// <summary>There is a table.</summary>
    public sealed record Compared : AnovaResult
    {
        internal Compared(OneWayAnova table) => Table = table;

        /// <summary>The table.</summary>
        public OneWayAnova Table { get; }
    }

    /// <summary>The data allow no comparison.</summary>
    public sealed record NotCompared : AnovaResult
    {
        internal NotCompared(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}
