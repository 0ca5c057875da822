namespace Calx.Practicals.Clock;

/// <summary>How a shared thing is used in lessons of this plan.</summary>
/// <param name="Thing">What it is.</param>
/// <param name="MeanWait">Minutes that a group waits for it in a lesson, on average.</param>
/// <param name="LongestWait">The longest single wait of a lesson, on average, in min.</param>
/// <param name="Use">Share of the lesson that it is in use, 0 to 1.</param>
public sealed record ThingUse(SharedThing Thing, double MeanWait, double LongestWait, double Use);
