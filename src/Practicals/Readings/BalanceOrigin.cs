namespace Calx.Practicals.Readings;

/// <summary>Where a figure of the balance came from.</summary>
public enum BalanceOrigin
{
    /// <summary>Said by the teacher.</summary>
    Given,

    /// <summary>From the most decimals in a column of readings.</summary>
    MostDecimals,

    /// <summary>Judgement, no source; to be replaced by what is known of the balance.</summary>
    Judgement,
}
