using Calx.Measurement.Numbers;

namespace Calx.Measurement.Expressions;

/// <summary>Two operands joined by an operator.</summary>
public sealed class BinaryOperation : Expression
{
    /// <summary>Joins two operands.</summary>
    public BinaryOperation(Operator @operator, Expression left, Expression right, SourceSpan span = default)
        : base(span, HashCode.Combine(@operator, left, right))
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        if (!Enum.IsDefined(@operator))
        {
            throw new ArgumentOutOfRangeException(nameof(@operator), @operator, "There is no such operator.");
        }

        Operator = @operator;
        Left = left;
        Right = right;
        Children = [left, right];
    }

    /// <summary>The operator.</summary>
    public Operator Operator { get; }

    /// <summary>The operand before it.</summary>
    public Expression Left { get; }

    /// <summary>The operand behind it.</summary>
    public Expression Right { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Children { get; }

    private protected override bool IsLike(Expression other)
        => other is BinaryOperation operation && operation.Operator == Operator;

    private protected override Expression Rebuild(IReadOnlyList<Expression> children)
        => new BinaryOperation(Operator, children[0], children[1], Span);
}
