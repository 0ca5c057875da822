using System.Diagnostics;
using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Values;

/// <summary>All values between two ends. <c>default</c> is 0 alone.</summary>
/// <param name="Low">The lower end.</param>
/// <param name="High">The upper end, at least <paramref name="Low"/>; not a number at either end means no value.</param>
internal readonly record struct ValueRange(double Low, double High)
{
    /// <summary>No value.</summary>
    public static ValueRange None { get; } = new(double.NaN, double.NaN);

    /// <summary>Whether there is a value.</summary>
    public bool IsKnown => double.IsFinite(Low) && double.IsFinite(High);

    /// <summary>Its middle.</summary>
    public double Middle => (Low + High) / 2;

    /// <summary>How wide it is beside its middle.</summary>
    public double RelativeWidth => Middle == 0 ? double.PositiveInfinity : (High - Low) / Math.Abs(Middle);

    /// <summary>One value.</summary>
    public static ValueRange Of(double value) => new(value, value);

    /// <summary>A value give or take.</summary>
    public static ValueRange About(double value, double halfWidth) => new(value - halfWidth, value + halfWidth);

    /// <summary>Whether the two have a value in common; ends that differ by rounding of the machine touch.</summary>
    public bool Meets(ValueRange other)
    {
        double slack = 1e-9 * Math.Max(Math.Abs(Middle), Math.Abs(other.Middle));
        return IsKnown && other.IsKnown && Low <= other.High + slack && other.Low <= High + slack;
    }

    /// <summary>A formula over ranges: each end from the ends of its parts. A name that stands in it twice makes it wider than it
    /// need be, never narrower.</summary>
    /// <param name="tree">The formula.</param>
    /// <param name="names">ValueRange of each name.</param>
    /// <param name="molarMass">Molar mass of each formula, in g/mol.</param>
    public static ValueRange Of(Expression tree, Func<string, ValueRange> names, Func<string, double> molarMass) => tree switch
    {
        NumberTerm number => Of(number.Value),
        NameTerm name => names(name.Name),
        MolarMassTerm mass => Of(molarMass(mass.Formula)),
        Negation negation => Of(negation.Operand, names, molarMass) is var part ? new ValueRange(-part.High, -part.Low) : None,
        BinaryOperation operation => Of(operation.Operator, Of(operation.Left, names, molarMass), Of(operation.Right, names, molarMass)),
        FunctionCall call => Of(call.Function, [.. call.Arguments.Select(a => Of(a, names, molarMass))]),
        _ => throw new UnreachableException(),
    };

    private static ValueRange Of(Operator @operator, ValueRange a, ValueRange b)
    {
        if (!a.IsKnown || !b.IsKnown)
        {
            return None;
        }

        return @operator switch
        {
            Operator.Add => new ValueRange(a.Low + b.Low, a.High + b.High),
            Operator.Subtract => new ValueRange(a.Low - b.High, a.High - b.Low),
            Operator.Multiply => Corners(a, b, (x, y) => x * y),
            Operator.Divide => b.Low <= 0 && b.High >= 0 ? None : Corners(a, b, (x, y) => x / y),
            Operator.Power => a.Low > 0 || a == b || b.Low == b.High ? Corners(a, b, Math.Pow) : None,
            _ => throw new UnreachableException(),
        };
    }

    private static ValueRange Of(Function function, ValueRange[] a) => !a.All(r => r.IsKnown) ? None : function switch
    {
        Function.Ln => Finite(Math.Log(a[0].Low), Math.Log(a[0].High)),
        Function.Log10 => Finite(Math.Log10(a[0].Low), Math.Log10(a[0].High)),
        Function.Exp => Finite(Math.Exp(a[0].Low), Math.Exp(a[0].High)),
        Function.Sqrt => Finite(Math.Sqrt(a[0].Low), Math.Sqrt(a[0].High)),
        Function.Abs => a[0].Low >= 0 ? a[0] : a[0].High <= 0 ? new ValueRange(-a[0].High, -a[0].Low) : new ValueRange(0, Math.Max(-a[0].Low, a[0].High)),
        Function.Min => new ValueRange(a.Min(r => r.Low), a.Min(r => r.High)),
        Function.Max => new ValueRange(a.Max(r => r.Low), a.Max(r => r.High)),
        _ => throw new UnreachableException(),
    };

    private static ValueRange Finite(double low, double high) => double.IsFinite(low) && double.IsFinite(high) ? new ValueRange(low, high) : None;

    private static ValueRange Corners(ValueRange a, ValueRange b, Func<double, double, double> of)
    {
        double p = of(a.Low, b.Low), q = of(a.Low, b.High), r = of(a.High, b.Low), s = of(a.High, b.High);
        return Finite(Math.Min(Math.Min(p, q), Math.Min(r, s)), Math.Max(Math.Max(p, q), Math.Max(r, s)));
    }
}
