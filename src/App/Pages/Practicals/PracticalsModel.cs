using Calx.Practicals.Definition;

namespace Calx.App.Pages.Practicals;

/// <summary>The practicals at hand.</summary>
/// <param name="Items">All of them.</param>
/// <param name="Signed">Ids of those whose usual plan is signed for or that have any signature of this version, with the initials.</param>
/// <param name="Folder">Where the teacher's own files stand.</param>
/// <param name="Search">What is looked for.</param>
public sealed record PracticalsModel(IReadOnlyList<ShelfItem> Items, IReadOnlyDictionary<string, string> Signed, string Folder, ShelfSearch Search)
{
    /// <summary>How many practicals there are, looked for or not.</summary>
    public int All { get; } = Items.Count(i => i.Practical is not null);

    /// <summary>Those that are looked for.</summary>
    public IReadOnlyList<(ShelfItem Item, Practical Practical)> Found { get; } =
        [.. Items.Where(i => i.Practical is not null && Search.Wish.Fits(i.Practical)).Select(i => (i, i.Practical!))];

    /// <summary>Files that are no practicals yet. They stand there whatever is looked for.</summary>
    public IReadOnlyList<ShelfItem> Unfinished { get; } = [.. Items.Where(i => i.Practical is null)];

    /// <summary>The families that are there, each with how many.</summary>
    public IReadOnlyDictionary<PracticalFamily, int> Families { get; } =
        Items.Select(i => i.Practical).OfType<Practical>().GroupBy(p => p.Family).ToDictionary(g => g.Key, g => g.Count());
}
