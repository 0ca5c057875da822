namespace Calx.Measurement.Uncertainty;

// Variances, covariances, the budget.
public sealed partial class UncertainValue
{
    /// <summary>Combined standard uncertainty (JCGM 100:2008, equations 10 and 16), in the unit of the value.</summary>
    public double StandardUncertainty => Math.Sqrt(Math.Max(0, Covariance(this, this)));

    /// <summary>Standard uncertainty divided by |value|: 0 where both are 0, +∞ where only the value is.</summary>
    public double RelativeStandardUncertainty
    {
        get
        {
            double u = StandardUncertainty;
            return u == 0 ? 0 : u / Math.Abs(Value);
        }
    }

    /// <summary>What each input contributes, in order of first appearance.</summary>
    public IReadOnlyList<BudgetEntry> Budget
    {
        get
        {
            double variance = Covariance(this, this);
            var lookup = new SensitivityLookup(Terms);
            var entries = new BudgetEntry[Terms.Length];
            for (int i = 0; i < entries.Length; i++)
            {
                (UncertainInput input, double sensitivity) = Terms[i];
                double contribution = Math.Abs(sensitivity) * input.StandardUncertainty;
                double share = variance > 0 ? lookup.PartOfCovariance(Terms[i], Groups) / variance : 0;
                entries[i] = new BudgetEntry(input, sensitivity, contribution, share);
            }

            return entries;
        }
    }

    /// <summary>Derivative by an input; 0 where the value does not depend on it.</summary>
    public double SensitivityTo(UncertainInput input)
        => Array.Find(Terms, term => ReferenceEquals(term.Input, input)).Sensitivity;

    /// <summary>Covariance of two values through the inputs they share and the correlations of their inputs
    /// (JCGM 100:2008, equation F.2 with correlated inputs).</summary>
    /// <exception cref="InvalidOperationException">They rest on two overlapping sets of correlated inputs.</exception>
    public static double Covariance(UncertainValue left, UncertainValue right)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        CorrelationGroup[] groups = SensitivityList.Groups([left, right]);
        var rightBy = new SensitivityLookup(right.Terms);
        double covariance = 0;
        foreach (SensitivityTerm term in left.Terms)
        {
            covariance += rightBy.PartOfCovariance(term, groups);
        }

        return CheckedMath.Finite("variance", covariance);
    }

    /// <summary>Correlation coefficient of two values, -1 to 1; 0 where one of them has no uncertainty.</summary>
    public static double Correlation(UncertainValue left, UncertainValue right)
    {
        double scale = left.StandardUncertainty * right.StandardUncertainty;
        return scale == 0 ? 0 : Math.Clamp(Covariance(left, right) / scale, -1, 1);
    }
}
