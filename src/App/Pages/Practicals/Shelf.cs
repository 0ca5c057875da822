using System.Collections.Concurrent;
using Calx.App.Serving;
using Calx.Practicals.Definition;

namespace Calx.App.Pages.Practicals;

/// <summary>
/// The practicals at hand: those that the program brings along, and the teacher's own files in the folder <c>practicals</c> of the
/// data folder. A file is read again when it has changed.
/// </summary>
public sealed class Shelf(ServeOptions options)
{
    /// <summary>Bytes of a practical's file; those of the program have 20 to 40 thousand.</summary>
    private const long LargestFile = 1_000_000;

    private const int MostFiles = 200;

    private readonly ConcurrentDictionary<string, Known> read = new(StringComparer.Ordinal);

    /// <summary>The folder of the teacher's own files.</summary>
    public string Folder => Path.Combine(options.DataFolder, "practicals");

    /// <summary>All of them, by title; files with faults last.</summary>
    public IReadOnlyList<ShelfItem> All() =>
    [
        .. BuiltInPracticals.All.Select(p => new ShelfItem(p, null, [])).Concat(Own())
            .OrderBy(i => i.Practical is null).ThenBy(i => i.Practical?.Title ?? i.File, StringComparer.OrdinalIgnoreCase),
    ];

    /// <summary>The practical with an id, or null.</summary>
    public Practical? Find(string id) =>
        BuiltInPracticals.Find(id) ?? Own().Select(i => i.Practical).FirstOrDefault(p => p?.Id == id);

    private ShelfItem[] Own()
    {
        var folder = new DirectoryInfo(Folder);
        if (!folder.Exists)
        {
            return [];
        }

        return folder.EnumerateFiles("*.yaml").OrderBy(f => f.Name, StringComparer.Ordinal).Take(MostFiles).Select(ItemOf).ToArray();
    }

    private ShelfItem ItemOf(FileInfo file)
    {
        if (read.TryGetValue(file.FullName, out Known? known) && known.Length == file.Length && known.Written == file.LastWriteTimeUtc)
        {
            return known.Item;
        }

        ShelfItem item = Read(file);
        read[file.FullName] = new Known(file.Length, file.LastWriteTimeUtc, item);
        return item;
    }

    private static ShelfItem Read(FileInfo file)
    {
        if (file.Length > LargestFile)
        {
            return new ShelfItem(null, file.Name, ["The file is too large: a practical has less than 1 MB."]);
        }

        try
        {
            PracticalReading reading = PracticalReader.Read(File.ReadAllText(file.FullName), file.Name);
            return reading.Practical is Practical own && BuiltInPracticals.Find(own.Id) is not null
                ? new ShelfItem(null, file.Name, [$"The program brings along a practical '{own.Id}' already. Give this one another id."])
                : new ShelfItem(reading.Practical, file.Name, [.. reading.Faults.Select(f => f.ToString())]);
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            return new ShelfItem(null, file.Name, [$"The file cannot be read ({failure.Message})."]);
        }
    }

    private sealed record Known(long Length, DateTime Written, ShelfItem Item);
}
