using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Weighing;

/// <summary>One line of a balance's certificate: a weight of known mass and what the balance showed.</summary>
public sealed class CheckWeighing
{
    /// <summary>Takes a weight with its certified conventional mass.</summary>
    /// <param name="massInGrams">Conventional mass in grams; 0 with uncertainty 0 for the empty pan.</param>
    /// <param name="massStandardUncertaintyInGrams">Standard uncertainty of that mass, in grams.</param>
    /// <param name="indicated">What the balance showed, in grams.</param>
    /// <exception cref="ArgumentOutOfRangeException">The mass or its uncertainty is negative or not finite.</exception>
    public CheckWeighing(double massInGrams, double massStandardUncertaintyInGrams, WrittenNumber indicated)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(massInGrams);
        Mass = massStandardUncertaintyInGrams == 0
            ? UncertainValue.Exact(massInGrams)
            : UncertainValue.Of(
                FormattableString.Invariant($"check weight of {massInGrams} g"),
                massInGrams,
                massStandardUncertaintyInGrams);
        Indicated = indicated;
    }

    /// <summary>Takes a weight of which only nominal mass and class are known.</summary>
    /// <param name="nominalInGrams">Nominal mass, in grams.</param>
    /// <param name="limit">The limit of its class at this mass: <see cref="WeightTolerance.Of"/>.</param>
    /// <param name="indicated">What the balance showed, in grams.</param>
    /// <exception cref="ArgumentNullException"><paramref name="limit"/> is null.</exception>
    public CheckWeighing(double nominalInGrams, WeightTolerance.Limit limit, WrittenNumber indicated)
        : this(nominalInGrams, (limit ?? throw new ArgumentNullException(nameof(limit))).StandardUncertaintyInGrams, indicated)
    {
    }

    /// <summary>The weight's conventional mass, in grams.</summary>
    public UncertainValue Mass { get; }

    /// <summary>What the balance showed, in grams.</summary>
    public WrittenNumber Indicated { get; }
}
