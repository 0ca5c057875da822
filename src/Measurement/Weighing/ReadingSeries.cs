using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Weighing;

/// <summary>
/// Readings taken on one balance between two zeroings, as uncertain masses that share its zero error: in a difference
/// of two of them the zero cancels by itself.
/// </summary>
public sealed class ReadingSeries
{
    private readonly BalanceCorrection? correction;
    private readonly UncertainValue zero;

    /// <summary>Starts a series.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="correction">What check weights said of this balance, or null: then readings are not corrected.</param>
    /// <exception cref="ArgumentNullException"><paramref name="balance"/> is null.</exception>
    public ReadingSeries(Balance balance, BalanceCorrection? correction = null)
    {
        ArgumentNullException.ThrowIfNull(balance);
        Balance = balance;
        this.correction = correction;
        zero = balance.ZeroStandardUncertaintyInGrams == 0
            ? UncertainValue.Exact(0)
            : UncertainValue.Of("zero of the balance", 0, balance.ZeroStandardUncertaintyInGrams);
    }

    /// <summary>The balance.</summary>
    public Balance Balance { get; }

    /// <summary>
    /// The mass in grams that a reading stands for, less the balance's error where check weights told it. Each call is
    /// one more reading, with its own rounding and noise.
    /// </summary>
    /// <param name="name">What a budget calls the reading.</param>
    /// <param name="reading">The digits, in grams.</param>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    public UncertainValue Mass(string name, WrittenNumber reading)
    {
        UncertainValue mass = UncertainValue.Of(name, reading.AsDouble, Balance.ReadingStandardUncertainty()) - zero;
        if (Balance.LinearityInGrams > 0)
        {
            mass -= UncertainValue.Of($"linearity at {name}", 0, Balance.LinearityInGrams / Math.Sqrt(3));
        }

        return correction is null ? mass : mass - correction.ErrorAt(reading.AsDouble);
    }
}
