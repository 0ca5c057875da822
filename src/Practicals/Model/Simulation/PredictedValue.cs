using Calx.Measurement.Statistics;

namespace Calx.Practicals.Model.Simulation;

/// <summary>Where a number will probably lie.</summary>
public sealed class PredictedValue
{
    private PredictedValue(double median, (double Low, double High) half, (double Low, double High) most, double share)
    {
        Median = median;
        Half = half;
        Most = most;
        Share = share;
    }

    /// <summary>As many groups lie below as above.</summary>
    public double Median { get; }

    /// <summary>Half of all groups lie between these two, a quarter on either side.</summary>
    public (double Low, double High) Half { get; }

    /// <summary>95 of 100 groups lie between these two, 2.5 on either side.</summary>
    public (double Low, double High) Most { get; }

    /// <summary>Share of the groups that have the number at all, above 0 to 1.</summary>
    public double Share { get; }

    /// <summary>From the numbers of the groups that have one; null where none has.</summary>
    internal static PredictedValue? Of(List<double> numbers, int groups)
    {
        if (numbers.Count == 0)
        {
            return null;
        }

        double[] sorted = [.. numbers.Order()];
        return new PredictedValue(
            Summary.QuantileOfSorted(sorted, 0.5),
            (Summary.QuantileOfSorted(sorted, 0.25), Summary.QuantileOfSorted(sorted, 0.75)),
            (Summary.QuantileOfSorted(sorted, 0.025), Summary.QuantileOfSorted(sorted, 0.975)),
            (double)numbers.Count / groups);
    }
}
