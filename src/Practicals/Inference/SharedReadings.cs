namespace Calx.Practicals.Inference;

/// <summary>How two quantities of one group vary together because they use the same readings.</summary>
internal static class SharedReadings
{
    /// <summary>Their covariance: Σ c₁ c₂ u² over the readings that both use (JCGM 100:2008, F.1.2.3).</summary>
    public static double Covariance(QuantityEstimate first, QuantityEstimate second)
    {
        double sum = 0;
        foreach (ReadingContribution one in first.Budget)
        {
            foreach (ReadingContribution other in second.Budget)
            {
                bool shared = one.Source == other.Source && one.Sensitivity != 0 && other.Sensitivity != 0;
                sum += shared ? one.Contribution * other.Contribution * Math.Sign(one.Sensitivity * other.Sensitivity) : 0;
            }
        }

        return sum;
    }
}
