using Calx.App.Own;
using Calx.App.Serving;
using Calx.Practicals.Definition;

namespace Calx.App.Pages.Practicals;

/// <summary>
/// The practicals at hand: those that the program brings along, and the teacher's own files in the folder <c>practicals</c> of the
/// data folder.
/// </summary>
public sealed class Shelf(ServeOptions options)
{
    private readonly OwnFolder own = OwnFolder.In(options.DataFolder);

    /// <summary>The folder of the teacher's own files.</summary>
    public string Folder => own.Path;

    /// <summary>Their versions.</summary>
    internal OwnVersions Versions => new(own);

    /// <summary>Whether a practical is the teacher's own.</summary>
    public bool IsOwn(string id) => BuiltInPracticals.Find(id) is null && own.FilesCalled(id).Any();

    /// <summary>All of them, by title; files with faults last.</summary>
    public IReadOnlyList<ShelfItem> All() =>
    [
        .. BuiltInPracticals.All.Select(p => new ShelfItem(p, null, [])).Concat(own.All().Select(f => new ShelfItem(f.Practical, f.Name, f.Faults) { Id = f.Id is not null && BuiltInPracticals.Find(f.Id) is null ? f.Id : null }))
            .OrderBy(i => i.Practical is null).ThenBy(i => i.Practical?.Title ?? i.File, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The practical with an id, or null.</summary>
    public Practical? Find(string id) => BuiltInPracticals.Find(id) ?? own.Find(id);
}
