using Calx.Measurement.Numbers;

namespace Calx.Practicals.Findings.History;

/// <summary>A balance was held against a weight of known mass.</summary>
public sealed class BalanceCheckMade
{
    /// <summary>Takes a check.</summary>
    /// <param name="day">When.</param>
    /// <param name="weight">What is marked on the weight, in g, above 0.</param>
    /// <param name="shown">What the balance showed, in g, as written.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight has no mass.</exception>
    public BalanceCheckMade(DateOnly day, WrittenNumber weight, WrittenNumber shown)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(weight.Value, nameof(weight));
        Day = day;
        Weight = weight;
        Shown = shown;
    }

    /// <summary>When.</summary>
    public DateOnly Day { get; }

    /// <summary>What is marked on the weight, in g.</summary>
    public WrittenNumber Weight { get; }

    /// <summary>What the balance showed, in g.</summary>
    public WrittenNumber Shown { get; }

    /// <summary>Shown less marked, in g.</summary>
    public decimal ErrorInGrams => Shown.Value - Weight.Value;
}
