using Calx.Measurement.Expressions;

namespace Calx.Practicals.Inference;

/// <summary>One operation of a <see cref="QuantityProgram"/>: it fills its slot, a value followed by its gradient.</summary>
internal readonly struct Instruction
{
    private readonly Kind kind;
    private readonly double constant;
    private readonly int left;
    private readonly int right;
    private readonly int[]? arguments;

    private Instruction(Kind kind, double constant = 0, int left = 0, int right = 0, int[]? arguments = null)
    {
        this.kind = kind;
        this.constant = constant;
        this.left = left;
        this.right = right;
        this.arguments = arguments;
    }

    private enum Kind
    {
        Constant, Variable, Negate, Add, Subtract, Multiply, Divide, Power, Ln, Log10, Exp, Sqrt, Abs, Min, Max,
    }

    public static Instruction Constant(double value) => new(Kind.Constant, value);

    public static Instruction Variable(int index) => new(Kind.Variable, left: index);

    public static Instruction Negate(int operand) => new(Kind.Negate, left: operand);

    public static Instruction Join(Operator @operator, int left, int right) => new(
        @operator switch
        {
            Operator.Add => Kind.Add,
            Operator.Subtract => Kind.Subtract,
            Operator.Multiply => Kind.Multiply,
            Operator.Divide => Kind.Divide,
            _ => Kind.Power,
        },
        left: left,
        right: right);

    public static Instruction Apply(Function function, int[] arguments) => new(
        function switch
        {
            Function.Ln => Kind.Ln,
            Function.Log10 => Kind.Log10,
            Function.Exp => Kind.Exp,
            Function.Sqrt => Kind.Sqrt,
            Function.Abs => Kind.Abs,
            Function.Min => Kind.Min,
            _ => Kind.Max,
        },
        left: arguments[0],
        arguments: arguments);

    /// <summary>Computes the operation from the slots filled before.</summary>
    /// <param name="variables">The formula's variables.</param>
    /// <param name="slots">All slots.</param>
    /// <param name="result">This operation's slot.</param>
    /// <param name="size">Numbers a slot.</param>
    public void Run(ReadOnlySpan<double> variables, ReadOnlySpan<double> slots, Span<double> result, int size)
    {
        ReadOnlySpan<double> a = kind <= Kind.Variable ? default : slots.Slice(left * size, size);
        ReadOnlySpan<double> b = kind is >= Kind.Add and <= Kind.Power ? slots.Slice(right * size, size) : default;
        switch (kind)
        {
            case Kind.Constant:
                result.Clear();
                result[0] = constant;
                break;
            case Kind.Variable:
                result.Clear();
                result[0] = variables[left];
                result[left + 1] = 1;
                break;
            case Kind.Min or Kind.Max:
                Extreme(slots, size).CopyTo(result);
                break;
            case Kind.Power:
                Power(a, b, result);
                break;
            case >= Kind.Add and <= Kind.Divide:
                (double value, double byLeft, double byRight) = Pair(a[0], b[0]);
                Chain(a, byLeft, b, byRight, result);
                result[0] = value;
                break;
            default:
                (double image, double slope) = Single(a[0]);
                Chain(a, slope, default, 0, result);
                result[0] = image;
                break;
        }
    }

    private (double Value, double ByLeft, double ByRight) Pair(double a, double b) => kind switch
    {
        Kind.Add => (a + b, 1, 1),
        Kind.Subtract => (a - b, 1, -1),
        Kind.Multiply => (a * b, b, a),
        _ => (a / b, 1 / b, -a / (b * b)),
    };

    private (double Value, double Slope) Single(double a) => kind switch
    {
        Kind.Negate => (-a, -1),
        Kind.Ln => (Math.Log(a), 1 / a),
        Kind.Log10 => (Math.Log10(a), 1 / (a * Math.Log(10))),
        Kind.Exp => (Math.Exp(a), Math.Exp(a)),
        Kind.Sqrt => (Math.Sqrt(a), 0.5 / Math.Sqrt(a)),
        _ => (Math.Abs(a), Math.Sign(a)),
    };

    /// <summary>a^b: the logarithm of a negative base is not asked for where the exponent does not vary.</summary>
    private static void Power(ReadOnlySpan<double> a, ReadOnlySpan<double> b, Span<double> result)
    {
        double value = Math.Pow(a[0], b[0]);
        bool exponentVaries = b[1..].ContainsAnyExcept(0);
        double byExponent = exponentVaries ? value * Math.Log(a[0]) : 0;
        double byBase = b[0] == 0 ? 0 : b[0] * Math.Pow(a[0], b[0] - 1);
        Chain(a, byBase, b, byExponent, result);
        result[0] = value;
    }

    private static void Chain(ReadOnlySpan<double> a, double byA, ReadOnlySpan<double> b, double byB, Span<double> result)
    {
        for (int i = 1; i < result.Length; i++)
        {
            result[i] = byA * a[i] + (b.IsEmpty ? 0 : byB * b[i]);
        }
    }

    private ReadOnlySpan<double> Extreme(ReadOnlySpan<double> slots, int size)
    {
        ReadOnlySpan<double> best = slots.Slice(left * size, size);
        foreach (int argument in arguments!)
        {
            ReadOnlySpan<double> candidate = slots.Slice(argument * size, size);
            bool better = kind == Kind.Min ? candidate[0] < best[0] : candidate[0] > best[0];
            best = better ? candidate : best;
        }

        return best;
    }
}
