using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Expressions;

/// <summary>
/// A formula over named quantities, as a tree. The cases are <see cref="NumberTerm"/>, <see cref="NameTerm"/>,
/// <see cref="MolarMassTerm"/>, <see cref="Negation"/>, <see cref="BinaryOperation"/> and <see cref="FunctionCall"/>,
/// and no others. Trees never change: rewriting makes new ones that share what stayed.
/// </summary>
public abstract class Expression : IEquatable<Expression>
{
    private readonly int hash;

    private protected Expression(SourceSpan span, int hash)
    {
        Span = span;
        this.hash = hash;
    }

    /// <summary>Where it stands in the text it was read from; empty where it was made otherwise.</summary>
    public SourceSpan Span { get; }

    /// <summary>The direct parts, from left to right; none for a number, name or molar mass.</summary>
    public abstract IReadOnlyList<Expression> Children { get; }

    /// <summary>This node and all below it, each before its parts, from left to right.</summary>
    public IEnumerable<Expression> Nodes
    {
        get
        {
            var waiting = new Stack<Expression>([this]);
            while (waiting.TryPop(out Expression? node))
            {
                yield return node;
                for (int i = node.Children.Count - 1; i >= 0; i--)
                {
                    waiting.Push(node.Children[i]);
                }
            }
        }
    }

    /// <summary>The names in it, each once, in order of first appearance.</summary>
    public IReadOnlyList<string> Names => [.. Nodes.OfType<NameTerm>().Select(term => term.Name).Distinct()];

    /// <summary>The formula texts whose molar mass it asks for, each once, in order of first appearance.</summary>
    public IReadOnlyList<string> MolarMasses
        => [.. Nodes.OfType<MolarMassTerm>().Select(term => term.Formula).Distinct()];

    /// <summary>Reads a formula; the grammar stands at <c>ExpressionParser</c> and in docs/methods/expressions.md.</summary>
    public static Parsed<Expression> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new ExpressionParser(text).Read();
    }

    /// <summary>A number of either sign: a <see cref="NumberTerm"/>, or the negation of one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is not finite.</exception>
    public static Expression Number(double value)
        => value < 0 ? new Negation(new NumberTerm(-value)) : new NumberTerm(Math.Abs(value));

    /// <summary>The value of the formula.</summary>
    /// <param name="names">Value of each name.</param>
    /// <param name="molarMass">Molar mass for each formula text, in g/mol.</param>
    /// <exception cref="UndefinedResultException">It has no finite value for these numbers; the exception names the
    /// operation and its place.</exception>
    public double Evaluate(Func<string, double> names, Func<string, double> molarMass)
    {
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(molarMass);
        return new DoubleEvaluation(names, molarMass).Of(this);
    }

    /// <summary>The value of the formula with its uncertainty, to first order.</summary>
    /// <param name="names">Value of each name.</param>
    /// <param name="molarMass">Molar mass for each formula text, in g/mol.</param>
    /// <exception cref="UndefinedResultException">It has no finite value, or no derivative, for these numbers; the
    /// exception names the operation and its place.</exception>
    public UncertainValue Evaluate(Func<string, UncertainValue> names, Func<string, UncertainValue> molarMass)
    {
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(molarMass);
        return new UncertainEvaluation(names, molarMass).Of(this);
    }

    /// <summary>The partial derivative by a name, simplified. At the corner of abs, min or max it divides by zero, so
    /// that evaluating it there tells of the corner.</summary>
    public Expression Derivative(string name)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        return Differentiation.By(name, this).Simplified();
    }

    /// <summary>An equal formula with fewer operations: numbers combined, 0 and 1 dropped. It may have a value where
    /// this one has none (0 * ln(x) becomes 0), never the reverse.</summary>
    public Expression Simplified() => Rewrite(Simplification.OfNode);

    /// <summary>The formula with an expression in place of each occurrence of a name.</summary>
    public Expression Substitute(string name, Expression by)
    {
        ArgumentException.ThrowIfNullOrEmpty(name);
        ArgumentNullException.ThrowIfNull(by);
        return Rewrite(node => node is NameTerm term && term.Name == name ? by : node);
    }

    /// <summary>Rebuilds the tree from its leaves up.</summary>
    /// <param name="replace">What to put in the place of a node whose parts are already rewritten; the node itself to
    /// keep it.</param>
    public Expression Rewrite(Func<Expression, Expression> replace)
    {
        ArgumentNullException.ThrowIfNull(replace);
        if (Children.Count == 0)
        {
            return replace(this);
        }

        var parts = new Expression[Children.Count];
        bool same = true;
        for (int i = 0; i < parts.Length; i++)
        {
            parts[i] = Children[i].Rewrite(replace);
            same &= ReferenceEquals(parts[i], Children[i]);
        }

        return replace(same ? this : WithChildren(parts));
    }

    /// <summary>The tree with one node, found by reference, replaced: the other places where an equal part stands are
    /// left alone.</summary>
    public Expression Replace(Expression node, Expression by)
    {
        ArgumentNullException.ThrowIfNull(by);
        if (ReferenceEquals(this, node))
        {
            return by;
        }

        Expression[] parts = [.. Children.Select(child => child.Replace(node, by))];
        return parts.SequenceEqual(Children, ReferenceEqualityComparer.Instance) ? this : WithChildren(parts);
    }

    /// <summary>The same operation on other parts, as many as before.</summary>
    /// <exception cref="ArgumentException">Their number differs.</exception>
    public Expression WithChildren(IReadOnlyList<Expression> children)
    {
        ArgumentNullException.ThrowIfNull(children);
        return children.Count == Children.Count
            ? Rebuild(children)
            : throw new ArgumentException(
                $"There are {children.Count} parts where {Children.Count} are needed.", nameof(children));
    }

    /// <summary>Whether both are the same tree; where they stood in a text does not matter.</summary>
    public bool Equals(Expression? other)
        => ReferenceEquals(this, other)
            || (other is not null && other.hash == hash && IsLike(other) && Children.SequenceEqual(other.Children));

    /// <inheritdoc/>
    public sealed override bool Equals(object? obj) => Equals(obj as Expression);

    /// <inheritdoc/>
    public sealed override int GetHashCode() => hash;

    /// <summary>The formula as text, with no more brackets than it needs; reading it gives an equal tree.</summary>
    public sealed override string ToString() => ExpressionPrinter.Print(this);

    /// <summary>Same operation, the parts left out of account.</summary>
    private protected abstract bool IsLike(Expression other);

    private protected abstract Expression Rebuild(IReadOnlyList<Expression> children);
}
