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
