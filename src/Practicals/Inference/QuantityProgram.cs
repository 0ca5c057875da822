using Calx.Measurement.Expressions;

namespace Calx.Practicals.Inference;

/// <summary>
/// A formula prepared for many evaluations with its exact gradient (forward differentiation): the names and the molar
/// masses in it are its variables, in order of first appearance.
/// </summary>
/// <remarks>
/// It does for the thousands of evaluations of an interval what the tree does once, and answers a number that is not
/// finite where the tree throws, because the interval's search has to step back from such points.
/// </remarks>
internal sealed class QuantityProgram
{
    private readonly List<Instruction> code = [];
    private readonly List<int> divisors = [];

    /// <summary>Prepares a formula.</summary>
    public QuantityProgram(Expression formula)
    {
        Names = formula.Names;
        MolarMasses = formula.MolarMasses;
        Add(formula);
    }

    /// <summary>The names, the first variables.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>The formulas whose molar masses are the variables after the names.</summary>
    public IReadOnlyList<string> MolarMasses { get; }

    /// <summary>How many variables there are.</summary>
    public int Width => Names.Count + MolarMasses.Count;

    /// <summary>The value, not finite where the formula has none.</summary>
    /// <param name="variables">Names, then molar masses; <see cref="Width"/> of them.</param>
    /// <param name="gradient">Receives the partial derivatives.</param>
    public double Evaluate(ReadOnlySpan<double> variables, Span<double> gradient)
    {
        Span<double> slots = stackalloc double[code.Count * (Width + 1)];
        Fill(variables, slots);
        Span<double> last = Slot(slots, code.Count - 1);
        last[1..].CopyTo(gradient);
        return last[0];
    }

    /// <summary>Whether some divisor of the formula may be zero within <paramref name="factor"/> standard deviations.</summary>
    /// <param name="variables">The variables as observed.</param>
    /// <param name="covariance">Their covariance, row by row.</param>
    /// <param name="factor">How many standard deviations of the divisor, above 0.</param>
    public bool MayDivideByZero(ReadOnlySpan<double> variables, ReadOnlySpan<double> covariance, double factor)
    {
        Span<double> slots = stackalloc double[code.Count * (Width + 1)];
        Fill(variables, slots);
        foreach (int divisor in divisors)
        {
            Span<double> slot = Slot(slots, divisor);
            double variance = QuadraticForm.Of(covariance, slot[1..]);
            if (slot[0] * slot[0] <= factor * factor * variance)
            {
                return true;
            }
        }

        return false;
    }

    private void Fill(ReadOnlySpan<double> variables, Span<double> slots)
    {
        for (int i = 0; i < code.Count; i++)
        {
            code[i].Run(variables, slots, Slot(slots, i), Width + 1);
        }
    }

    private Span<double> Slot(Span<double> slots, int index) => slots.Slice(index * (Width + 1), Width + 1);

    /// <summary>Adds a node behind its parts; returns its place.</summary>
    private int Add(Expression node)
    {
        int[] parts = [.. node.Children.Select(Add)];
        if (node is BinaryOperation { Operator: Operator.Divide })
        {
            divisors.Add(parts[1]);
        }

        code.Add(node switch
        {
            NumberTerm number => Instruction.Constant(number.Value),
            NameTerm name => Instruction.Variable(IndexIn(Names, name.Name)),
            MolarMassTerm mass => Instruction.Variable(Names.Count + IndexIn(MolarMasses, mass.Formula)),
            Negation => Instruction.Negate(parts[0]),
            BinaryOperation operation => Instruction.Join(operation.Operator, parts[0], parts[1]),
            FunctionCall call => Instruction.Apply(call.Function, parts),
            _ => throw new ArgumentException($"{node.GetType().Name} is no node of a formula.", nameof(node)),
        });
        return code.Count - 1;
    }

    private static int IndexIn(IReadOnlyList<string> names, string name)
    {
        int index = 0;
        while (names[index] != name)
        {
            index++;
        }

        return index;
    }
}
