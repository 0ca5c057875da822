namespace Calx.Practicals.Definition;

/// <summary>How much of a piece of kit is needed.</summary>
public sealed class KitNeed(KitPer per, double number, string? unit, bool isSample, bool isCut)
{
    /// <summary>For whom.</summary>
    public KitPer Per { get; } = per;

    /// <summary>How much each of them needs, in <see cref="Unit"/>; above 0. Of the sample: the usual amount.</summary>
    public double Number { get; } = number;

    /// <summary>Its unit, or null where it is counted.</summary>
    public string? Unit { get; } = unit;

    /// <summary>Whether it is the sample: its amount is the plan's.</summary>
    public bool IsSample { get; } = isSample;

    /// <summary>Whether it is cut from a coil, so that a weighed metre gives its length.</summary>
    public bool IsCut { get; } = isCut;
}
