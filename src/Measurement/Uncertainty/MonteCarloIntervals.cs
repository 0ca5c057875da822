namespace Calx.Measurement.Uncertainty;

/// <summary>
/// Coverage intervals from draws (JCGM 101:2008, 7.7). An interval holds q = pM draws, so that its lower end is among the
/// M − q lowest draws and its upper end among the M − q highest: only those are sorted.
/// </summary>
internal static class MonteCarloIntervals
{
    /// <summary>Everything the draws show. Puts the draws in order where that is asked for.</summary>
    public static MonteCarloResult Summarise(double[] values, MonteCarloMoments moments, MonteCarloSettings settings)
    {
        int outside = Outside(values.Length, settings.Coverage);
        if (settings.KeepSortedDraws)
        {
            MonteCarloSort.Sort(values);
        }

        (ReadOnlyMemory<double> low, ReadOnlyMemory<double> high) = settings.KeepSortedDraws
            ? (values.AsMemory(0, outside), values.AsMemory(values.Length - outside))
            : MonteCarloTails.Of(values, outside, settings.Parallelism);
        return new MonteCarloResult(
            moments,
            Shortest(low.Span, high.Span, settings.Coverage),
            Symmetric(low.Span, high.Span, settings.Coverage),
            settings.KeepSortedDraws ? Array.AsReadOnly(values) : null);
    }

    /// <summary>M − q, where q is pM rounded to the nearest whole number.</summary>
    public static int Outside(int draws, double coverage) => draws - (int)((coverage * draws) + 0.5);

    /// <summary>The narrowest of all intervals that hold q draws (7.7.4); the lowest of them where several are.</summary>
    public static CoverageInterval Shortest(ReadOnlySpan<double> low, ReadOnlySpan<double> high, double coverage)
    {
        int best = 0;
        double least = high[0] - low[0];
        for (int r = 1; r < low.Length; r++)
        {
            double width = high[r] - low[r];
            if (width < least)
            {
                (best, least) = (r, width);
            }
        }

        return new CoverageInterval(low[best], high[best], coverage);
    }

    // 7.7.2: r is (M − q)/2, or that rounded up.
    private static CoverageInterval Symmetric(ReadOnlySpan<double> low, ReadOnlySpan<double> high, double coverage)
    {
        int r = (low.Length + 1) / 2;
        return new CoverageInterval(low[r - 1], high[r - 1], coverage);
    }
}
