using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>Which numbers of an older version of a practical the present one still has: only of those do lessons of the older version
/// say anything. A step whose times were changed is another step.</summary>
public static class DefinitionKept
{
    /// <summary>What a lesson of an older version says of the present one.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="then">The practical as it was.</param>
    /// <param name="now">As it is.</param>
    public static PastLesson Of(PastLesson lesson, Practical then, Practical now)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(then);
        ArgumentNullException.ThrowIfNull(now);
        return then.Version == now.Version ? lesson : new PastLesson(
            lesson.School,
            lesson.ClassName,
            [.. lesson.Steps.Where(s => Same(Step(then, s.Step), Step(now, s.Step)))],
            [.. lesson.Faults.Where(f => Rate(then, f.Cause) is double rate && rate == Rate(now, f.Cause))],
            [.. lesson.Kit.Where(k => Breaks(then, k.Piece) is double share && share == Breaks(now, k.Piece))]);
    }

    private static StepMinutes? Step(Practical practical, string id) => practical.Steps.FirstOrDefault(s => s.Id == id)?.Minutes;

    private static double? Rate(Practical practical, string cause) => practical.Faults.FirstOrDefault(f => f.Cause == cause)?.Rate;

    private static double? Breaks(Practical practical, string piece) => practical.Kit.FirstOrDefault(k => k.Id == piece)?.Loss.Breaks;

    private static bool Same(StepMinutes? one, StepMinutes? other) => one is not null && other is not null
        && one.Least == other.Least && one.Likely == other.Likely && one.Most == other.Most;
}
