using System.Runtime.CompilerServices;

namespace Calx.Measurement.Statistics;

/// <summary>What every method here asks of its numbers: enough of them, and all finite.</summary>
internal static class Require
{
    /// <summary>No quantity of a laboratory is larger, and the square of a larger one may not be a number.</summary>
    private const double Largest = 1e150;

    public static void Finite(
        ReadOnlySpan<double> values,
        int least,
        [CallerArgumentExpression(nameof(values))] string name = "")
    {
        if (values.Length < least)
        {
            throw new ArgumentException($"At least {least} values are needed, {values.Length} were given.", name);
        }

        foreach (double value in values)
        {
            if (!(Math.Abs(value) <= Largest))
            {
                throw new ArgumentException($"Every value must be finite and at most {Largest:g}; {value} is not.", name);
            }
        }
    }

    public static void SameLength(
        ReadOnlySpan<double> values,
        int length,
        [CallerArgumentExpression(nameof(values))] string name = "")
    {
        if (values.Length != length)
        {
            throw new ArgumentException($"There must be as many numbers as values: {length}, not {values.Length}.", name);
        }
    }

    public static void Positive(
        ReadOnlySpan<double> values,
        [CallerArgumentExpression(nameof(values))] string name = "")
    {
        foreach (double value in values)
        {
            Positive(value, name);
        }
    }

    public static void Positive(
        double value,
        [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0 && value <= Largest))
        {
            throw new ArgumentOutOfRangeException(name, value, "A positive finite number is needed.");
        }
    }

    public static void Probability(double value, [CallerArgumentExpression(nameof(value))] string name = "")
    {
        if (!(value > 0 && value < 1))
        {
            throw new ArgumentOutOfRangeException(name, value, "A probability between 0 and 1, both excluded, is needed.");
        }
    }
}
