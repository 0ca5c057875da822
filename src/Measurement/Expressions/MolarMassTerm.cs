using Calx.Measurement.Numbers;

namespace Calx.Measurement.Expressions;

/// <summary>The molar mass of a substance, in g/mol: <c>M(CuSO4·5H2O)</c>. The formula is kept as text: who evaluates
/// the expression supplies the molar mass.</summary>
public sealed class MolarMassTerm : Expression
{
    /// <summary>Names a substance by its formula.</summary>
    /// <param name="formula">Not empty, no space at either end, each bracket <c>( )</c> closed.</param>
    /// <param name="span">Where the term stands in its text.</param>
    /// <param name="formulaSpan">Where the formula alone stands, for pointing into it.</param>
    /// <exception cref="ArgumentException">The text cannot stand between the brackets of M( ).</exception>
    public MolarMassTerm(string formula, SourceSpan span = default, SourceSpan formulaSpan = default)
        : base(span, HashCode.Combine(nameof(MolarMassTerm), formula))
    {
        if (!ExpressionNames.IsFormulaText(formula))
        {
            throw new ArgumentException($"'{formula}' cannot stand in M( ).", nameof(formula));
        }

        Formula = formula;
        FormulaSpan = formulaSpan;
    }

    /// <summary>The substance's formula as written.</summary>
    public string Formula { get; }

    /// <summary>Where the formula stands in the text that the expression was read from.</summary>
    public SourceSpan FormulaSpan { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<Expression> Children => [];

    private protected override bool IsLike(Expression other)
        => other is MolarMassTerm term && term.Formula == Formula;

    private protected override Expression Rebuild(IReadOnlyList<Expression> children) => this;
}
