namespace Calx.Chemistry.Equations;

/// <summary>What an equation's own coefficients are worth; a species without one counts once.</summary>
public abstract record WrittenCheck
{
    private WrittenCheck()
    {
    }

    /// <summary>Balanced, in smallest whole numbers.</summary>
    public sealed record Lowest : WrittenCheck;

    /// <summary>Balanced, but every coefficient can be divided by the same number.</summary>
    /// <param name="Factor">The largest such number, at least 2.</param>
    public sealed record Multiple(long Factor) : WrittenCheck;

    /// <summary>Not balanced.</summary>
    /// <param name="Imbalances">What differs between the sides, in order of first appearance, charge last.</param>
    public sealed record NotBalanced(IReadOnlyList<Imbalance> Imbalances) : WrittenCheck;
}
