using System.Globalization;

namespace Calx.Measurement.Uncertainty;

/// <summary>
/// The arithmetic of measurement over doubles: each function gives a finite number or throws
/// <see cref="UndefinedResultException"/>. Uncertain values and formulas share it, so that they fail alike.
/// </summary>
internal static class CheckedMath
{
    public static double Add(double left, double right) => Finite("+", left + right);

    public static double Subtract(double left, double right) => Finite("-", left - right);

    public static double Multiply(double left, double right) => Finite("*", left * right);

    public static double Divide(double left, double right)
        => right == 0 ? throw Fault("/", "division by zero") : Finite("/", left / right);

    public static double Power(double number, double exponent)
    {
        if (number == 0 && exponent < 0)
        {
            throw Fault("^", $"0 cannot be raised to the negative power {Show(exponent)}");
        }

        if (number < 0 && exponent != Math.Floor(exponent))
        {
            throw Fault("^", $"the negative number {Show(number)} cannot be raised to the power {Show(exponent)}");
        }

        return Finite("^", RawPower(number, exponent));
    }

    /// <summary>The power without a check. Small whole powers are products, as the block program computes them.</summary>
    public static double RawPower(double number, double exponent) => exponent switch
    {
        1 => number,
        2 => number * number,
        3 => number * number * number,
        4 => number * number * (number * number),
        0.5 => Math.Sqrt(number),
        -1 => 1 / number,
        -2 => 1 / (number * number),
        _ => Math.Pow(number, exponent),
    };

    public static double Ln(double number) => number > 0
        ? Math.Log(number)
        : throw Fault("ln", $"ln of {Show(number)} has no value: logarithms take numbers above 0");

    public static double Log10(double number) => number > 0
        ? Math.Log10(number)
        : throw Fault("log10", $"log10 of {Show(number)} has no value: logarithms take numbers above 0");

    public static double Exp(double number) => Finite("exp", Math.Exp(number));

    public static double Sqrt(double number) => number >= 0
        ? Math.Sqrt(number)
        : throw Fault("sqrt", $"sqrt of {Show(number)} has no value: square roots take numbers of at least 0");

    /// <summary>Hands on a finite number; anything else is told as an overflow of <paramref name="operation"/>.</summary>
    public static double Finite(string operation, double result) => double.IsFinite(result)
        ? result
        : throw Fault(operation, $"the result of {operation} is too large to compute with");

    public static UndefinedResultException Fault(string operation, string reason) => new(operation, reason);

    public static string Show(double number) => number.ToString("G6", CultureInfo.InvariantCulture);
}
