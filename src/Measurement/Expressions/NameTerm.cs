using Calx.Measurement.Numbers;

namespace Calx.Measurement.Expressions;

/// <summary>A named quantity in a formula.</summary>
public sealed class NameTerm : Expression
{
    /// <summary>A name: a letter or <c>_</c>, then letters, digits and <c>_</c>; not the name of a function.</summary>
    /// <exception cref="ArgumentException">The text is no name.</exception>
    public NameTerm(string name, SourceSpan span = default)
        : base(span, HashCode.Combine(nameof(NameTerm), name))
    {
        if (!ExpressionNames.IsName(name))
        {
            throw new ArgumentException($"'{name}' cannot be the name of a quantity in a formula.", nameof(name));
        }

        Name = name;
    }

    /// <summary>The name, upper and lower case told apart.</summary>
    public string Name { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Children => [];

    private protected override bool IsLike(Expression other) => other is NameTerm term && term.Name == Name;

    private protected override Expression Rebuild(IReadOnlyList<Expression> children) => this;
}
