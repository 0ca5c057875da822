namespace Calx.App.Pages.Lessons;

/// <summary>All lessons.</summary>
/// <param name="Rows">The latest first.</param>
/// <param name="Done">What was done, or null.</param>
public sealed record LessonsModel(IReadOnlyList<LessonRow> Rows, string? Done);
