namespace Calx.Measurement.Weighing;

/// <summary>Accuracy class of a balance (OIML R 76-1:2006, 3.2).</summary>
public enum BalanceClass
{
    /// <summary>Special accuracy, I.</summary>
    I,

    /// <summary>High accuracy, II: most balances of a school laboratory.</summary>
    II,

    /// <summary>Medium accuracy, III: kitchen and shop scales.</summary>
    III,

    /// <summary>Ordinary accuracy, IIII.</summary>
    IIII,
}
