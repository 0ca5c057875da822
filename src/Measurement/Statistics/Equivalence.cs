using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Statistics;

/// <summary>
/// Is a mean so near 0, or another value, that the difference does not matter? Two one-sided tests (Schuirmann, J.
/// Pharmacokin. Biopharm. 15 (1987) 657): that no change was seen is not enough, the data must rule out a change larger
/// than the bound on either side.
/// </summary>
public static class Equivalence
{
    /// <summary>Tests the mean of values, such as last change on reheating, by Student's t.</summary>
    /// <param name="values">One value or more; two at least are needed for an answer.</param>
    /// <param name="low">The smallest mean that does not matter.</param>
    /// <param name="high">The largest mean that does not matter, above <paramref name="low"/>.</param>
    /// <param name="significance">The chance of calling a change that matters none, between 0 and 0.5.</param>
    /// <exception cref="ArgumentException">No values, or a number that is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The bounds or the significance are out of range.</exception>
    public static EquivalenceResult OfMean(ReadOnlySpan<double> values, double low, double high, double significance = 0.05)
    {
        Require.Finite(values, 1);
        RequireBounds(low, high, significance);
        if (values.Length < 2)
        {
            return new EquivalenceResult.NotTested("one value does not show its own spread");
        }

        double deviation = Summary.StandardDeviation(values);
        return deviation == 0
            ? new EquivalenceResult.NotTested("all values are equal, so their spread is hidden by the resolution")
            : OfEstimate(
                Summary.Mean(values), deviation / Math.Sqrt(values.Length), values.Length - 1, (low, high), significance);
    }

    /// <summary>Tests an estimate whose standard uncertainty is known, such as one change and its balance.</summary>
    /// <param name="value">The estimate.</param>
    /// <param name="standardUncertainty">Its standard uncertainty, above 0.</param>
    /// <param name="degreesOfFreedom">How well that is known, above 0; +∞ where it is taken as given.</param>
    /// <param name="bounds">The smallest and the largest value that do not matter.</param>
    /// <param name="significance">The chance of calling a change that matters none, between 0 and 0.5.</param>
    /// <exception cref="ArgumentException">A number is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of its range.</exception>
    public static EquivalenceResult OfEstimate(
        double value,
        double standardUncertainty,
        double degreesOfFreedom,
        (double Low, double High) bounds,
        double significance = 0.05)
    {
        Require.Finite([value], 1, nameof(value));
        Require.Positive(standardUncertainty);
        RequireBounds(bounds.Low, bounds.High, significance);
        if (!(degreesOfFreedom > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(degreesOfFreedom), degreesOfFreedom, "Must be above 0.");
        }

        return EquivalenceResult.Judge(
            new EquivalenceEvidence(value, standardUncertainty, degreesOfFreedom, bounds, significance));
    }

    private static void RequireBounds(double low, double high, double significance)
    {
        Require.Finite([low, high], 2, nameof(low));
        if (!(low < high))
        {
            throw new ArgumentOutOfRangeException(nameof(high), high, "The upper bound must be above the lower.");
        }

        if (!(significance > 0 && significance < 0.5))
        {
            throw new ArgumentOutOfRangeException(nameof(significance), significance, "Must be between 0 and 0.5.");
        }
    }
}

/// <summary>The numbers of an equivalence test.</summary>
public sealed class EquivalenceEvidence
{
    internal EquivalenceEvidence(
        double value, double standardUncertainty, double degreesOfFreedom, (double Low, double High) bounds, double significance)
    {
        Value = value;
        StandardUncertainty = standardUncertainty;
        DegreesOfFreedom = degreesOfFreedom;
        Significance = significance;
        LowerBound = bounds.Low;
        UpperBound = bounds.High;
        ProbabilityAgainstLower = StudentT.UpperTail((value - bounds.Low) / standardUncertainty, degreesOfFreedom);
        ProbabilityAgainstUpper = StudentT.UpperTail((bounds.High - value) / standardUncertainty, degreesOfFreedom);
        double half = -StudentT.Quantile(significance, degreesOfFreedom) * standardUncertainty;
        Interval = new CoverageInterval(value - half, value + half, 1 - (2 * significance));
    }

    /// <summary>The estimate.</summary>
    public double Value { get; }

    /// <summary>Its standard uncertainty.</summary>
    public double StandardUncertainty { get; }

    /// <summary>The degrees of freedom of that uncertainty.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>The chance of error accepted on each side.</summary>
    public double Significance { get; }

    /// <summary>The smallest value that does not matter.</summary>
    public double LowerBound { get; }

    /// <summary>The largest value that does not matter.</summary>
    public double UpperBound { get; }

    /// <summary>The chance of so large an estimate or larger if the true value were at the lower bound.</summary>
    public double ProbabilityAgainstLower { get; }

    /// <summary>The chance of so small an estimate or smaller if the true value were at the upper bound.</summary>
    public double ProbabilityAgainstUpper { get; }

    /// <summary>The larger of the two: equivalence is shown where it is below the significance.</summary>
    public double Probability => Math.Max(ProbabilityAgainstLower, ProbabilityAgainstUpper);

    /// <summary>
    /// The interval of the estimate with coverage 1 - 2 × significance: it lies within the bounds exactly where both tests say so.
    /// </summary>
    public CoverageInterval Interval { get; }
}

/// <summary>What an equivalence test can say.</summary>
public abstract record EquivalenceResult
{
    private EquivalenceResult()
    {
    }

    /// <summary>The value lies within the bounds: no change that matters.</summary>
    public sealed record WithinBounds : EquivalenceResult
    {
        internal WithinBounds(EquivalenceEvidence evidence) => Evidence = evidence;

        /// <summary>The numbers that say so.</summary>
        public EquivalenceEvidence Evidence { get; }
    }

    /// <summary>The value lies beyond a bound: it changed by more than matters.</summary>
    public sealed record BeyondBounds : EquivalenceResult
    {
        internal BeyondBounds(EquivalenceEvidence evidence) => Evidence = evidence;

        /// <summary>The numbers that say so.</summary>
        public EquivalenceEvidence Evidence { get; }
    }

    /// <summary>These data show neither.</summary>
    public sealed record CannotTell : EquivalenceResult
    {
        internal CannotTell(EquivalenceEvidence evidence) => Evidence = evidence;

        /// <summary>The numbers that say so.</summary>
        public EquivalenceEvidence Evidence { get; }
    }

    /// <summary>The data allow no test.</summary>
    public sealed record NotTested : EquivalenceResult
    {
        internal NotTested(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }

    internal static EquivalenceResult Judge(EquivalenceEvidence evidence) =>
        evidence.Probability < evidence.Significance ? new WithinBounds(evidence)
        : evidence.Interval.High < evidence.LowerBound || evidence.Interval.Low > evidence.UpperBound
            ? new BeyondBounds(evidence)
            : new CannotTell(evidence);
}
