using Calx.Records.Lessons;

namespace Calx.App.Pages.Classes;

/// <summary>All classes.</summary>
/// <param name="Classes">By year, the latest first, then by name.</param>
/// <param name="ThisYear">The school year that a new class is likely of.</param>
/// <param name="Fault">What was wrong with the last try, or null.</param>
public sealed record ClassesModel(IReadOnlyList<SchoolClass> Classes, string ThisYear, string? Fault);
