namespace Calx.Records.Lessons;

/// <summary>How a lesson is held.</summary>
/// <param name="Assessed">Whether it counts: students get no hints, queries or decisions.</param>
/// <param name="DecideFirst">Whether students say 'reheat or stop' before they see what the readings say.</param>
/// <param name="Trial">Whether it is the teacher's own trial run.</param>
public sealed record LessonSettings(bool Assessed, bool DecideFirst, bool Trial);
