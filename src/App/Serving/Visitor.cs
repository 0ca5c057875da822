namespace Calx.App.Serving;

/// <summary>Who asks. One browser can be both: a teacher who tries the students' pages.</summary>
/// <param name="IsTeacher">Whether it may see and change everything.</param>
/// <param name="Seat">The place in a lesson that its device has taken, or null.</param>
public sealed record Visitor(bool IsTeacher, Seat? Seat)
{
    /// <summary>The name under which the teacher's entries stand in the journal.</summary>
    public const string TeachersDevice = "teacher";
}
