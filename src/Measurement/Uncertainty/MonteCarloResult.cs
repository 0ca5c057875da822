namespace Calx.Measurement.Uncertainty;

/// <summary>What the draws of a measurement model show of its result (JCGM 101:2008, 7.5 to 7.7).</summary>
public sealed class MonteCarloResult
{
    internal MonteCarloResult(
        MonteCarloMoments moments, CoverageInterval shortest, CoverageInterval symmetric, IReadOnlyList<double>? sortedDraws)
    {
        Value = moments.Mean;
        StandardUncertainty = moments.StandardDeviation;
        Draws = (int)moments.Count;
        Shortest = shortest;
        Symmetric = symmetric;
        SortedDraws = sortedDraws;
    }

    /// <summary>The estimate: the mean of the draws (7.6).</summary>
    public double Value { get; }

    /// <summary>The standard deviation of the draws (7.6). Where the result's law has none, as for a t distribution with
    /// two degrees of freedom, the number depends on the draws and settles nowhere.</summary>
    public double StandardUncertainty { get; }

    /// <summary>The shortest interval that holds the coverage's share of the draws (5.3.4, 7.7.4).</summary>
    public CoverageInterval Shortest { get; }

    /// <summary>The interval with as many draws below as above it (5.3.3, 7.7.2).</summary>
    public CoverageInterval Symmetric { get; }

    /// <summary>How many draws were made.</summary>
    public int Draws { get; }

    /// <summary>All draws in rising order, the discrete representation of 7.5; null where they were not asked for.</summary>
    public IReadOnlyList<double>? SortedDraws { get; }
}
