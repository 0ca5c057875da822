using Calx.Measurement.Uncertainty;

namespace Calx.Chemistry.Amounts;

/// <summary>A theoretical yield, or why there is none.</summary>
public abstract record TheoreticalYieldResult
{
    private TheoreticalYieldResult()
    {
    }

    /// <summary>The yield.</summary>
    /// <param name="MassInGrams">Mass of product, in g.</param>
    /// <param name="Basis">Which reagent limits, and how surely.</param>
    public sealed record Found(UncertainValue MassInGrams, LimitingReagentResult Basis) : TheoreticalYieldResult;

    /// <summary>There is none.</summary>
    /// <param name="Reason">Why, for a person.</param>
    public sealed record CannotTell(string Reason) : TheoreticalYieldResult;
}
