using System.Diagnostics;
using Calx.Measurement.Expressions;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>
/// Many formulas as one list of steps in which equal parts are worked out once. Some thousand changed formulas of one answer share
/// nearly all their parts, so that all their values cost about as much as reading them.
/// </summary>
internal sealed class VariantProgram
{
    private readonly Step[] steps;

    private VariantProgram(Step[] steps) => this.steps = steps;

    /// <summary>How many values it works out.</summary>
    public int Count => steps.Length;

    /// <summary>Works all steps out. A part without a value (a name that is not at hand, a division by 0) is not a number, and so is all that uses it.</summary>
    /// <param name="names">The value of a name; not a number where there is none.</param>
    /// <param name="molarMass">The molar mass of a formula in g/mol; not a number where there is none.</param>
    /// <param name="values">One for each step.</param>
    public void Run(Func<string, double> names, Func<string, double> molarMass, Span<double> values)
    {
        for (int i = 0; i < steps.Length; i++)
        {
            Step step = steps[i];
            values[i] = step.Kind switch
            {
                StepKind.Number => step.Number,
                StepKind.Name => names(step.Text!),
                StepKind.MolarMass => molarMass(step.Text!),
                StepKind.Negative => -values[step.Left],
                StepKind.Add => values[step.Left] + values[step.Right],
                StepKind.Subtract => values[step.Left] - values[step.Right],
                StepKind.Multiply => values[step.Left] * values[step.Right],
                StepKind.Divide => values[step.Right] == 0 ? double.NaN : values[step.Left] / values[step.Right],
                StepKind.Power => Math.Pow(values[step.Left], values[step.Right]),
                StepKind.Ln => Math.Log(values[step.Left]),
                StepKind.Log10 => Math.Log10(values[step.Left]),
                StepKind.Exp => Math.Exp(values[step.Left]),
                StepKind.Sqrt => Math.Sqrt(values[step.Left]),
                StepKind.Abs => Math.Abs(values[step.Left]),
                StepKind.Min => Math.Min(values[step.Left], values[step.Right]),
                StepKind.Max => Math.Max(values[step.Left], values[step.Right]),
                StepKind.RoundToDecimals => Rounding.Of(values[step.Left], step.Right, isFigures: false),
                StepKind.RoundToFigures => Rounding.Of(values[step.Left], step.Right, isFigures: true),
                _ => throw new UnreachableException(),
            };
        }
    }

    private enum StepKind
    {
        Number,
        Name,
        MolarMass,
        Negative,
        Add,
        Subtract,
        Multiply,
        Divide,
        Power,
        Ln,
        Log10,
        Exp,
        Sqrt,
        Abs,
        Min,
        Max,
        RoundToDecimals,
        RoundToFigures,
    }

    private readonly record struct Step(StepKind Kind, int Left, int Right, double Number = 0, string? Text = null);

    /// <summary>Collects formulas.</summary>
    internal sealed class Builder
    {
        private readonly Dictionary<Step, int> places = [];
        private readonly Dictionary<Expression, int> known = [];
        private readonly List<Step> steps = [];

        /// <summary>Takes a formula in.</summary>
        /// <returns>Where its value will stand.</returns>
        public int Add(Expression tree, Rounding? rounding = null) => rounding is null ? Plain(tree) : Rounded(tree, rounding);

        public VariantProgram Build() => new([.. steps]);

        private int Plain(Expression node)
        {
            if (!known.TryGetValue(node, out int at))
            {
                at = Placed(node, Plain);
                known.Add(node, at);
            }

            return at;
        }

        private int Rounded(Expression node, Rounding rounding)
        {
            int at = Placed(node, part => Rounded(part, rounding));
            return rounding.Nodes.Contains(node, ReferenceEqualityComparer.Instance)
                ? Place(new Step(rounding.IsFigures ? StepKind.RoundToFigures : StepKind.RoundToDecimals, at, rounding.Digits))
                : at;
        }

        private int Placed(Expression node, Func<Expression, int> of) => node switch
        {
            NumberTerm number => Place(new Step(StepKind.Number, 0, 0, number.Value)),
            NameTerm name => Place(new Step(StepKind.Name, 0, 0, Text: name.Name)),
            MolarMassTerm mass => Place(new Step(StepKind.MolarMass, 0, 0, Text: mass.Formula)),
            Negation negation => Place(new Step(StepKind.Negative, of(negation.Operand), 0)),
            BinaryOperation operation => Place(new Step(KindOf(operation.Operator), of(operation.Left), of(operation.Right))),
            FunctionCall call => call.Arguments.Skip(1).Aggregate(
                KindOf(call.Function) is StepKind.Min or StepKind.Max ? of(call.Arguments[0]) : Place(new Step(KindOf(call.Function), of(call.Arguments[0]), 0)),
                (done, next) => Place(new Step(KindOf(call.Function), done, of(next)))),
            _ => throw new UnreachableException(),
        };

        private int Place(Step step)
        {
            if (!places.TryGetValue(step, out int at))
            {
                at = steps.Count;
                steps.Add(step);
                places.Add(step, at);
            }

            return at;
        }

        private static StepKind KindOf(Operator @operator) => @operator switch
        {
            Operator.Add => StepKind.Add,
            Operator.Subtract => StepKind.Subtract,
            Operator.Multiply => StepKind.Multiply,
            Operator.Divide => StepKind.Divide,
            Operator.Power => StepKind.Power,
            _ => throw new UnreachableException(),
        };

        private static StepKind KindOf(Function function) => function switch
        {
            Function.Ln => StepKind.Ln,
            Function.Log10 => StepKind.Log10,
            Function.Exp => StepKind.Exp,
            Function.Sqrt => StepKind.Sqrt,
            Function.Abs => StepKind.Abs,
            Function.Min => StepKind.Min,
            Function.Max => StepKind.Max,
            _ => throw new UnreachableException(),
        };
    }
}
