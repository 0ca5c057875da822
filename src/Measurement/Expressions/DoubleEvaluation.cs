using System.Diagnostics;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Expressions;

/// <summary>The value of a tree over doubles.</summary>
internal sealed class DoubleEvaluation(Func<string, double> names, Func<string, double> molarMass)
{
    public double Of(Expression node) => node switch
    {
        NumberTerm number => number.Value,
        NameTerm name => names(name.Name),
        MolarMassTerm mass => molarMass(mass.Formula),
        Negation negation => -Of(negation.Operand),
        BinaryOperation operation => Of(operation, Of(operation.Left), Of(operation.Right)),
        FunctionCall call => Of(call, call.Arguments.Select(Of).ToArray()),
        _ => throw new UnreachableException(),
    };

    /// <summary>An operator on numbers, with its place told where it has no answer.</summary>
    public static double Of(BinaryOperation operation, double left, double right)
    {
        try
        {
            return operation.Operator switch
            {
                Operator.Add => CheckedMath.Add(left, right),
                Operator.Subtract => CheckedMath.Subtract(left, right),
                Operator.Multiply => CheckedMath.Multiply(left, right),
                Operator.Divide => CheckedMath.Divide(left, right),
                Operator.Power => CheckedMath.Power(left, right),
                _ => throw new UnreachableException(),
            };
        }
        catch (UndefinedResultException fault)
        {
            throw fault.At(operation.ToString(), operation.Span);
        }
    }

    /// <summary>A function of numbers, with its place told where it has no answer.</summary>
    public static double Of(FunctionCall call, double[] arguments)
    {
        try
        {
            return call.Function switch
            {
                Function.Ln => CheckedMath.Ln(arguments[0]),
                Function.Log10 => CheckedMath.Log10(arguments[0]),
                Function.Exp => CheckedMath.Exp(arguments[0]),
                Function.Sqrt => CheckedMath.Sqrt(arguments[0]),
                Function.Abs => Math.Abs(arguments[0]),
                Function.Min => arguments.Min(),
                Function.Max => arguments.Max(),
                _ => throw new UnreachableException(),
            };
        }
        catch (UndefinedResultException fault)
        {
            throw fault.At(call.ToString(), call.Span);
        }
    }
}
