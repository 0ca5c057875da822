namespace Calx.Measurement.Uncertainty;

// Each function throws UndefinedResultException outside its domain, and where it has no finite derivative by an
// argument that is uncertain: there, first-order propagation has no answer.
public sealed partial class UncertainValue
{
    /// <summary>A quantity raised to an exact power.</summary>
    public static UncertainValue Pow(UncertainValue number, double exponent) => Pow(number, Exact(exponent));

    /// <summary>A quantity raised to a power.</summary>
    /// <exception cref="UndefinedResultException">0 to a negative power, a negative number to a power that is not
    /// whole, or a negative number to a power that is itself uncertain.</exception>
    public static UncertainValue Pow(UncertainValue number, UncertainValue exponent)
    {
        double x = ValueOf(number);
        double y = ValueOf(exponent);
        double power = CheckedMath.Power(x, y);
        return Join(number, exponent, power, PowerByNumber(number, y), PowerByExponent(x, exponent, power));
    }

    /// <summary>The natural logarithm.</summary>
    public static UncertainValue Ln(UncertainValue number)
        => Map(number, CheckedMath.Ln(ValueOf(number)), 1 / number.Value);

    /// <summary>The logarithm to base 10.</summary>
    public static UncertainValue Log10(UncertainValue number)
        => Map(number, CheckedMath.Log10(ValueOf(number)), 1 / (number.Value * Math.Log(10)));

    /// <summary>e raised to the quantity.</summary>
    public static UncertainValue Exp(UncertainValue number)
    {
        double power = CheckedMath.Exp(ValueOf(number));
        return Map(number, power, power);
    }

    /// <summary>The square root.</summary>
    public static UncertainValue Sqrt(UncertainValue number)
    {
        double root = CheckedMath.Sqrt(ValueOf(number));
        return root > 0 || number.IsExact ? Map(number, root, root > 0 ? 0.5 / root : 0) : throw NoSlope("sqrt");
    }

    /// <summary>The amount without its sign.</summary>
    /// <exception cref="UndefinedResultException">The value is 0 and uncertain: the function has a corner there.</exception>
    public static UncertainValue Abs(UncertainValue number)
    {
        double x = ValueOf(number);
        return x != 0 || number.StandardUncertainty == 0
            ? Map(number, Math.Abs(x), Math.Sign(x))
            : throw NoSlope("abs");
    }

    /// <summary>The smaller of two quantities, judged by their estimates.</summary>
    /// <exception cref="UndefinedResultException">Both are equal but not the same: there is a corner there.</exception>
    public static UncertainValue Min(UncertainValue left, UncertainValue right)
        => ValueOf(left) == ValueOf(right) ? Tied("min", left, right) : left.Value < right.Value ? left : right;

    /// <summary>The larger of two quantities, judged by their estimates.</summary>
    /// <exception cref="UndefinedResultException">Both are equal but not the same: there is a corner there.</exception>
    public static UncertainValue Max(UncertainValue left, UncertainValue right)
        => ValueOf(left) == ValueOf(right) ? Tied("max", left, right) : left.Value > right.Value ? left : right;

    private static UncertainValue Tied(string operation, UncertainValue left, UncertainValue right)
        => (left - right).StandardUncertainty == 0 ? left : throw CheckedMath.Fault(
            operation, $"{operation} has no derivative where its arguments are equal ({CheckedMath.Show(left.Value)})");

    private static UncertainValue Map(UncertainValue argument, double value, double derivative)
        => Combine(value, [argument], [derivative]);

    private static UndefinedResultException NoSlope(string operation)
        => CheckedMath.Fault(operation, $"{operation} has no derivative where its argument is 0");

    private static double PowerByNumber(UncertainValue number, double exponent)
    {
        if (number.IsExact || exponent == 0)
        {
            return 0;
        }

        return number.Value != 0 || exponent >= 1
            ? exponent * CheckedMath.RawPower(number.Value, exponent - 1)
            : throw NoSlope("^");
    }

    private static double PowerByExponent(double number, UncertainValue exponent, double power)
    {
        if (exponent.IsExact)
        {
            return 0;
        }

        return number switch
        {
            > 0 => power * Math.Log(number),
            0 when exponent.Value > 0 => 0,
            _ => throw CheckedMath.Fault(
                "^", $"{CheckedMath.Show(number)} raised to an uncertain power has no derivative by the power"),
        };
    }
}
