using Calx.Chemistry.Equations;
using Calx.Chemistry.Formulas;

namespace Calx.Practicals.Definition.Source;

/// <summary>Which material each formula of one equation means.</summary>
internal sealed class MeantMaterials(Equation equation, FaultList faults)
{
    private readonly List<(Formula Formula, string Material)> meant = [];

    /// <summary>Ties a formula to a material; one that is not in the equation, or not the material's own, is noted.</summary>
    public void Add(FileEntry written, Formula formula, Material material)
    {
        if (!Terms.Any(t => EquationReader.Same(t.Formula, formula)))
        {
            string expected = string.Join(", ", Terms.Select(t => t.Formula));
            faults.Add(written.Key.At, $"{formula} does not occur in the equation; expected {expected}");
        }
        else if (material.Formula is not Formula own || !EquationReader.Same(own, formula))
        {
            faults.Add(written.Value.At, $"the material '{material.Id}' is {material.FormulaText ?? "without a formula"}, not {formula}");
        }

        meant.Add((formula, material.Id));
    }

    /// <summary>Notes the formulas that mean no material.</summary>
    public void CheckComplete(FilePosition at)
    {
        foreach (Term term in Terms.Where(t => MaterialOf(t) is null))
        {
            faults.Add(at, $"{term.Formula} has no material; add it to 'materials', formula to material");
        }
    }

    /// <summary>One side of the equation, each species with its material.</summary>
    public IReadOnlyList<ReactionTerm> Side(IReadOnlyList<Term> side) =>
        [.. side.Select(t => new ReactionTerm(t.Coefficient ?? 1, t.Formula, MaterialOf(t) ?? "?"))];

    private IEnumerable<Term> Terms => equation.Reactants.Concat(equation.Products);

    private string? MaterialOf(Term term) =>
        meant.Where(m => EquationReader.Same(m.Formula, term.Formula)).Select(m => m.Material).FirstOrDefault();
}
