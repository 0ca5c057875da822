using Calx.Chemistry.Formulas;

namespace Calx.Practicals.Definition;

/// <summary>One reactant or product of a reaction.</summary>
/// <param name="Coefficient">Its coefficient in the balanced equation, from 1.</param>
/// <param name="Formula">Its formula.</param>
/// <param name="Material">Id of the material that it means.</param>
public sealed record ReactionTerm(long Coefficient, Formula Formula, string Material)
{
    /// <summary>Its formula in plain text.</summary>
    public string FormulaText => Formula.ToString();
}
