using System.Diagnostics;
using System.Globalization;

namespace Calx.Measurement.Expressions;

/// <summary>Prints a tree with no more brackets than reading it back needs.</summary>
internal static class ExpressionPrinter
{
    // How tightly a node holds together; the grammar's levels.
    private const int Sum = 1;
    private const int Product = 2;
    private const int Minus = 3;
    private const int Power = 4;
    private const int Atom = 5;

    public static string Print(Expression node) => node switch
    {
        NumberTerm number => number.Value.ToString("R", CultureInfo.InvariantCulture),
        NameTerm name => name.Name,
        MolarMassTerm mass => $"M({mass.Formula})",
        Negation negation => "-" + Print(negation.Operand, Minus),
        BinaryOperation operation => Print(operation),
        FunctionCall call => $"{ExpressionNames.Of(call.Function)}({Print(call.Arguments)})",
        _ => throw new UnreachableException(),
    };

    private static string Print(IReadOnlyList<Expression> arguments)
        => string.Join(", ", arguments.Select(argument => Print(argument)));

    private static string Print(BinaryOperation operation) => operation.Operator switch
    {
        // Sums and products group from the left: a right operand of the same level keeps its brackets.
        Operator.Add => Print(operation.Left, Sum) + " + " + Print(operation.Right, Product),
        Operator.Subtract => Print(operation.Left, Sum) + " - " + Print(operation.Right, Product),
        Operator.Multiply => Print(operation.Left, Product) + " * " + Print(operation.Right, Minus),
        Operator.Divide => Print(operation.Left, Product) + " / " + Print(operation.Right, Minus),
        Operator.Power => Print(operation.Left, Atom) + "^" + Print(operation.Right, Minus),
        _ => throw new UnreachableException(),
    };

    private static string Print(Expression node, int least) => LevelOf(node) < least ? $"({Print(node)})" : Print(node);

    private static int LevelOf(Expression node) => node switch
    {
        BinaryOperation { Operator: Operator.Add or Operator.Subtract } => Sum,
        BinaryOperation { Operator: Operator.Multiply or Operator.Divide } => Product,
        Negation => Minus,
        BinaryOperation { Operator: Operator.Power } => Power,
        _ => Atom,
    };
}
