using Calx.App.Pages.Lessons;

namespace Calx.App.Pages.Home;

/// <summary>What is on now, and what to do next.</summary>
/// <param name="Today">This day.</param>
/// <param name="Open">Lessons that run or whose door is open.</param>
/// <param name="Next">Lessons of today and later that have not begun.</param>
/// <param name="Last">Lessons of earlier days, and those that are over; the latest first.</param>
/// <param name="HasClasses">Whether there is a class.</param>
/// <param name="OnlyHere">Whether no other device can reach the program, so that a lesson with phones needs another start.</param>
public sealed record HomeModel(
    DateOnly Today, IReadOnlyList<OpenLesson> Open, IReadOnlyList<LessonRow> Next, IReadOnlyList<LessonRow> Last, bool HasClasses, bool OnlyHere);
