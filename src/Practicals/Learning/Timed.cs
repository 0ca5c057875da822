using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>What past lessons say of how long a step takes.</summary>
/// <param name="Minutes">For the plan; the file's own where there are no lessons.</param>
/// <param name="Mean">90 % interval of the mean time in min of this class, or of this school's ordinary classes where it is new.</param>
/// <param name="OneGroup">90 % interval of one group's time in min in the next lesson.</param>
/// <param name="Times">How many times of groups of this school it rests on, unfinished ones among them.</param>
/// <param name="Lessons">In how many lessons.</param>
internal sealed record Timed(StepMinutes Minutes, CoverageInterval Mean, CoverageInterval OneGroup, int Times, int Lessons);
