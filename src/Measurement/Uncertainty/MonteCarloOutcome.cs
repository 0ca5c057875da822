namespace Calx.Measurement.Uncertainty;

/// <summary>How a Monte Carlo calculation ended.</summary>
public abstract record MonteCarloOutcome
{
    private MonteCarloOutcome()
    {
    }

    /// <summary>The calculation was made; an adaptive one is stable.</summary>
    /// <param name="Result">What the draws show.</param>
    public sealed record Finished(MonteCarloResult Result) : MonteCarloOutcome;

    /// <summary>The adaptive procedure had not settled when the most draws had been made.</summary>
    /// <param name="Result">What the draws show all the same.</param>
    /// <param name="Tolerance">The numerical tolerance δ asked for.</param>
    /// <param name="Reached">The largest of twice the standard deviations of estimate, standard uncertainty and ends of
    /// the interval over the sequences: what can be relied on.</param>
    public sealed record NotStable(MonteCarloResult Result, double Tolerance, double Reached) : MonteCarloOutcome;

    /// <summary>The model has no value for some of the draws, so that its result has no distribution.</summary>
    /// <param name="Failed">How many draws had no value, up to 1000.</param>
    /// <param name="Examined">Among how many draws, from the first on, they were counted.</param>
    /// <param name="Reason">What failed at the first of them, and where in the model; no full stop.</param>
    public sealed record DrawsFailed(int Failed, int Examined, string Reason) : MonteCarloOutcome;

    /// <summary>Draws cannot be made from what is known of the inputs.</summary>
    /// <param name="Reason">Why, without a full stop.</param>
    public sealed record CannotDraw(string Reason) : MonteCarloOutcome;
}
