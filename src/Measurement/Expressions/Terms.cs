namespace Calx.Measurement.Expressions;

/// <summary>Short names for building trees.</summary>
internal static class Terms
{
    public static Expression Zero { get; } = new NumberTerm(0);

    public static Expression One { get; } = new NumberTerm(1);

    public static Expression Two { get; } = new NumberTerm(2);

    public static Expression Add(Expression left, Expression right) => new BinaryOperation(Operator.Add, left, right);

    public static Expression Subtract(Expression left, Expression right)
        => new BinaryOperation(Operator.Subtract, left, right);

    public static Expression Multiply(Expression left, Expression right)
        => new BinaryOperation(Operator.Multiply, left, right);

    public static Expression Divide(Expression left, Expression right)
        => new BinaryOperation(Operator.Divide, left, right);

    public static Expression Power(Expression left, Expression right)
        => new BinaryOperation(Operator.Power, left, right);

    public static Expression Call(Function function, Expression argument) => new FunctionCall(function, [argument]);
}
