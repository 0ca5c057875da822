using System.Globalization;
using Calx.Measurement.Expressions;

namespace Calx.Papers.Spreadsheets;

/// <summary>A formula of a practical as spreadsheets write it. Every operation that they group otherwise than the practical's grammar has
/// brackets or a function: there a minus sign binds tighter than a power, and powers group from the left.</summary>
/// <param name="name">Cell or expression for a name.</param>
/// <param name="molarMass">Cell or defined name for the molar mass of a formula text.</param>
internal sealed class FormulaText(Func<string, string> name, Func<string, string> molarMass)
{
    /// <summary>The text, without the sign of equality.</summary>
    public string Of(Expression formula) => formula switch
    {
        NumberTerm number => number.Value.ToString("R", CultureInfo.InvariantCulture),
        NameTerm term => name(term.Name),
        MolarMassTerm mass => molarMass(mass.Formula),
        Negation negation => $"(-{Whole(negation.Operand)})",
        BinaryOperation { Operator: Operator.Power } power => $"POWER({Of(power.Left)},{Of(power.Right)})",
        BinaryOperation { Operator: Operator.Add } sum => $"{Of(sum.Left)}+{Right(sum.Right)}",
        BinaryOperation { Operator: Operator.Subtract } difference => $"{Of(difference.Left)}-{Right(difference.Right)}",
        BinaryOperation { Operator: Operator.Multiply } product => $"{Factor(product.Left)}*{Whole(product.Right)}",
        BinaryOperation { Operator: Operator.Divide } quotient => $"{Factor(quotient.Left)}/{Whole(quotient.Right)}",
        FunctionCall call => $"{NameOf(call.Function)}({string.Join(',', call.Arguments.Select(Of))})",
        _ => throw new ArgumentException($"{formula.GetType().Name} is no part of a formula.", nameof(formula)),
    };

    private string Right(Expression part) => IsSum(part) ? $"({Of(part)})" : Of(part);

    private string Factor(Expression part) => IsSum(part) ? $"({Of(part)})" : Of(part);

    private string Whole(Expression part) =>
        part is BinaryOperation { Operator: not Operator.Power } ? $"({Of(part)})" : Of(part);

    private static bool IsSum(Expression part) => part is BinaryOperation { Operator: Operator.Add or Operator.Subtract };

    private static string NameOf(Function function) => function switch
    {
        Function.Ln => "LN",
        Function.Log10 => "LOG10",
        Function.Exp => "EXP",
        Function.Sqrt => "SQRT",
        Function.Abs => "ABS",
        Function.Min => "MIN",
        Function.Max => "MAX",
        _ => throw new ArgumentOutOfRangeException(nameof(function), function, "There is no such function."),
    };
}
