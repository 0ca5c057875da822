using Calx.Measurement.Expressions;

namespace Calx.Practicals.Model.Program;

/// <summary>A formula of an event made ready to be worked out millions of times: names are looked up once.</summary>
internal delegate double CompiledFormula(double[] slots);

/// <summary>Makes formulas ready. A formula that has no answer gives a number that is not finite, never an exception: the
/// walk that used it has no probability.</summary>
internal static class Formulas
{
    /// <summary>Makes one ready.</summary>
    /// <param name="formula">Over parameters and gauges.</param>
    /// <param name="slots">Where each of them stands.</param>
    /// <param name="molarMass">Molar masses; null where none may stand.</param>
    public static CompiledFormula Compile(
        Expression formula, IReadOnlyDictionary<string, int> slots, Func<string, double>? molarMass = null)
    {
        switch (formula)
        {
            case NumberTerm number:
                double value = number.Value;
                return _ => value;
            case NameTerm name:
                int slot = slots[name.Name];
                return s => s[slot];
            case MolarMassTerm term when molarMass is not null:
                double mass = molarMass(term.Formula);
                return _ => mass;
            case Negation negation:
                CompiledFormula operand = Compile(negation.Operand, slots, molarMass);
                return s => -operand(s);
            case BinaryOperation operation:
                return Of(operation.Operator, Compile(operation.Left, slots, molarMass), Compile(operation.Right, slots, molarMass));
            case FunctionCall call:
                return Of(call.Function, [.. call.Arguments.Select(a => Compile(a, slots, molarMass))]);
            default:
                throw new ArgumentException("No molar mass stands in an event.", nameof(formula));
        }
    }

    private static CompiledFormula Of(Operator kind, CompiledFormula left, CompiledFormula right) => kind switch
    {
        Operator.Add => s => left(s) + right(s),
        Operator.Subtract => s => left(s) - right(s),
        Operator.Multiply => s => left(s) * right(s),
        Operator.Divide => s => left(s) / right(s),
        _ => s => Math.Pow(left(s), right(s)),
    };

    private static CompiledFormula Of(Function kind, CompiledFormula[] arguments)
    {
        CompiledFormula first = arguments[0];
        return kind switch
        {
            Function.Ln => s => Math.Log(first(s)),
            Function.Log10 => s => Math.Log10(first(s)),
            Function.Exp => s => Math.Exp(first(s)),
            Function.Sqrt => s => Math.Sqrt(first(s)),
            Function.Abs => s => Math.Abs(first(s)),
            Function.Min => s => arguments.Min(a => a(s)),
            _ => s => arguments.Max(a => a(s)),
        };
    }
}
