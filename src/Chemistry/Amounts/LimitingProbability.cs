using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>
/// The probability of each of some normal quantities to be the smallest. Two: Φ of their difference over its standard
/// uncertainty. More: counted over evenly spread draws, good to about two digits after the point. Quantities that are
/// equal share the probability.
/// </summary>
internal static class LimitingProbability
{
    public static double[] Of(UncertainValue[] extents) => extents.Length switch
    {
        1 => [1],
        2 => OfTwo(extents[1] - extents[0]),
        _ => OfMany(extents),
    };

    private static double[] OfTwo(UncertainValue excess)
    {
        double u = excess.StandardUncertainty;
        double first = u > 0
            ? StandardNormal.Cumulative(excess.Value / u)
            : (Math.Sign(excess.Value) + 1) / 2.0;
        return [first, 1 - first];
    }

    private static double[] OfMany(UncertainValue[] extents)
    {
        double[] means = Array.ConvertAll(extents, extent => extent.Value);
        double[,] covariance = new double[extents.Length, extents.Length];
        for (int i = 0; i < extents.Length; i++)
        {
            for (int j = 0; j < extents.Length; j++)
            {
                covariance[i, j] = UncertainValue.Covariance(extents[i], extents[j]);
            }
        }

        double[] counts = new double[extents.Length];
        new NormalLattice(means, covariance).Mean(draw =>
        {
            Count(draw, counts);
            return 0;
        });
        return Array.ConvertAll(counts, count => count / NormalLattice.Points);
    }

    private static void Count(double[] draw, double[] counts)
    {
        double least = draw.Min();
        int ties = draw.Count(value => value == least);
        for (int i = 0; i < draw.Length; i++)
        {
            counts[i] += draw[i] == least ? 1.0 / ties : 0;
        }
    }
}
