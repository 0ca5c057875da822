using Calx.Measurement.Distributions;

namespace Calx.Measurement.Uncertainty;

// Degrees of freedom, coverage factors and intervals, comparison.
public sealed partial class UncertainValue
{
    /// <summary>
    /// Effective degrees of freedom by Welch and Satterthwaite (JCGM 100:2008, G.4.1), not truncated; +∞ where no
    /// uncertain input has finite ones. The formula is for independent components: inputs that are correlated with
    /// each other count here as one component, with their joint variance and the least of their degrees of freedom.
    /// That is exact for means of the same simultaneous observations (JCGM 100:2008, H.2) and cautious otherwise.
    /// </summary>
    public double DegreesOfFreedom => WelchSatterthwaite.EffectiveDegreesOfFreedom(this);

    /// <summary>
    /// Coverage factor k: Student's t for the effective degrees of freedom, truncated to a whole number as
    /// JCGM 100:2008, G.4.1 asks (but not below 1).
    /// </summary>
    /// <param name="coverage">Probability that the interval is to have, above 0 and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The coverage is not a probability between 0 and 1.</exception>
    public double CoverageFactor(double coverage = 0.95)
    {
        if (!(coverage > 0 && coverage < 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(coverage), coverage, "A coverage probability lies between 0 and 1.");
        }

        return StudentT.Quantile((1 + coverage) / 2, WelchSatterthwaite.Truncated(DegreesOfFreedom));
    }

    /// <summary>Value ± k u (JCGM 100:2008, 6.2 and G.6.4): assumes that the value's error is near to normal.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The coverage is not a probability between 0 and 1.</exception>
    public CoverageInterval Interval(double coverage = 0.95)
    {
        double expanded = CoverageFactor(coverage) * StandardUncertainty;
        return new CoverageInterval(Value - expanded, Value + expanded, coverage);
    }

    /// <summary>Whether two values differ by no more than k standard uncertainties of their difference, shared inputs
    /// taken into account.</summary>
    /// <param name="other">A quantity of the same kind, in the same unit.</param>
    /// <param name="k">Coverage factor, above 0; 2 is common practice.</param>
    public bool IsConsistentWith(UncertainValue other, double k = 2)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(k);
        UncertainValue difference = this - other;
        return Math.Abs(difference.Value) <= k * difference.StandardUncertainty;
    }
}
