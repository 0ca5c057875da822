using Calx.Chemistry.Amounts;
using Calx.Practicals.Inference.Posterior;

namespace Calx.Practicals.Findings;

/// <summary>The class as a whole.</summary>
public sealed class ClassResult
{
    internal ClassResult(
        IReadOnlyList<ClassQuantity> quantities,
        ProductLine line,
        ChangeEvidence change,
        AcceptedResult accepted,
        FormulaRanking? formula,
        IReadOnlyList<EquationChoice> equations,
        IReadOnlyList<ConclusionSentence> sentences,
        IReadOnlyList<SharedCause> sharedCauses,
        ClassCurve? curve = null)
    {
        Quantities = quantities;
        Line = line;
        Change = change;
        Accepted = accepted;
        Formula = formula;
        Equations = equations;
        Sentences = sentences;
        Conclusion = [.. sentences.Select(s => s.Text)];
        SharedCauses = sharedCauses;
        Curve = curve;
    }

    /// <summary>Pooled quantities, in the practical's order; those that no group gives are absent.</summary>
    public IReadOnlyList<ClassQuantity> Quantities { get; }

    /// <summary>The change of mass against the sample.</summary>
    public ProductLine Line { get; }

    /// <summary>Whether the mass rose, fell or stayed.</summary>
    public ChangeEvidence Change { get; }

    /// <summary>The key quantity against its accepted value.</summary>
    public AcceptedResult Accepted { get; }

    /// <summary>Which formulas the masses allow; null where the practical asks for none.</summary>
    public FormulaRanking? Formula { get; }

    /// <summary>The equations between which the key quantity decides; empty where there is only one.</summary>
    public IReadOnlyList<EquationChoice> Equations { get; }

    /// <summary>Three to six plain sentences, each with what decides who may see it.</summary>
    public IReadOnlyList<ConclusionSentence> Sentences { get; }

    /// <summary>The same as the teacher reads them.</summary>
    public IReadOnlyList<string> Conclusion { get; }

    /// <summary>Causes that befell most groups at once, the likeliest first; empty where none did or causes were not asked
    /// for.</summary>
    public IReadOnlyList<SharedCause> SharedCauses { get; }

    /// <summary>What mass against time shows of the class; null where the practical takes no series.</summary>
    public ClassCurve? Curve { get; }

    /// <summary>The same with other sentences, and held against nothing where there is a reason for it.</summary>
    internal ClassResult Saying(IReadOnlyList<ConclusionSentence> sentences, AcceptedResult accepted) =>
        new(Quantities, Line, Change, accepted, Formula, Equations, sentences, SharedCauses, Curve);

    /// <summary>A pooled quantity, or null.</summary>
    public ClassQuantity? Find(string quantityId) => Quantities.FirstOrDefault(q => q.Quantity.Id == quantityId);
}
