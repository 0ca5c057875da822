namespace Calx.Practicals.Readings;

/// <summary>What the teacher says of the balances; what is not said is taken from the readings or from judgement.</summary>
public sealed class BalanceOptions
{
    /// <summary>Takes what was said.</summary>
    /// <param name="resolutionInGrams">The balance's smallest step, or null.</param>
    /// <param name="repeatabilityInGrams">Standard deviation of repeated weighings of one thing, or null.</param>
    /// <exception cref="ArgumentOutOfRangeException">The resolution is not positive, or the repeatability negative.
    /// </exception>
    public BalanceOptions(decimal? resolutionInGrams = null, double? repeatabilityInGrams = null)
    {
        if (resolutionInGrams is decimal resolution)
            ArgumentOutOfRangeException.ThrowIfNegativeOrZero(resolution, nameof(resolutionInGrams));
        if (repeatabilityInGrams is double repeatability && !(repeatability >= 0 && double.IsFinite(repeatability)))
            throw new ArgumentOutOfRangeException(nameof(repeatabilityInGrams));
        ResolutionInGrams = resolutionInGrams;
        RepeatabilityInGrams = repeatabilityInGrams;
    }

    /// <summary>Nothing was said.</summary>
    public static BalanceOptions NothingGiven { get; } = new();

    /// <summary>The balance's smallest step in g, or null.</summary>
    public decimal? ResolutionInGrams { get; }

    /// <summary>Standard deviation of repeated weighings in g, or null.</summary>
    public double? RepeatabilityInGrams { get; }
}
