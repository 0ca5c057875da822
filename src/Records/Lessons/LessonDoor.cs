namespace Calx.Records.Lessons;

/// <summary>The codes by which devices join a lesson while it is open.</summary>
/// <param name="LessonId">The lesson.</param>
/// <param name="Code">The students' code, six letters.</param>
/// <param name="StationCode">The code of a balance station, eight letters.</param>
/// <param name="OpenedAt">Since when.</param>
/// <param name="ClosedAt">Till when, or null while it is open.</param>
public sealed record LessonDoor(RecordId LessonId, string Code, string StationCode, DateTimeOffset OpenedAt, DateTimeOffset? ClosedAt)
{
    /// <summary>Whether the codes let devices in.</summary>
    public bool IsOpen => ClosedAt is null;
}
