using Calx.Records.Lessons;

namespace Calx.App.Pages.Lessons;

/// <summary>A lesson in a list.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Class">Its class.</param>
/// <param name="Title">Title of its practical.</param>
/// <param name="IsCover">Whether it is a cover lesson.</param>
public sealed record LessonRow(Lesson Lesson, SchoolClass Class, string Title, bool IsCover)
{
    /// <summary>What kind of lesson it is where it is no usual one, in two words; else empty.</summary>
    public string Kind => IsCover ? "cover lesson" : Lesson.Settings.Trial ? "trial run" : Lesson.Settings.Assessed ? "assessed" : "";

    /// <summary>The same behind something else in a line.</summary>
    public string KindBehind => IsCover || Lesson.Settings.Trial ? $", {Kind}" : "";
}
