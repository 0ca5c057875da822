using Calx.Chemistry.Elements;
using Calx.Chemistry.Equations;
using Calx.Measurement.Uncertainty;

namespace Calx.Practicals.Definition;

/// <summary>A reaction that the class may hold for the true one; the mass that is left decides between them.</summary>
public sealed class Alternative(
    string id, string label, Equation equation, Term sample, IReadOnlyList<Term> stays, FilePosition at)
{
    /// <summary>Its id, unique among the alternatives.</summary>
    public string Id { get; } = id;

    /// <summary>Its name for people.</summary>
    public string Label { get; } = label;

    /// <summary>Its equation, balanced as it stands.</summary>
    public Equation Equation { get; } = equation;

    /// <summary>The equation in plain text.</summary>
    public string EquationText => Equation.ToString();

    /// <summary>The reactant whose mass is that of the sample.</summary>
    public Term Sample { get; } = sample;

    /// <summary>The products that stay in the vessel; at least one.</summary>
    public IReadOnlyList<Term> Stays { get; } = stays;

    /// <summary>Where it stands in the file.</summary>
    public FilePosition At { get; } = at;

    /// <summary>The mass that is left of 1 g of sample where this equation is right and the reaction complete.</summary>
    public UncertainValue ExpectedFraction(AtomicWeights weights) =>
        UncertainValue.Sum(Stays.Select(term => MassOf(term, weights))) / MassOf(Sample, weights);

    private static UncertainValue MassOf(Term term, AtomicWeights weights) =>
        (double)(term.Coefficient ?? 1) * term.Formula.MolarMass(weights);
}
