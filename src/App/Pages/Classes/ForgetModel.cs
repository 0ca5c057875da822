using Calx.Records.Lessons;

namespace Calx.App.Pages.Classes;

/// <summary>Asks before a class's names are forgotten.</summary>
/// <param name="Class">The class.</param>
/// <param name="Named">How many members have a name.</param>
/// <param name="Folder">Where the export is put first.</param>
/// <param name="Fault">What was wrong with the last try, or null.</param>
public sealed record ForgetModel(SchoolClass Class, int Named, string Folder, string? Fault);
