namespace Calx.Measurement.Statistics.Series;

/// <summary>How the rate of a change depends on how much of it is still to come.</summary>
public enum KineticOrder
{
    /// <summary>Not at all: a straight line, then level. y = y₀ - L · min(1, t/2T).</summary>
    Zeroth,

    /// <summary>In proportion: an exponential approach. y = y₀ - L (1 - 2^(-t/T)), and k = ln 2 / T.</summary>
    First,

    /// <summary>As its square: a hyperbola. y = y₀ - L (t/T)/(1 + t/T), and k' = 1/T.</summary>
    Second,
}

/// <summary>What happens before the readings begin to follow the curve.</summary>
public enum CurveStart
{
    /// <summary>Nothing: the change begins at the first reading, or had begun before.</summary>
    AtFirstReading,

    /// <summary>The change begins later, at a time to be found.</summary>
    Delayed,

    /// <summary>
    /// The change begins at the first reading, but what it makes stays in the vessel up to a cap, as gas does that dissolves,
    /// and only then leaves. The readings show the same lag as a delay; the rate at the start and the whole amount differ.
    /// </summary>
    GasHeldBack,
}
