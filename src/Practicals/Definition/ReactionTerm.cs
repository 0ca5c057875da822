namespace Calx.Practicals.Definition;

/// <summary>One reactant or product of a reaction.</summary>
/// <param name="Coefficient">Its coefficient in the balanced equation, from 1.</param>
/// <param name="FormulaText">Its formula as written in the equation, without state.</param>
/// <param name="Material">Id of the material that it means.</param>
public sealed record ReactionTerm(long Coefficient, string FormulaText, string Material);
