using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Statistics;

/// <summary>
/// One value from several independent ones that each carry a known standard uncertainty and may also differ between
/// themselves. Made by <see cref="RandomEffects.FromKnownUncertainties"/>.
/// </summary>
public sealed record PooledResult
{
    internal PooledResult(
        double value,
        double standardUncertainty,
        BetweenSpread spread,
        PooledInputs inputs,
        IReadOnlyList<double> weights)
    {
        Value = value;
        StandardUncertainty = standardUncertainty;
        Spread = spread;
        Within = inputs.Within;
        Count = inputs.Count;
        Q = inputs.Q;
        Weights = weights;
        DegreesOfFreedom = Count == 1 ? double.PositiveInfinity : Count - 1;
    }

    /// <summary>The weighted mean, in the unit of the values.</summary>
    public double Value { get; internal init; }

    /// <summary>
    /// The standard uncertainty of <see cref="Value"/> after Knapp and Hartung (Stat. Med. 22 (2003) 2693), never less
    /// than the weights alone give. It covers chance only: a bias shared by all groups is not in it.
    /// </summary>
    public double StandardUncertainty { get; internal init; }

    /// <summary>The spread between the values beyond their uncertainties, or why none is given.</summary>
    public BetweenSpread Spread { get; }

    /// <summary>τ, the standard deviation between, in the unit of the values; 0 where none was seen.</summary>
    public double Between => Spread.StandardDeviation;

    /// <summary>The root mean square of the values' own standard uncertainties.</summary>
    public double Within { get; }

    /// <summary>How many values were pooled, 1 or more.</summary>
    public int Count { get; }

    /// <summary>Count - 1; +∞ for a single value, whose uncertainty is taken as known. Above 4 where the spread between was
    /// expected beforehand.</summary>
    public double DegreesOfFreedom { get; internal init; }

    /// <summary>
    /// Cochran's Q: squared distances from the mean weighted with 1/u², summed; near Count - 1 where the uncertainties
    /// alone explain the differences.
    /// </summary>
    public double Q { get; }

    /// <summary>
    /// The share of Q beyond Count - 1, 0 to 1 (Higgins and Thompson, Stat. Med. 21 (2002) 1539); 0 for a single value.
    /// </summary>
    public double ISquared => Q > Count - 1 ? (Q - (Count - 1)) / Q : 0;

    /// <summary>The weight of each value in the order given; they sum to 1.</summary>
    public IReadOnlyList<double> Weights { get; }

    /// <summary>The 95 % interval of <see cref="Value"/> by Student's t; for a single value by the normal distribution.</summary>
    public CoverageInterval Interval => IntervalFor(0.95);

    /// <summary>The interval of <see cref="Value"/> for another coverage probability, between 0 and 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverage"/> is not between 0 and 1.</exception>
    public CoverageInterval IntervalFor(double coverage)
    {
        Require.Probability(coverage);
        double half = -StudentT.Quantile((1 - coverage) / 2, DegreesOfFreedom) * StandardUncertainty;
        return new CoverageInterval(Value - half, Value + half, coverage);
    }
}
