using Calx.Chemistry.Elements;
using Calx.Chemistry.Equations;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model;

/// <summary>A reaction as masses: what 1 g of the limiting material uses up and makes.</summary>
internal sealed class Stoichiometry
{
    private readonly int limiting;
    private readonly List<(int Material, double GramsPerGram, bool Air)> consumed = [];
    private readonly List<(int Material, double GramsPerGram, bool Air)> made = [];

    private Stoichiometry(int limiting) => this.limiting = limiting;

    /// <summary>Looks up coefficients and molar masses. The equation was checked balanced when the file was read.</summary>
    public static Stoichiometry Of(
        Reaction reaction, IReadOnlyList<Material> materials, Dictionary<string, int> indices, AtomicWeights weights)
    {
        Equation equation = Equation.Parse(reaction.EquationText).Value;
        var balanced = (BalancingResult.Balanced)equation.Balance();
        var result = new Stoichiometry(indices[reaction.Limiting]);
        var sides = equation.Reactants.Select(t => (Term: t, Side: result.consumed))
            .Concat(equation.Products.Select(t => (Term: t, Side: result.made)))
            .Zip(balanced.Coefficients, (t, n) => (t.Term, t.Side, Moles: n))
            .Select(t => (t.Side, t.Moles, Index: indices[reaction.Materials[t.Term.Formula.ToString()]], Mass: t.Term.Formula.MolarMass(weights).Value))
            .ToList();
        (_, long limitingMoles, _, double limitingMass) = sides.First(s => s.Index == result.limiting);
        foreach ((List<(int, double, bool)> side, long moles, int index, double mass) in sides)
        {
            side.Add((index, moles * mass / (limitingMoles * limitingMass), materials[index].Air));
        }

        return result;
    }

    /// <summary>Lets a fraction of the limiting material react where it lies.</summary>
    /// <param name="place">What the place holds; changed.</param>
    /// <param name="fraction">Of the limiting material that is left, 0 to 1.</param>
    /// <param name="escapes">Share of the newly made products that leaves though it is not of the air.</param>
    /// <param name="cap">Most mass in g of each leaving product that the place keeps (a gas that dissolves).</param>
    public void Proceed(Contents place, double fraction, double escapes, double cap)
    {
        double reacted = fraction * place[limiting];
        foreach ((int material, double gramsPerGram, bool air) in consumed)
        {
            if (!air)
            {
                place[material] -= gramsPerGram * reacted;
            }
        }

        foreach ((int material, double gramsPerGram, bool air) in made)
        {
            double mass = gramsPerGram * reacted;
            double stays = air ? Math.Min(mass, Math.Max(0, cap - place[material])) : mass * (1 - escapes);
            place[material] += stays;
        }
    }
}
