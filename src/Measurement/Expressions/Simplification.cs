using System.Diagnostics;
using Calx.Measurement.Uncertainty;
using static Calx.Measurement.Expressions.Terms;

namespace Calx.Measurement.Expressions;

/// <summary>One step of simplification, for a node whose parts are simplified already.</summary>
internal static class Simplification
{
    public static Expression OfNode(Expression node) => node switch
    {
        Negation negation => Negative(negation),
        BinaryOperation operation => Folded(operation) ?? operation.Operator switch
        {
            Operator.Add => Sum(operation),
            Operator.Subtract => Difference(operation),
            Operator.Multiply => Product(operation),
            Operator.Divide => Quotient(operation),
            Operator.Power => OfPower(operation),
            _ => throw new UnreachableException(),
        },
        _ => node,
    };

    private static Expression Negative(Negation node) => node.Operand switch
    {
        Negation inner => inner.Operand,
        NumberTerm { Value: 0 } zero => zero,
        _ => node,
    };

    // Quotients and powers are folded only where the result is whole: 1/3 stays readable and exact.
    private static Expression? Folded(BinaryOperation operation)
    {
        if (NumberIn(operation.Left) is not { } left || NumberIn(operation.Right) is not { } right)
        {
            return null;
        }

        double result = operation.Operator switch
        {
            Operator.Add => left + right,
            Operator.Subtract => left - right,
            Operator.Multiply => left * right,
            Operator.Divide => left / right,
            _ => CheckedMath.RawPower(left, right),
        };
        bool wholeOnly = operation.Operator is Operator.Divide or Operator.Power;
        return double.IsFinite(result) && (!wholeOnly || result == Math.Floor(result)) ? Expression.Number(result) : null;
    }

    private static Expression Sum(BinaryOperation sum) => (sum.Left, sum.Right) switch
    {
        (NumberTerm { Value: 0 }, _) => sum.Right,
        (_, NumberTerm { Value: 0 }) => sum.Left,
        (_, Negation right) => Difference((BinaryOperation)Subtract(sum.Left, right.Operand)),
        (Negation left, _) => Difference((BinaryOperation)Subtract(sum.Right, left.Operand)),
        _ => sum,
    };

    private static Expression Difference(BinaryOperation difference) => (difference.Left, difference.Right) switch
    {
        (_, NumberTerm { Value: 0 }) => difference.Left,
        (NumberTerm { Value: 0 }, _) => OfNode(new Negation(difference.Right)),
        (_, Negation right) => Add(difference.Left, right.Operand),
        var (left, right) when left.Equals(right) => Zero,
        _ => difference,
    };

    private static Expression Product(BinaryOperation product) => (product.Left, product.Right) switch
    {
        (NumberTerm { Value: 0 }, _) or (_, NumberTerm { Value: 0 }) => Zero,
        (NumberTerm { Value: 1 }, _) => product.Right,
        (_, NumberTerm { Value: 1 }) => product.Left,
        (Negation left, _) => OfNode(new Negation(OfNode(Multiply(left.Operand, product.Right)))),
        (_, Negation right) => OfNode(new Negation(OfNode(Multiply(product.Left, right.Operand)))),
        (not NumberTerm, NumberTerm number) => OfNode(Multiply(number, product.Left)),
        (NumberTerm number, BinaryOperation { Operator: Operator.Multiply, Left: NumberTerm inner } right)
            => OfNode(Multiply(OfNode(Multiply(number, inner)), right.Right)),
        _ => product,
    };

    private static Expression Quotient(BinaryOperation quotient) => (quotient.Left, quotient.Right) switch
    {
        (_, NumberTerm { Value: 1 }) => quotient.Left,
        (NumberTerm { Value: 0 }, not NumberTerm { Value: 0 }) => Zero,
        (Negation left, _) => OfNode(new Negation(OfNode(Divide(left.Operand, quotient.Right)))),
        (_, Negation right) => OfNode(new Negation(OfNode(Divide(quotient.Left, right.Operand)))),
        _ => quotient,
    };

    private static Expression OfPower(BinaryOperation power) => power.Right switch
    {
        NumberTerm { Value: 0 } => One,
        NumberTerm { Value: 1 } => power.Left,
        _ => power,
    };

    private static double? NumberIn(Expression node) => node switch
    {
        NumberTerm number => number.Value,
        Negation { Operand: NumberTerm number } => -number.Value,
        _ => null,
    };
}
