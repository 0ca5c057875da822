using Calx.Measurement.Numbers;

namespace Calx.Chemistry.Equations;

/// <summary>A chemical equation as a person writes it, balanced or not. The grammar stands in EquationParser.cs.</summary>
public sealed class Equation
{
    private readonly Term[] terms;
    private readonly int left;

    internal Equation(Term[] terms, int left, Arrow arrow)
    {
        this.terms = terms;
        this.left = left;
        Arrow = arrow;
    }

    /// <summary>The species on the left, in the order written.</summary>
    public IReadOnlyList<Term> Reactants => terms[..left];

    /// <summary>The species on the right, in the order written.</summary>
    public IReadOnlyList<Term> Products => terms[left..];

    /// <summary>What stands between the sides.</summary>
    public Arrow Arrow { get; }

    internal ReadOnlySpan<Term> Terms => terms;

    internal int LeftCount => left;

    /// <summary>Reads an equation, with or without coefficients.</summary>
    /// <returns>The equation, or where the text fails and why.</returns>
    public static Parsed<Equation> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return EquationParser.Read(text);
    }

    /// <summary>Finds the smallest whole numbers that conserve every element and the charge; coefficients as written
    /// are not looked at (docs/methods/balancing.md).</summary>
    public BalancingResult Balance() => Balancer.Balance(this);

    /// <summary>Whether the equation is balanced as it stands, and if not, what differs between the sides.</summary>
    public WrittenCheck CheckAsWritten() => ConservedAmounts.Of(this).Check(this);

    /// <summary>The equation in plain text with other coefficients, 1 left out: <c>2Mg + O2 -> 2MgO</c>.</summary>
    /// <param name="coefficients">One for each species, reactants then products; a species with 0 is left out.</param>
    /// <exception cref="ArgumentException">Their number is not that of the species.</exception>
    public string WithCoefficients(IReadOnlyList<long> coefficients) => EquationText.Plain(this, coefficients);

    /// <summary>The same with subscripts, superscripts and arrows of Unicode: <c>2Mg + O₂ → 2MgO</c>.</summary>
    /// <param name="coefficients">One for each species, reactants then products; a species with 0 is left out.</param>
    /// <exception cref="ArgumentException">Their number is not that of the species.</exception>
    public string ToUnicode(IReadOnlyList<long> coefficients) => EquationText.Unicode(this, coefficients);

    /// <summary>The same as HTML with sub and sup; nothing in it needs escaping.</summary>
    /// <param name="coefficients">One for each species, reactants then products; a species with 0 is left out.</param>
    /// <exception cref="ArgumentException">Their number is not that of the species.</exception>
    public string ToHtml(IReadOnlyList<long> coefficients) => EquationText.Html(this, coefficients);

    /// <summary>The equation as written, in plain text; it reads back to the same equation.</summary>
    public override string ToString() => EquationText.Plain(this, [.. terms.Select(term => term.Coefficient ?? 1)]);
}
