using Calx.Records.Lessons;

namespace Calx.App.Pages.Lessons;

/// <summary>A lesson in a list.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Class">Its class.</param>
/// <param name="Title">Title of its practical.</param>
public sealed record LessonRow(Lesson Lesson, SchoolClass Class, string Title);
