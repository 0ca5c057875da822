using Calx.Practicals.Definition;

namespace Calx.App.Pages.Practicals;

/// <summary>A practical at hand, or a file that is to be one and is not yet.</summary>
/// <param name="Practical">The practical, or null where its file has faults.</param>
/// <param name="File">The name of the teacher's own file, or null for one that the program brings along.</param>
/// <param name="Faults">What is wrong with the file, a sentence each.</param>
public sealed record ShelfItem(Practical? Practical, string? File, IReadOnlyList<string> Faults)
{
    /// <summary>The id that the teacher's own file gives itself, where it can be told and no other practical has it.</summary>
    public string? Id { get; init; }
}
