namespace Calx.Measurement.Statistics;

/// <summary>
/// A number kept as an unevaluated pair of doubles, about 32 significant digits (Dekker, Numer. Math. 18 (1971) 224).
/// Readings of a balance differ in their last digits only, and plain sums and least squares lose exactly those.
/// <c>default</c> is 0.
/// </summary>
internal readonly struct DoubleDouble
{
    private DoubleDouble(double high, double low)
    {
        High = high;
        Low = low;
    }

    /// <summary>The number rounded to a double.</summary>
    public double High { get; }

    /// <summary>What <see cref="High"/> misses.</summary>
    public double Low { get; }

    public static implicit operator DoubleDouble(double value) => new(value, 0);

    public static DoubleDouble operator -(DoubleDouble value) => new(-value.High, -value.Low);

    public static DoubleDouble operator +(DoubleDouble left, double right)
    {
        (double sum, double error) = TwoSum(left.High, right);
        return Normal(sum, error + left.Low);
    }

    public static DoubleDouble operator +(DoubleDouble left, DoubleDouble right)
    {
        (double high, double highError) = TwoSum(left.High, right.High);
        (double low, double lowError) = TwoSum(left.Low, right.Low);
        DoubleDouble first = Normal(high, highError + low);
        return Normal(first.High, first.Low + lowError);
    }

    public static DoubleDouble operator -(DoubleDouble left, DoubleDouble right) => left + -right;

    public static DoubleDouble operator *(DoubleDouble left, DoubleDouble right)
    {
        double product = left.High * right.High;
        double error = Math.FusedMultiplyAdd(left.High, right.High, -product);
        return Normal(product, error + ((left.High * right.Low) + (left.Low * right.High)));
    }

    public static DoubleDouble operator /(DoubleDouble left, DoubleDouble right)
    {
        double quotient = left.High / right.High;
        DoubleDouble rest = left - (right * quotient);
        double second = rest.High / right.High;
        rest -= right * second;
        return Normal(quotient, second) + (rest.High / right.High);
    }

    /// <summary>The product of two doubles without rounding.</summary>
    public static DoubleDouble Product(double left, double right)
    {
        double product = left * right;
        return new DoubleDouble(product, Math.FusedMultiplyAdd(left, right, -product));
    }

    /// <summary>The square root of a number not below 0.</summary>
    public static DoubleDouble Sqrt(DoubleDouble value)
    {
        if (value.High <= 0)
        {
            return 0;
        }

        double root = Math.Sqrt(value.High);
        return (DoubleDouble)root + ((value - Product(root, root)).High / (2 * root));
    }

    private static DoubleDouble Normal(double high, double low)
    {
        double sum = high + low;
        return new DoubleDouble(sum, low - (sum - high));
    }

    private static (double Sum, double Error) TwoSum(double left, double right)
    {
        double sum = left + right;
        double part = sum - left;
        return (sum, left - (sum - part) + (right - part));
    }
}
