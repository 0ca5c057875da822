namespace Calx.Measurement.Distributions;

/// <summary>Differences that lose their digits when they are computed as they are written.</summary>
internal static class SmallDifferences
{
    // Below this the series is shorter and exact; above it nothing cancels.
    private const double SeriesLimit = 0.1;

    /// <summary>ln(1 + x) to the last digits also for small x (the runtime's own rounds 1 + x first).</summary>
    public static double LogOnePlus(double x)
    {
        double rounded = 1 + x;
        return rounded == 1 || double.IsInfinity(rounded) ? x : Math.Log(rounded) * (x / (rounded - 1));
    }

    /// <summary>
    /// r − 1 − ln r, the deviance of a ratio r from 1 (Loader 2000, <i>Fast and accurate computation of binomial
    /// probabilities</i>), 0 or more.
    /// </summary>
    /// <param name="excess">r − 1, computed without cancellation.</param>
    /// <param name="logRatio">ln r, used away from r = 1.</param>
    public static double Deviance(double excess, double logRatio)
    {
        if (Math.Abs(excess) > SeriesLimit)
        {
            return excess - logRatio;
        }

        // ln(1 + e) = 2 artanh(v) with v = e / (2 + e), and e − 2v = e v.
        double v = excess / (2 + excess);
        double square = v * v;
        double power = 2 * v * square;
        double deviance = excess * v;
        for (int odd = 3; ; odd += 2)
        {
            double next = deviance - (power / odd);
            if (next == deviance)
            {
                return deviance;
            }

            deviance = next;
            power *= square;
        }
    }
}
