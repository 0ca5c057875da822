using System.Diagnostics;
using static Calx.Measurement.Expressions.Terms;

namespace Calx.Measurement.Expressions;

/// <summary>Partial derivatives of a tree by the rules of calculus; the results are not simplified.</summary>
internal static class Differentiation
{
    public static Expression By(string name, Expression node) => node switch
    {
        NumberTerm or MolarMassTerm => Zero,
        NameTerm term => term.Name == name ? One : Zero,
        Negation negation => new Negation(By(name, negation.Operand)),
        _ when !DependsOn(name, node) => Zero,
        BinaryOperation operation => OfOperation(name, operation),
        FunctionCall call => OfCall(name, call),
        _ => throw new UnreachableException(),
    };

    private static bool DependsOn(string name, Expression node)
        => node.Nodes.Any(part => part is NameTerm term && term.Name == name);

    private static Expression OfOperation(string name, BinaryOperation operation)
    {
        Expression a = operation.Left;
        Expression b = operation.Right;
        Expression da = By(name, a).Simplified();
        Expression db = By(name, b).Simplified();
        return operation.Operator switch
        {
            Operator.Add => Add(da, db),
            Operator.Subtract => Subtract(da, db),
            Operator.Multiply => Add(Multiply(da, b), Multiply(a, db)),
            Operator.Divide when db.Equals(Zero) => Divide(da, b),
            Operator.Divide => Subtract(Divide(da, b), Divide(Multiply(a, db), Power(b, Two))),
            Operator.Power => OfPower(operation, da, db),
            _ => throw new UnreachableException(),
        };
    }

    private static Expression OfPower(BinaryOperation power, Expression da, Expression db)
    {
        Expression byBase = Multiply(Multiply(power.Right, Power(power.Left, Subtract(power.Right, One))), da);
        return db.Equals(Zero) ? byBase : Add(byBase, Multiply(Multiply(power, Call(Function.Ln, power.Left)), db));
    }

    private static Expression OfCall(string name, FunctionCall call)
    {
        Expression a = call.Arguments[0];
        return call.Function switch
        {
            Function.Ln => Divide(By(name, a), a),
            Function.Log10 => Divide(By(name, a), Multiply(a, Call(Function.Ln, new NumberTerm(10)))),
            Function.Exp => Multiply(call, By(name, a)),
            Function.Sqrt => Divide(By(name, a), Multiply(Two, call)),
            Function.Abs => Multiply(Divide(a, call), By(name, a)),
            Function.Min => By(name, call.Arguments.Aggregate((left, right) => Extreme(left, right, Subtract))),
            Function.Max => By(name, call.Arguments.Aggregate((left, right) => Extreme(left, right, Add))),
            _ => throw new UnreachableException(),
        };
    }

    // min(a, b) is (a + b - |a - b|) / 2, and max(a, b) has a plus: so the corner is that of abs.
    private static Expression Extreme(
        Expression left, Expression right, Func<Expression, Expression, Expression> join)
        => Divide(join(Add(left, right), Call(Function.Abs, Subtract(left, right))), Two);
}
