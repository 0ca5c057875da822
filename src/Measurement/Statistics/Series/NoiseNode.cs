namespace Calx.Measurement.Statistics.Series;

/// <summary>One assumption about the noise, in variances that share an unknown scale unless <paramref name="ScaleIsKnown"/>.</summary>
/// <param name="White">Variance that belongs to each reading alone.</param>
/// <param name="Shared">Variance that readings near in time share.</param>
/// <param name="SharedTime">The time in which that correlation falls to 1/e.</param>
/// <param name="WalkPerTime">Variance that a random walk gains in a unit of time.</param>
/// <param name="LogPrior">Logarithm of how much of the prior this assumption stands for.</param>
/// <param name="ScaleIsKnown">Whether the variances are in the unit of the readings.</param>
internal readonly record struct NoiseNode(
    double White, double Shared, double SharedTime, double WalkPerTime, double LogPrior, bool ScaleIsKnown)
{
    private const int Shares = 16;
    private const int SharedTimes = 12;
    private const int Walks = 24;

    // A walk's variance over a median gap, over that of a single reading.
    private const double LeastWalk = 1e-5;
    private const double MostWalk = 100;

    /// <summary>The assumptions that stand for a kind of noise.</summary>
    public static NoiseNode[] Of(SeriesNoise noise, SeriesRows rows)
    {
        double rounding = rows.Resolution * rows.Resolution / 12;
        return noise switch
        {
            SeriesNoise.Known known =>
            [
                new NoiseNode(
                    (known.IndependentPart * known.IndependentPart) + rounding,
                    known.CorrelatedPart * known.CorrelatedPart,
                    known.CorrelationTime,
                    known.WalkPerRootTime * known.WalkPerRootTime,
                    0,
                    true),
            ],
            SeriesNoise.Correlated => [.. CorrelatedNodes(rows)],
            SeriesNoise.Wandering => [.. WanderingNodes(rows)],
            _ => [new NoiseNode(1, 0, 1, 0, 0, false)],
        };
    }

    // The shared part of the variance is equally likely to be any share from 0 to 1, and the logarithm of its time any number
    // from a gap between readings to a third of the series.
    private static IEnumerable<NoiseNode> CorrelatedNodes(SeriesRows rows)
    {
        double longest = Math.Max(rows.Span / 3, 2 * rows.MedianGap);
        double logPrior = -Math.Log(Shares * SharedTimes);
        for (int i = 0; i < SharedTimes; i++)
        {
            double time = rows.MedianGap * Math.Pow(longest / rows.MedianGap, (i + 0.5) / SharedTimes);
            for (int j = 0; j < Shares; j++)
            {
                double share = (j + 0.5) / Shares;
                yield return new NoiseNode(1 - share, share, time, 0, logPrior, false);
            }
        }
    }

    // The standard deviation of the walk over a gap, r times that of a reading, has the density 1/(1 + r²), a half-Cauchy
    // (Gelman, Bayesian Analysis 1 (2006) 515); nodes are even in ln r, so that each stands for r/(1 + r²).
    private static IEnumerable<NoiseNode> WanderingNodes(SeriesRows rows)
    {
        double[] walks = [.. Enumerable.Range(0, Walks).Select(i => LeastWalk * Math.Pow(MostWalk / LeastWalk, (i + 0.5) / Walks))];
        double total = walks.Sum(walk => Math.Sqrt(walk) / (1 + walk));
        return walks.Select(walk => new NoiseNode(
            1, 0, 1, walk / rows.MedianGap, Math.Log(Math.Sqrt(walk) / (1 + walk) / total), false));
    }
}
