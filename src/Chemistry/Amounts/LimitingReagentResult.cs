namespace Calx.Chemistry.Amounts;

/// <summary>Which reagent is used up first.</summary>
/// <remarks>Reactants of which no mass is given, the oxygen of the air for instance, are taken to be in excess.</remarks>
public abstract record LimitingReagentResult
{
    private LimitingReagentResult()
    {
    }

    /// <summary>One reagent limits, judged by the estimates; its probability says how sure that is.</summary>
    /// <param name="Limiting">The reagent.</param>
    /// <param name="Reagents">All reagents weighed, in the order given.</param>
    public sealed record Found(ReagentExtent Limiting, IReadOnlyList<ReagentExtent> Reagents) : LimitingReagentResult;

    /// <summary>Two or more reagents would be used up at the same moment: none of them is in excess.</summary>
    /// <param name="Limiting">The reagents that limit together, at least two.</param>
    /// <param name="Reagents">All reagents weighed, in the order given.</param>
    public sealed record Tie(IReadOnlyList<ReagentExtent> Limiting, IReadOnlyList<ReagentExtent> Reagents)
        : LimitingReagentResult;

    /// <summary>The question has no answer.</summary>
    /// <param name="Reason">Why, for a person.</param>
    public sealed record CannotTell(string Reason) : LimitingReagentResult;
}
