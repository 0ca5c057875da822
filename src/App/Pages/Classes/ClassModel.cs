using Calx.App.Pages.Lessons;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Classes;

/// <summary>One class.</summary>
/// <param name="Class">The class.</param>
/// <param name="Members">Its members, by number.</param>
/// <param name="Lessons">Its lessons, the latest first.</param>
/// <param name="Fault">What was wrong with the last try, or null.</param>
/// <param name="Done">What was done, or null.</param>
public sealed record ClassModel(
    SchoolClass Class, IReadOnlyList<Member> Members, IReadOnlyList<LessonRow> Lessons, string? Fault, string? Done);
