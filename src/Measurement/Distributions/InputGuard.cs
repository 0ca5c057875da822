using System.Globalization;

namespace Calx.Measurement.Distributions;

/// <summary>Checks the parameters of input distributions; the messages are plain sentences fit for a user.</summary>
internal static class InputGuard
{
    /// <summary>The largest magnitude taken; squares of larger numbers may not be numbers.</summary>
    private const double Largest = 1e150;

    public static double Finite(double value, string what) => Math.Abs(value) <= Largest
        ? value
        : throw Fault($"The {what} must be a finite number of at most 1e150; it is {Shown(value)}.");

    public static double Positive(double value, string what) => value > 0 && value <= Largest
        ? value
        : throw Fault($"The {what} must be a finite number above 0; it is {Shown(value)}.");

    public static double NotNegative(double value, string what) => value >= 0 && value <= Largest
        ? value
        : throw Fault($"The {what} must be a finite number of 0 or more; it is {Shown(value)}.");

    public static void Rising(double low, double high)
    {
        Finite(low, "lower limit");
        Finite(high, "upper limit");
        if (!(low < high))
        {
            throw Fault($"The lower limit must be below the upper limit; they are {Shown(low)} and {Shown(high)}.");
        }
    }

    public static ArgumentException Fault(string sentence) => new(sentence);

    public static string Shown(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
