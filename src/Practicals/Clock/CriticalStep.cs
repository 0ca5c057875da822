namespace Calx.Practicals.Clock;

/// <summary>A link of the chain of things, each waiting for the one before, that made a lesson as long as it was.</summary>
/// <param name="Group">Whose, from 1; 0 for the whole class.</param>
/// <param name="StepId">Id of the step.</param>
/// <param name="Label">The step, for people.</param>
/// <param name="FromMinute">When it began.</param>
/// <param name="ToMinute">When it ended.</param>
public sealed record CriticalStep(int Group, string StepId, string Label, double FromMinute, double ToMinute);
