using Calx.Measurement.Numbers;

namespace Calx.Measurement.Expressions;

/// <summary>A function with its arguments.</summary>
public sealed class FunctionCall : Expression
{
    /// <summary>Applies a function: min and max take two arguments or more, the others one.</summary>
    /// <exception cref="ArgumentException">The number of arguments does not fit the function.</exception>
    public FunctionCall(Function function, IReadOnlyList<Expression> arguments, SourceSpan span = default)
        : base(span, HashOf(function, arguments))
    {
        if (!ExpressionNames.Takes(function, arguments.Count))
        {
            throw new ArgumentException(
                $"{ExpressionNames.Of(function)} does not take {arguments.Count} arguments.", nameof(arguments));
        }

        Function = function;
        Children = [.. arguments];
    }

    /// <summary>The function.</summary>
    public Function Function { get; }

    /// <summary>Its arguments, in order.</summary>
    public IReadOnlyList<Expression> Arguments => Children;

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Children { get; }

    private protected override bool IsLike(Expression other)
        => other is FunctionCall call && call.Function == Function;

    private protected override Expression Rebuild(IReadOnlyList<Expression> children)
        => new FunctionCall(Function, children, Span);

    private static int HashOf(Function function, IReadOnlyList<Expression> arguments)
    {
        ArgumentNullException.ThrowIfNull(arguments);
        var hash = default(HashCode);
        hash.Add(nameof(FunctionCall));
        hash.Add(function);
        foreach (Expression argument in arguments)
        {
            ArgumentNullException.ThrowIfNull(argument, nameof(arguments));
            hash.Add(argument);
        }

        return hash.ToHashCode();
    }
}
