using Calx.Measurement.Weighing;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// By how much the exact probability of a rounded reading differs from the normal law with the same variance: the logarithm
/// of the ratio, tabulated over the residual in standard deviations.
/// </summary>
internal sealed class RoundingRatio
{
    private const double Widest = 8;
    private const int PerUnit = 64;
    private const double HalfLogTwoPi = 0.91893853320467274178;

    /// <summary>A smoother balance than this does not exist in a school; a smaller noise is taken as this share of a
    /// division, where the posterior no longer depends on it.</summary>
    private const double LeastNoiseInDivisions = 0.1;

    private readonly double[] table;
    private readonly double perGram;

    /// <summary>Prepares the table of a balance.</summary>
    public RoundingRatio(double divisionInGrams, double noiseInGrams)
    {
        double noise = Math.Max(noiseInGrams, LeastNoiseInDivisions * divisionInGrams);
        double deviation = Math.Sqrt((noise * noise) + (divisionInGrams * divisionInGrams / 12));
        perGram = 1 / deviation;
        table = new double[(int)(Widest * PerUnit) + 2];
        for (int i = 0; i < table.Length; i++)
        {
            double residual = i * deviation / PerUnit;
            double normal = Math.Log(divisionInGrams / deviation) - HalfLogTwoPi - (0.5 * i * i / (double)(PerUnit * PerUnit));
            table[i] = RoundedNormal.LogProbability(residual, divisionInGrams, 0, noise) - normal;
        }

        NoiseInDivisions = noise / divisionInGrams;
    }

    /// <summary>Noise over division: how far the law is from normal.</summary>
    public double NoiseInDivisions { get; }

    /// <summary>Natural logarithm of exact over normal at a residual in g.</summary>
    public double LogAt(double residualInGrams)
    {
        double at = Math.Min(Math.Abs(residualInGrams) * perGram, Widest) * PerUnit;
        int i = (int)at;
        return table[i] + ((at - i) * (table[i + 1] - table[i]));
    }
}
