namespace Calx.App.Pages.Practicals;

/// <summary>The practicals at hand.</summary>
/// <param name="Items">All of them.</param>
/// <param name="Signed">Ids of those whose usual plan is signed for or that have any signature of this version, with the initials.</param>
/// <param name="Folder">Where the teacher's own files stand.</param>
public sealed record PracticalsModel(IReadOnlyList<ShelfItem> Items, IReadOnlyDictionary<string, string> Signed, string Folder);
