namespace Calx.Measurement.Uncertainty;

// Each operation throws UndefinedResultException where it has no finite value or derivative.
public sealed partial class UncertainValue
{
    /// <summary>The negative; the uncertainty stays.</summary>
    public static UncertainValue operator -(UncertainValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return Combine(-value.Value, [value], [-1]);
    }

    /// <summary>The sum of two quantities.</summary>
    public static UncertainValue operator +(UncertainValue left, UncertainValue right)
        => Join(left, right, CheckedMath.Add(ValueOf(left), ValueOf(right)), 1, 1);

    /// <summary>The difference of two quantities; 0 ± 0 for a quantity and itself.</summary>
    public static UncertainValue operator -(UncertainValue left, UncertainValue right)
        => Join(left, right, CheckedMath.Subtract(ValueOf(left), ValueOf(right)), 1, -1);

    /// <summary>The product of two quantities.</summary>
    public static UncertainValue operator *(UncertainValue left, UncertainValue right)
        => Join(left, right, CheckedMath.Multiply(ValueOf(left), ValueOf(right)), right.Value, left.Value);

    /// <summary>The quotient of two quantities.</summary>
    /// <exception cref="UndefinedResultException">The divisor is 0.</exception>
    public static UncertainValue operator /(UncertainValue left, UncertainValue right)
    {
        double quotient = CheckedMath.Divide(ValueOf(left), ValueOf(right));
        return Join(left, right, quotient, 1 / right.Value, -quotient / right.Value);
    }

    /// <summary>An exact number added.</summary>
    public static UncertainValue operator +(UncertainValue left, double right) => left + Exact(right);

    /// <summary>An exact number added.</summary>
    public static UncertainValue operator +(double left, UncertainValue right) => Exact(left) + right;

    /// <summary>An exact number taken away.</summary>
    public static UncertainValue operator -(UncertainValue left, double right) => left - Exact(right);

    /// <summary>Taken away from an exact number.</summary>
    public static UncertainValue operator -(double left, UncertainValue right) => Exact(left) - right;

    /// <summary>Times an exact number.</summary>
    public static UncertainValue operator *(UncertainValue left, double right) => left * Exact(right);

    /// <summary>Times an exact number.</summary>
    public static UncertainValue operator *(double left, UncertainValue right) => Exact(left) * right;

    /// <summary>Divided by an exact number.</summary>
    public static UncertainValue operator /(UncertainValue left, double right) => left / Exact(right);

    /// <summary>An exact number divided by a quantity.</summary>
    public static UncertainValue operator /(double left, UncertainValue right) => Exact(left) / right;

    private static double ValueOf(UncertainValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return value.Value;
    }

    private static UncertainValue Join(
        UncertainValue left, UncertainValue right, double value, double byLeft, double byRight)
        => Combine(value, [left, right], [byLeft, byRight]);
}
