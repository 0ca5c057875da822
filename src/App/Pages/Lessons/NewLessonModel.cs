using Calx.App.Pages.Practicals;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Lessons;

/// <summary>A lesson to be made of a plan.</summary>
/// <param name="Form">The plan; null while no practical is chosen.</param>
/// <param name="Shelf">The practicals to choose from.</param>
/// <param name="Classes">The classes to choose from.</param>
/// <param name="Words">What was filled in.</param>
/// <param name="Fault">What was wrong, or null.</param>
public sealed record NewLessonModel(
    PlanForm? Form, IReadOnlyList<ShelfItem> Shelf, IReadOnlyList<SchoolClass> Classes, NewLessonWords Words, string? Fault);
