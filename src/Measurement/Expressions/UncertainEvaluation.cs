using System.Diagnostics;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Expressions;

/// <summary>The value of a tree over uncertain values: derivatives ride along.</summary>
internal sealed class UncertainEvaluation(Func<string, UncertainValue> names, Func<string, UncertainValue> molarMass)
{
    public UncertainValue Of(Expression node) => node switch
    {
        NumberTerm number => UncertainValue.Exact(number.Value),
        NameTerm name => names(name.Name),
        MolarMassTerm mass => molarMass(mass.Formula),
        Negation negation => -Of(negation.Operand),
        BinaryOperation operation => Of(operation, Of(operation.Left), Of(operation.Right)),
        FunctionCall call => Of(call, call.Arguments.Select(Of).ToArray()),
        _ => throw new UnreachableException(),
    };

    private static UncertainValue Of(BinaryOperation operation, UncertainValue left, UncertainValue right)
    {
        try
        {
            return operation.Operator switch
            {
                Operator.Add => left + right,
                Operator.Subtract => left - right,
                Operator.Multiply => left * right,
                Operator.Divide => left / right,
                Operator.Power => UncertainValue.Pow(left, right),
                _ => throw new UnreachableException(),
            };
        }
        catch (UndefinedResultException fault)
        {
            throw fault.At(operation.ToString(), operation.Span);
        }
    }

    private static UncertainValue Of(FunctionCall call, UncertainValue[] arguments)
    {
        try
        {
            return call.Function switch
            {
                Function.Ln => UncertainValue.Ln(arguments[0]),
                Function.Log10 => UncertainValue.Log10(arguments[0]),
                Function.Exp => UncertainValue.Exp(arguments[0]),
                Function.Sqrt => UncertainValue.Sqrt(arguments[0]),
                Function.Abs => UncertainValue.Abs(arguments[0]),
                Function.Min => arguments.Aggregate(UncertainValue.Min),
                Function.Max => arguments.Aggregate(UncertainValue.Max),
                _ => throw new UnreachableException(),
            };
        }
        catch (UndefinedResultException fault)
        {
            throw fault.At(call.ToString(), call.Span);
        }
    }
}
