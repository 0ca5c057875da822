using System.Globalization;
using Calx.Measurement.Expressions;
using Calx.Papers.Documents;

namespace Calx.Papers.Handouts;

/// <summary>A formula as it is written by hand: quotients as fractions, a dot for times, brackets only where they are needed.</summary>
/// <param name="name">What a reading, an answer or a molar mass is written as.</param>
internal sealed class ExpressionMath(Func<Expression, MathPart> name)
{
    /// <summary>How tightly a part holds together: the sum least, a number or name most.</summary>
    private enum Hold
    {
        Sum,
        Product,
        Power,
        Whole,
    }

    /// <summary>The formula.</summary>
    public MathPart Of(Expression formula) => formula switch
    {
        NumberTerm number => new MathPart.Words(number.Value.ToString("0.##########", CultureInfo.InvariantCulture)),
        NameTerm or MolarMassTerm => name(formula),
        Negation negation => new MathPart.Row(new MathPart.Words("−"), Within(negation.Operand, Hold.Product)),
        FunctionCall call => new MathPart.Row(
            new MathPart.Words($"{call.Function.ToString().ToLowerInvariant()} "),
            new MathPart.Bracketed(new MathPart.Row([.. call.Arguments.SelectMany((a, i) => i == 0 ? [Of(a)] : (MathPart[])[new MathPart.Words(", "), Of(a)])]))),
        BinaryOperation { Operator: Operator.Divide } quotient => new MathPart.Fraction(Of(quotient.Left), Of(quotient.Right)),
        BinaryOperation operation => new MathPart.Row(
            Within(operation.Left, HoldOf(operation)),
            new MathPart.Words(SignOf(operation.Operator)),
            Within(operation.Right, HoldOf(operation) + (operation.Operator == Operator.Subtract ? 1 : 0))),
        _ => throw new ArgumentException($"{formula.GetType().Name} is no part of a formula.", nameof(formula)),
    };

    private MathPart Within(Expression part, Hold least) => HoldOf(part) < least ? new MathPart.Bracketed(Of(part)) : Of(part);

    private static Hold HoldOf(Expression part) => part switch
    {
        BinaryOperation { Operator: Operator.Add or Operator.Subtract } => Hold.Sum,
        Negation => Hold.Sum,
        BinaryOperation { Operator: Operator.Multiply } => Hold.Product,
        BinaryOperation { Operator: Operator.Power } => Hold.Power,
        _ => Hold.Whole,
    };

    private static string SignOf(Operator sign) => sign switch
    {
        Operator.Add => " + ",
        Operator.Subtract => " − ",
        Operator.Multiply => " × ",
        _ => " ^ ",
    };
}
