using System.Globalization;

namespace Calx.App.Live;

/// <summary>
/// What devices may still send once the teacher has ended a lesson: what was typed before and waited on them without a
/// connection. What is typed later belongs to no lesson, unless the teacher takes it up again.
/// </summary>
public static class AfterTheEnd
{
    /// <summary>Why something is not taken, or null.</summary>
    /// <param name="state">Where the lesson stands.</param>
    /// <param name="typedAt">When the device says that it was typed; null for now.</param>
    public static string? Refusal(LessonState state, DateTimeOffset? typedAt) =>
        state.EndedAt is DateTimeOffset ended && (typedAt is null || typedAt > ended)
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"Your teacher ended this lesson at {ended.ToLocalTime():HH:mm}; what is typed after that is not taken. Tell your teacher, who can go on with the lesson.")
            : null;
}
