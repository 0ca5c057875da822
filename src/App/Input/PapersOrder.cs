using Calx.Papers.Documents;
using Calx.Papers.Handouts;

namespace Calx.App.Input;

/// <summary>Which papers are to be made, and how.</summary>
/// <param name="Set">Which papers.</param>
/// <param name="Levels">How much the student sheets help.</param>
/// <param name="Formats">In which forms: <c>docx</c>, <c>html</c>, <c>xlsx</c>, <c>pdf</c>; <c>svg</c>, <c>png</c> for pictures; a paper that has none of them comes in those it has.</param>
/// <param name="Folder">Full path of the folder to write into.</param>
/// <param name="Occasion">Class and date.</param>
/// <param name="Look">How they are printed.</param>
/// <param name="Seed">Which of the possible classes stands where data are simulated.</param>
/// <param name="Results">The class's file for the papers after the lesson, as written, or null.</param>
/// <param name="ShowsAccepted">Whether the sheet for the wall tells the accepted value.</param>
internal sealed record PapersOrder(
    IReadOnlyList<PaperKind> Set, IReadOnlyList<SupportLevel> Levels, IReadOnlyList<string> Formats, string Folder, PaperOccasion Occasion, PaperLook Look,
    ulong Seed = 1, string? Results = null, bool ShowsAccepted = false);
