using Calx.Measurement.Numbers;

namespace Calx.Measurement.Expressions;

/// <summary>A minus sign before an operand. It binds as in ordinary mathematics: -2^2 is -4.</summary>
public sealed class Negation : Expression
{
    /// <summary>The negative of an operand.</summary>
    public Negation(Expression operand, SourceSpan span = default)
        : base(span, HashCode.Combine(nameof(Negation), operand))
    {
        ArgumentNullException.ThrowIfNull(operand);
        Operand = operand;
        Children = [operand];
    }

    /// <summary>What is negated.</summary>
    public Expression Operand { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Children { get; }

    private protected override bool IsLike(Expression other) => other is Negation;

    private protected override Expression Rebuild(IReadOnlyList<Expression> children)
        => new Negation(children[0], Span);
}
