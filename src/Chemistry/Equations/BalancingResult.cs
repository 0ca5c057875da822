namespace Calx.Chemistry.Equations;

/// <summary>What came of balancing an equation, decided by its solutions in positive whole numbers.</summary>
public abstract record BalancingResult
{
    private BalancingResult()
    {
    }

    /// <summary>There is one way, and its multiples.</summary>
    /// <param name="Coefficients">The smallest whole numbers, reactants then products.</param>
    /// <param name="Text">The balanced equation in plain text.</param>
    public sealed record Balanced(IReadOnlyList<long> Coefficients, string Text) : BalancingResult;

    /// <summary>No positive numbers balance it.</summary>
    /// <param name="Reason">What stands in the way, without a full stop: <c>hydrogen is on the left only</c>.</param>
    /// <param name="InTheWay">Names of the elements, the word charge, or the formulas that stand in the way.</param>
    public sealed record CannotBalance(string Reason, IReadOnlyList<string> InTheWay) : BalancingResult;

    /// <summary>
    /// There are different ways, so the coefficients follow from the chemistry and not from counting atoms. Every way
    /// is a sum of multiples of the elementary ones.
    /// </summary>
    /// <param name="Elementary">The elementary balancings, each in smallest whole numbers, in ascending order of the
    /// first coefficient, then the second, and so on. No species of one can be left out; those with 0 have been.</param>
    /// <param name="Reason">Why there is no single answer, in a sentence without a full stop.</param>
    public sealed record ManyBalances(IReadOnlyList<IReadOnlyList<long>> Elementary, string Reason) : BalancingResult;

    /// <summary>The equation is too large for the search, or its coefficients are beyond 64 bits.</summary>
    /// <param name="Reason">Which limit was met.</param>
    public sealed record Undecided(string Reason) : BalancingResult;
}
