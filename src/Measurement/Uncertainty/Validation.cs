namespace Calx.Measurement.Uncertainty;

/// <summary>Judges first-order propagation by Monte Carlo (JCGM 101:2008, clause 8).</summary>
public static class Validation
{
    /// <summary>Compares the first-order coverage interval with the shortest interval of the draws, for the draws'
    /// coverage probability.</summary>
    /// <param name="firstOrder">Result of the law of propagation.</param>
    /// <param name="monteCarlo">Result of Monte Carlo for the same model; its ends should be known to a fifth of the
    /// tolerance (8.2), which a million draws give for one or two digits.</param>
    /// <param name="significantDigits">How many digits of the standard uncertainty are meaningful, 1 to 4.</param>
    public static ValidationOutcome Compare(UncertainValue firstOrder, MonteCarloResult monteCarlo, int significantDigits)
    {
        ArgumentNullException.ThrowIfNull(firstOrder);
        ArgumentNullException.ThrowIfNull(monteCarlo);
        return Compare(firstOrder.Interval(monteCarlo.Shortest.Coverage), monteCarlo, significantDigits);
    }

    /// <summary>Compares any coverage interval, for instance of second order, with the shortest of the draws.</summary>
    /// <param name="interval">For the same coverage probability.</param>
    /// <param name="monteCarlo">Result of Monte Carlo for the same model.</param>
    /// <param name="significantDigits">How many digits of the standard uncertainty are meaningful, 1 to 4.</param>
    /// <exception cref="ArgumentException">The coverage probabilities differ.</exception>
    public static ValidationOutcome Compare(CoverageInterval interval, MonteCarloResult monteCarlo, int significantDigits)
    {
        ArgumentNullException.ThrowIfNull(monteCarlo);
        if (interval.Coverage != monteCarlo.Shortest.Coverage)
        {
            throw new ArgumentException("The intervals are for different coverage probabilities.", nameof(interval));
        }

        return ValidationOutcome.Of(
            Math.Abs(interval.Low - monteCarlo.Shortest.Low),
            Math.Abs(interval.High - monteCarlo.Shortest.High),
            NumericalTolerance.Of(monteCarlo.StandardUncertainty, significantDigits));
    }
}
