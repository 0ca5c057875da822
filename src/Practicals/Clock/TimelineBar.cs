namespace Calx.Practicals.Clock;

/// <summary>A stretch of one group's lesson.</summary>
/// <param name="Group">From 1; 0 for the whole class.</param>
/// <param name="StepId">Id of the step; of the step waited for where the group waits.</param>
/// <param name="Label">The step, for people.</param>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="FromMinute">When it begins, in min from the first bell.</param>
/// <param name="ToMinute">When it ends.</param>
public sealed record TimelineBar(int Group, string StepId, string Label, BarKind Kind, double FromMinute, double ToMinute);
