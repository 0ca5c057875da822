using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Formulas;

/// <summary>
/// A chemical formula as a person writes it: elements with whole numbers, brackets, water of crystallisation, charge
/// and state; or the electron. The grammar stands in FormulaParser.cs. Two formulas are equal where they are written
/// alike: CH3COOH is not C2H4O2.
/// </summary>
public sealed class Formula : IEquatable<Formula>
{
    private readonly string text;
    private readonly ElementCount[] composition;

    internal Formula(string text, ElementCount[] composition, int charge, MatterState state)
    {
        this.text = text;
        this.composition = composition;
        Charge = charge;
        State = state;
    }

    /// <summary>The elements with their numbers of atoms, in order of first appearance; empty for the electron.</summary>
    public IReadOnlyList<ElementCount> Composition => composition;

    /// <summary>Charge in units of the elementary charge; 0 where none is written.</summary>
    public int Charge { get; }

    /// <summary>The state written behind the formula.</summary>
    public MatterState State { get; }

    /// <summary>Whether this is the electron, <c>e^-</c>: it has a charge and no atoms.</summary>
    public bool IsElectron => composition.Length == 0;

    internal ReadOnlySpan<ElementCount> Atoms => composition;

    /// <summary>Reads a formula; blanks around it are passed over.</summary>
    /// <returns>The formula, or where the text fails, why, and what was probably meant.</returns>
    public static Parsed<Formula> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return FormulaParser.Read(text, text, 0);
    }

    /// <summary>Number of atoms of an element; 0 where it does not occur.</summary>
    public long CountOf(Element element)
    {
        ArgumentNullException.ThrowIfNull(element);
        foreach (ElementCount atoms in composition)
        {
            if (atoms.Index == element.Index)
            {
                return atoms.Count;
            }
        }

        return 0;
    }

    /// <summary>
    /// The molar mass in g/mol, or the fault that an element has no weight in the set (or that this is the electron).
    /// The mass of electrons that an ion lacks or has too many of is left out, as handbooks do.
    /// The fault's span lies in <see cref="ToString"/>.
    /// </summary>
    public Parsed<UncertainValue> FindMolarMass(AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(weights);
        if (IsElectron)
        {
            return new TextFault(new SourceSpan(0, text.Length), FormulaFaults.ElectronMass);
        }

        var parts = new UncertainValue[composition.Length];
        Span<double> counts = stackalloc double[composition.Length];
        for (int i = 0; i < parts.Length; i++)
        {
            Element element = composition[i].Element;
            if (!weights.Has(element))
            {
                return new TextFault(FormulaDisplay.SpanOf(text, element.Symbol), AtomicWeights.WhyNone(element));
            }

            parts[i] = weights.Of(element);
            counts[i] = composition[i].Count;
        }

        return UncertainValue.LinearCombination(parts, counts);
    }

    /// <summary>
    /// The molar mass in g/mol with its standard uncertainty: the sum of the atomic weights, each times its number of
    /// atoms. All atoms of an element share one error, also across formulas of the same set.
    /// </summary>
    /// <exception cref="InvalidOperationException">An element has no weight in the set, or this is the electron: for
    /// formulas from users ask <see cref="FindMolarMass"/>.</exception>
    public UncertainValue MolarMass(AtomicWeights weights)
    {
        Parsed<UncertainValue> found = FindMolarMass(weights);
        return found.Succeeded ? found.Value : throw new InvalidOperationException($"{this}: {found.Fault}.");
    }

    /// <summary>
    /// The share of an element in the mass, 0 to 1, with its uncertainty; 0 exactly where the element does not occur.
    /// </summary>
    /// <exception cref="InvalidOperationException">As <see cref="MolarMass"/>.</exception>
    public UncertainValue MassFraction(Element element, AtomicWeights weights)
    {
        UncertainValue whole = MolarMass(weights);
        long count = CountOf(element);
        return count == 0 ? UncertainValue.Exact(0) : weights.Of(element) * count / whole;
    }

    /// <summary>The formula in runs that stand on the line, below or above it.</summary>
    public IReadOnlyList<FormulaPiece> Pieces => FormulaDisplay.Pieces(text);

    /// <summary>With subscripts and superscripts of Unicode: <c>CuSO₄·5H₂O</c>, <c>SO₄²⁻(aq)</c>.</summary>
    public string ToUnicode() => FormulaDisplay.Unicode(text);

    /// <summary>As HTML with sub and sup; nothing in it needs escaping.</summary>
    public string ToHtml() => FormulaDisplay.Html(text);

    /// <summary>The plain form, which reads back to an equal formula: <c>CuSO4·5H2O</c>, <c>SO4^2-(aq)</c>.</summary>
    public override string ToString() => text;

    /// <inheritdoc/>
    public bool Equals(Formula? other) => other is not null && text == other.text;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Formula);

    /// <inheritdoc/>
    public override int GetHashCode() => text.GetHashCode(StringComparison.Ordinal);
}
