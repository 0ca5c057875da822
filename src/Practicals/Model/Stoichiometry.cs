using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model;

/// <summary>A reaction as masses: what 1 g of the limiting material uses up and makes.</summary>
internal sealed class Stoichiometry
{
    private readonly int limiting;
    private readonly double gramsPerMole;
    private readonly Flow[] consumed;
    private readonly Flow[] made;

    /// <summary>Looks up coefficients and molar masses.</summary>
    /// <param name="reaction">The reaction, its equation balanced.</param>
    /// <param name="materials">The practical's materials.</param>
    /// <param name="indices">The place of each material in that list.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    public Stoichiometry(
        Reaction reaction, IReadOnlyList<Material> materials, Dictionary<string, int> indices, AtomicWeights weights)
    {
        limiting = indices[reaction.Limiting];
        ReactionTerm limitingTerm = reaction.Reactants.First(t => t.Material == reaction.Limiting);
        double gramsOfLimiting = MassOf(limitingTerm);
        gramsPerMole = gramsOfLimiting / limitingTerm.Coefficient;
        consumed = [.. reaction.Reactants.Select(FlowOf)];
        made = [.. reaction.Products.Select(FlowOf)];

        double MassOf(ReactionTerm term) =>
            term.Coefficient * term.Formula.MolarMass(weights).Value;

        Flow FlowOf(ReactionTerm term) => new(
            indices[term.Material], MassOf(term) / gramsOfLimiting, materials[indices[term.Material]].Air);
    }

    /// <summary>What fraction of the limiting material in a place so many moles are: at most all of it.</summary>
    public double FractionOf(ReadOnlySpan<double> place, double moles) =>
        place[limiting] > 0 ? Math.Clamp(moles * gramsPerMole / place[limiting], 0, 1) : 0;

    /// <summary>Lets a fraction of the limiting material react where it lies, or less where another reactant runs out first.</summary>
    /// <param name="place">Mass in g of each material that the place holds; changed.</param>
    /// <param name="fraction">Of the limiting material that is left, 0 to 1.</param>
    /// <param name="escapes">Share of the newly made products that leaves though it is not of the air.</param>
    /// <param name="cap">Most mass in g of each leaving product that the place keeps (a gas that dissolves).</param>
    public void Proceed(Span<double> place, double fraction, double escapes, double cap)
    {
        double reacted = fraction * place[limiting];
        foreach (Flow flow in consumed)
        {
            if (!flow.Air && flow.Material != limiting)
            {
                reacted = Math.Min(reacted, Math.Max(0, place[flow.Material]) / flow.GramsPerGram);
            }
        }

        foreach (Flow flow in consumed)
        {
            if (!flow.Air)
            {
                place[flow.Material] -= flow.GramsPerGram * reacted;
            }
        }

        foreach (Flow flow in made)
        {
            double mass = flow.GramsPerGram * reacted;
            place[flow.Material] += flow.Air
                ? Math.Min(mass, Math.Max(0, cap - place[flow.Material]))
                : mass * (1 - escapes);
        }
    }

    private readonly record struct Flow(int Material, double GramsPerGram, bool Air);
}
