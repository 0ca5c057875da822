namespace Calx.Measurement.Uncertainty;

/// <summary>Whether a first-order result may be relied on, judged by Monte Carlo (JCGM 101:2008, clause 8).</summary>
public abstract record ValidationOutcome
{
    private ValidationOutcome(double lowDifference, double highDifference, double tolerance)
    {
        LowDifference = lowDifference;
        HighDifference = highDifference;
        Tolerance = tolerance;
    }

    /// <summary>d_low: how far the lower ends of the two intervals are apart, in the unit of the result.</summary>
    public double LowDifference { get; }

    /// <summary>d_high: how far the upper ends are apart.</summary>
    public double HighDifference { get; }

    /// <summary>δ: how far apart they may be.</summary>
    public double Tolerance { get; }

    internal static ValidationOutcome Of(double lowDifference, double highDifference, double tolerance) =>
        Math.Max(lowDifference, highDifference) <= tolerance
            ? new Validated(lowDifference, highDifference, tolerance)
            : new NotValidated(lowDifference, highDifference, tolerance);

    /// <summary>Both ends agree to within the tolerance: the first-order result is validated for this case.</summary>
    public sealed record Validated : ValidationOutcome
    {
        internal Validated(double lowDifference, double highDifference, double tolerance)
            : base(lowDifference, highDifference, tolerance)
        {
        }
    }

    /// <summary>An end differs by more than the tolerance: use the Monte Carlo result.</summary>
    public sealed record NotValidated : ValidationOutcome
    {
        internal NotValidated(double lowDifference, double highDifference, double tolerance)
            : base(lowDifference, highDifference, tolerance)
        {
        }
    }
}
