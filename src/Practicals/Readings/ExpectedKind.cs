namespace Calx.Practicals.Readings;

/// <summary>What the numbers of an expected column are.</summary>
public enum ExpectedKind
{
    /// <summary>A whole weighing, vessel included: one of the practical's readings.</summary>
    Weighing,

    /// <summary>A reading that is no mass: a time, a temperature, a volume.</summary>
    Gauge,

    /// <summary>A mass read on a tared balance.</summary>
    Tared,

    /// <summary>A mass that somebody has already subtracted.</summary>
    Difference,
}
