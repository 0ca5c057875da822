using Calx.Chemistry.Elements;
using Calx.Chemistry.Equations;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>What an equation says about amounts, or why it says nothing.</summary>
public abstract record ReactionResult
{
    private ReactionResult()
    {
    }

    /// <summary>
    /// Takes the numbers as written where they balance, else the only balancing there is. States are left out, so that
    /// a substance is found by its plain formula; one that stands twice on a side counts once with both numbers.
    /// </summary>
    /// <param name="equation">The equation.</param>
    /// <param name="weights">The atomic weights; the same instance as for every other mass in the calculation.</param>
    public static ReactionResult Of(Equation equation, AtomicWeights weights)
    {
        ArgumentNullException.ThrowIfNull(equation);
        ArgumentNullException.ThrowIfNull(weights);
        return equation.CheckAsWritten() is not WrittenCheck.NotBalanced
            ? Of(equation, [.. equation.Reactants.Concat(equation.Products).Select(term => term.Coefficient ?? 1)], weights)
            : equation.Balance() switch
            {
                BalancingResult.Balanced balanced => Of(equation, balanced.Coefficients, weights),
                BalancingResult.CannotBalance impossible => new CannotTell(impossible.Reason),
                BalancingResult.ManyBalances many => new CannotTell(many.Reason),
                BalancingResult.Undecided undecided => new CannotTell(undecided.Reason),
                _ => throw new InvalidOperationException("An unknown case of a closed result."),
            };
    }

    private static ReactionResult Of(Equation equation, IReadOnlyList<long> numbers, AtomicWeights weights)
    {
        Term[] terms = [.. equation.Reactants, .. equation.Products];
        Parsed<UncertainValue>[] molarMasses = [.. terms.Select(term => term.Formula.FindMolarMass(weights))];
        if (Array.Find(molarMasses, found => !found.Succeeded) is { Fault: { } fault })
        {
            return new CannotTell(fault.Reason);
        }

        ReactionPart[] parts = [.. terms.Select((term, i) => new ReactionPart(
            FormulaName.WithoutState(term.Formula), numbers[i], molarMasses[i].Value))];
        int left = equation.Reactants.Count;
        return new Found(new Reaction(Merged(parts[..left]), Merged(parts[left..])));
    }

    private static ReactionPart[] Merged(ReactionPart[] side) =>
        [.. side.GroupBy(part => part.Formula).Select(same =>
            new ReactionPart(same.Key, same.Sum(part => part.Number), same.First().MolarMassInGramsPerMole))];

    /// <summary>The reaction with its numbers and molar masses.</summary>
    /// <param name="Reaction">The reaction.</param>
    public sealed record Found(Reaction Reaction) : ReactionResult;

    /// <summary>The equation gives no amounts.</summary>
    /// <param name="Reason">Why, for a person.</param>
    public sealed record CannotTell(string Reason) : ReactionResult;
}
