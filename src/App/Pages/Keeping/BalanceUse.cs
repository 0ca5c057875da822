using Calx.App.Pages.Lessons;

namespace Calx.App.Pages.Keeping;

/// <summary>A lesson in which a balance was used.</summary>
/// <param name="Row">The lesson.</param>
/// <param name="Readings">How many readings name it.</param>
public sealed record BalanceUse(LessonRow Row, int Readings);
