namespace Calx.Practicals.Definition;

/// <summary>Where a step stands in the lesson, and where else it could.</summary>
public sealed class StepPlace(StepPer per, StepRound round, StepFreedom freedom, double grows)
{
    /// <summary>Who does it, and how often.</summary>
    public StepPer Per { get; } = per;

    /// <summary>Which heatings it belongs to.</summary>
    public StepRound Round { get; } = round;

    /// <summary>What a plan may do with it.</summary>
    public StepFreedom Freedom { get; } = freedom;

    /// <summary>Its minutes go with (sample / usual sample) to this power; 0 where they do not depend on it.</summary>
    public double Grows { get; } = grows;
}
