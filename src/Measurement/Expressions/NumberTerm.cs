using Calx.Measurement.Numbers;

namespace Calx.Measurement.Expressions;

/// <summary>An exact number in a formula.</summary>
public sealed class NumberTerm : Expression
{
    /// <summary>A finite number without a sign; <see cref="Expression.Number"/> takes either sign.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative or not finite.</exception>
    public NumberTerm(double value, SourceSpan span = default)
        : base(span, value.GetHashCode())
    {
        if (!double.IsFinite(value) || double.IsNegative(value))
        {
            throw new ArgumentOutOfRangeException(nameof(value), value, "A number in a formula is finite and unsigned.");
        }

        Value = value;
    }

    /// <summary>The number, at least 0.</summary>
    public double Value { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Children => [];

    private protected override bool IsLike(Expression other) => other is NumberTerm term && term.Value == Value;

    private protected override Expression Rebuild(IReadOnlyList<Expression> children) => this;
}
