using Calx.App.Pages.CatchUp;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;

namespace Calx.App.Pages.Papers;

/// <summary>What the page of a lesson's papers shows.</summary>
/// <param name="Title">The practical, and the class where there is one.</param>
/// <param name="Back">Address and name of the page that it belongs to.</param>
/// <param name="Address">Its own address, without the query.</param>
/// <param name="Plan">The part of the query that says the plan, by name; empty where the lesson says it.</param>
/// <param name="Query">The whole query, for the files.</param>
/// <param name="Papers">The papers.</param>
/// <param name="Warnings">What asks for a reading that the table has no row for.</param>
/// <param name="Look">How they are printed.</param>
/// <param name="IsSigned">Whether the practical was signed.</param>
/// <param name="Outcome">What the class found, where papers tell of it.</param>
/// <param name="CatchUp">The lesson's catch-up packs; null for a plan, of which nobody was away.</param>
public sealed record PapersModel(
    string Title,
    (string Address, string Name) Back,
    string Address,
    IReadOnlyList<KeyValuePair<string, string>> Plan,
    string Query,
    PaperSet Papers,
    IReadOnlyList<string> Warnings,
    PaperLook Look,
    bool IsSigned,
    ClassOutcome? Outcome = null,
    CatchUpModel? CatchUp = null)
{
    /// <summary>Whether the lesson is a cover lesson.</summary>
    public bool IsCover { get; init; }

    /// <summary>Which of the possible classes stands where data are simulated.</summary>
    public ulong Seed { get; init; }
}
