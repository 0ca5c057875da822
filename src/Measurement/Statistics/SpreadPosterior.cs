namespace Calx.Measurement.Statistics;

/// <summary>
/// The mean of few groups when it is known beforehand about how much groups differ: values y with known variances v, τ² between
/// them, τ half-normal. τ is not estimated but averaged over, point by point, with the restricted likelihood as weight; what
/// comes out for the mean is a mixture of normal laws (docs/methods/class-result.md).
/// </summary>
internal static class SpreadPosterior
{
    /// <summary>Points of τ: the peak of the posterior of sixty groups is still wider than the distance between two.</summary>
    private const int Points = 48;

    /// <summary>Beyond so many scales less than a millionth of the prior lies.</summary>
    private const double Reach = 5;

    /// <summary>Mean, variance and kurtosis of the mixture.</summary>
    /// <param name="offsets">The values, from any origin near them.</param>
    /// <param name="variances">The variance of each, above 0.</param>
    /// <param name="scale">Scale of the half-normal law of τ, above 0.</param>
    public static Mixture Of(ReadOnlySpan<double> offsets, ReadOnlySpan<double> variances, double scale)
    {
        Span<double> logs = stackalloc double[Points];
        Span<double> means = stackalloc double[Points];
        Span<double> spreads = stackalloc double[Points];
        // τ = unit · sinh t: even steps near 0, where τ hardly counts beside the known part, and even shares farther out.
        double unit = Math.Sqrt(Least(variances));
        double step = Math.Asinh(Reach * scale / unit) / (Points - 1);
        double highest = double.NegativeInfinity;
        for (int j = 0; j < Points; j++)
        {
            double between = unit * Math.Sinh(j * step);
            (double height, means[j], spreads[j]) = At(offsets, variances, between * between);
            double end = j is 0 or Points - 1 ? 0.5 : 1;
            logs[j] = height - (0.5 * between * between / (scale * scale)) + Math.Log(end * Math.Cosh(j * step));
            highest = Math.Max(highest, logs[j]);
        }

        return Averaged(logs, means, spreads, highest);
    }

    private static Mixture Averaged(Span<double> logs, Span<double> means, Span<double> spreads, double highest)
    {
        double total = 0;
        double mean = 0;
        double variance = 0;
        for (int j = 0; j < Points; j++)
        {
            logs[j] = Math.Exp(logs[j] - highest);
            total += logs[j];
            mean += logs[j] * means[j];
            variance += logs[j] * spreads[j];
        }

        mean /= total;
        variance /= total;
        double moved = 0;
        double uneven = 0;
        for (int j = 0; j < Points; j++)
        {
            moved += logs[j] * (means[j] - mean) * (means[j] - mean);
            uneven += logs[j] * (spreads[j] - variance) * (spreads[j] - variance);
        }

        return new Mixture(mean, variance + (moved / total), 3 * uneven / total / (variance * variance));
    }

    /// <summary>The restricted likelihood's logarithm at one τ², and the mean that goes with it.</summary>
    private static (double Height, double Mean, double Variance) At(ReadOnlySpan<double> offsets, ReadOnlySpan<double> variances, double between)
    {
        double weight = 0;
        double weighted = 0;
        double squares = 0;
        double logarithms = 0;
        for (int i = 0; i < offsets.Length; i++)
        {
            double w = 1 / (variances[i] + between);
            weight += w;
            weighted += w * offsets[i];
            squares += w * offsets[i] * offsets[i];
            logarithms += Math.Log(w);
        }

        double mean = weighted / weight;
        return (0.5 * (logarithms - Math.Log(weight) - (squares - (weighted * mean))), mean, 1 / weight);
    }

    private static double Least(ReadOnlySpan<double> variances)
    {
        double least = variances[0];
        foreach (double variance in variances)
        {
            least = Math.Min(least, variance);
        }

        return least;
    }

    /// <summary>What is known of the mean.</summary>
    /// <param name="Mean">Its expectation, from the same origin as the values.</param>
    /// <param name="Variance">Its variance.</param>
    /// <param name="ExcessKurtosis">How much heavier its tails are than the normal law's, 0 or more.</param>
    public readonly record struct Mixture(double Mean, double Variance, double ExcessKurtosis)
    {
        /// <summary>Beyond so many degrees of freedom Student's t is the normal law.</summary>
        private const double MostDegrees = 1e6;

        /// <summary>Degrees of freedom of the Student's t law of the same variance and kurtosis, 6/(ν − 4).</summary>
        public double DegreesOfFreedom => Math.Min(MostDegrees, 4 + (6 / Math.Max(ExcessKurtosis, 1e-12)));

        /// <summary>The scale of that law, which a t interval multiplies.</summary>
        public double StandardUncertainty => Math.Sqrt(Variance * (DegreesOfFreedom - 2) / DegreesOfFreedom);
    }
}
