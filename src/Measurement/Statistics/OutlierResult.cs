namespace Calx.Measurement.Statistics;

/// <summary>Which end of a list an outlier test looks at.</summary>
public enum OutlierSide
{
    /// <summary>Whichever end lies further out; the usual choice when nothing was suspected beforehand.</summary>
    Either,

    /// <summary>The smallest value only, named before the values were seen.</summary>
    Low,

    /// <summary>The largest value only, named before the values were seen.</summary>
    High,
}

/// <summary>
/// What a test of the most extreme value found. No test says why a value lies far out, and none is a reason to drop it.
/// </summary>
public abstract record OutlierResult
{
    private OutlierResult()
    {
    }

    /// <summary>The extreme value lies further out than chance explains at the chosen significance.</summary>
    public sealed record Outlying : OutlierResult
    {
        internal Outlying(OutlierEvidence evidence) => Evidence = evidence;

        /// <summary>The numbers that say so.</summary>
        public OutlierEvidence Evidence { get; }
    }

    /// <summary>The extreme value lies no further out than chance explains at the chosen significance.</summary>
    public sealed record WithinChance : OutlierResult
    {
        internal WithinChance(OutlierEvidence evidence) => Evidence = evidence;

        /// <summary>The numbers that say so.</summary>
        public OutlierEvidence Evidence { get; }
    }

    /// <summary>The values do not allow the test.</summary>
    public sealed record NotTested : OutlierResult
    {
        internal NotTested(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }

    internal static OutlierResult Judge(OutlierEvidence evidence) =>
        evidence.Statistic > evidence.CriticalValue ? new Outlying(evidence) : new WithinChance(evidence);
}

/// <summary>The numbers of an outlier test.</summary>
public sealed class OutlierEvidence
{
    internal OutlierEvidence(int place, double statistic, double criticalValue, double probability)
    {
        Place = place;
        Statistic = statistic;
        CriticalValue = criticalValue;
        Probability = probability;
    }

    /// <summary>The place of the extreme value, or group, in the list as given, from 0.</summary>
    public int Place { get; }

    /// <summary>The test's statistic.</summary>
    public double Statistic { get; }

    /// <summary>The statistic that is passed by chance with the chosen significance.</summary>
    public double CriticalValue { get; }

    /// <summary>
    /// The chance of so large a statistic or more when all values come from one normal distribution; an upper bound where
    /// several values could be so far out at once, which is then large anyway.
    /// </summary>
    public double Probability { get; }
}
