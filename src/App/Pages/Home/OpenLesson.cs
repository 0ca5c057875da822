using Calx.App.Pages.Lessons;

namespace Calx.App.Pages.Home;

/// <summary>A lesson that is on.</summary>
/// <param name="Row">The lesson.</param>
/// <param name="Minute">Minutes since it began, or null before.</param>
/// <param name="Bell">The bell's minute.</param>
public sealed record OpenLesson(LessonRow Row, double? Minute, double Bell);
