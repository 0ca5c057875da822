namespace Calx.Practicals.Definition;

/// <summary>What happens in a practical, in the words by which teachers look for one.</summary>
public enum PracticalFamily
{
    /// <summary>It gains mass when it is heated.</summary>
    Gains,

    /// <summary>It loses mass when it is heated.</summary>
    Loses,

    /// <summary>Things are mixed, and a gas leaves.</summary>
    GasLeaves,

    /// <summary>The mass stays the same.</summary>
    Same,

    /// <summary>The mass is followed while time goes on.</summary>
    OverTime,

    /// <summary>A product is collected and weighed.</summary>
    Product,

    /// <summary>A sample is analysed: how much of something is in it.</summary>
    Analysed,

    /// <summary>Temperatures, times or currents are read besides masses.</summary>
    OtherReadings,
}
