using Calx.App.Live;
using Calx.Records.Lessons;

namespace Calx.App.Pages.Lessons;

/// <summary>Asks before a lesson is deleted.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Class">Its class.</param>
/// <param name="Title">Title of its practical.</param>
/// <param name="Entries">How many entries its journal has.</param>
/// <param name="Folder">Where the export is put first.</param>
/// <param name="Fault">What was wrong with the last try, or null.</param>
public sealed record DeleteModel(Lesson Lesson, SchoolClass Class, string Title, long Entries, string Folder, string? Fault);
