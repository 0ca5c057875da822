namespace Calx.Practicals.Learning;

/// <summary>A balance was held against a check mass.</summary>
public sealed class BalanceCheckSeen
{
    /// <summary>Takes a check.</summary>
    /// <param name="balance">Name of the balance.</param>
    /// <param name="month">When, in months from any day that is the same for all checks.</param>
    /// <param name="errorInDivisions">Shown less marked, in divisions of the display; finite.</param>
    /// <param name="standardUncertaintyInDivisions">Standard uncertainty of one reading in divisions, above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is not finite, or the uncertainty is not above 0.</exception>
    public BalanceCheckSeen(string balance, double month, double errorInDivisions, double standardUncertaintyInDivisions)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(balance);
        ArgumentOutOfRangeException.ThrowIfNotEqual(double.IsFinite(month), true, nameof(month));
        ArgumentOutOfRangeException.ThrowIfNotEqual(double.IsFinite(errorInDivisions), true, nameof(errorInDivisions));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(standardUncertaintyInDivisions);
        ArgumentOutOfRangeException.ThrowIfNotEqual(double.IsFinite(standardUncertaintyInDivisions), true, nameof(standardUncertaintyInDivisions));
        (Balance, Month, ErrorInDivisions, StandardUncertaintyInDivisions) = (balance, month, errorInDivisions, standardUncertaintyInDivisions);
    }

    /// <summary>Name of the balance.</summary>
    public string Balance { get; }

    /// <summary>When, in months.</summary>
    public double Month { get; }

    /// <summary>Shown less marked, in divisions.</summary>
    public double ErrorInDivisions { get; }

    /// <summary>Standard uncertainty of one reading, in divisions.</summary>
    public double StandardUncertaintyInDivisions { get; }
}
