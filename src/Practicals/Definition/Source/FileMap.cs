namespace Calx.Practicals.Definition.Source;

/// <summary>
/// Keys and values of one entry of the file, asked for key by key. What is missing or of the wrong type is noted, and a
/// harmless value stands in so that reading goes on to the next fault. <see cref="Close"/> notes keys never asked for.
/// </summary>
internal sealed partial class FileMap
{
    private readonly MapNode? node;
    private readonly string what;
    private readonly FaultList faults;
    private readonly List<string> asked = [];

    /// <summary>Takes a node that should be a map.</summary>
    /// <param name="node">The node.</param>
    /// <param name="what">What it describes, with its article: 'a material'.</param>
    /// <param name="faults">Where faults are noted.</param>
    public FileMap(FileNode node, string what, FaultList faults)
    {
        this.node = node as MapNode;
        this.what = what;
        this.faults = faults;
        At = node.At;
        if (node is not (MapNode or UnreadableNode))
        {
            faults.Add(node.At, $"{Said(node)}, where the keys of {what} were expected");
        }
    }

    /// <summary>Where it starts.</summary>
    public FilePosition At { get; }

    /// <summary>The value of a key, or null where the key is not there. A key without a value counts as not there.</summary>
    public FileNode? Find(string key)
    {
        asked.Add(key);
        FileNode? value = node?.Entries.FirstOrDefault(e => e.Key.Text == key)?.Value;
        return value is ScalarNode { IsNothing: true } ? null : value;
    }

    /// <summary>The value of a key that must be there; its absence is noted.</summary>
    public FileNode? Need(string key, string expected)
    {
        FileNode? value = Find(key);
        FileEntry? empty = node?.Entries.FirstOrDefault(e => e.Key.Text == key);
        if (value is null && empty is not null)
        {
            faults.Add(empty.Key.At, $"'{key}' has no value; expected {expected}");
        }
        else if (value is null && node is not null)
        {
            faults.Add(At, $"{what} lacks the key '{key}': {expected}");
        }

        return value;
    }

    /// <summary>A map under a key, or null.</summary>
    public FileMap? Map(string key, string described) =>
        Find(key) is FileNode value ? new FileMap(value, described, faults) : null;

    /// <summary>Reads a list of maps; a missing list is empty, and noted where it is <paramref name="needed"/>.</summary>
    public IReadOnlyList<T> Each<T>(string key, string described, Func<FileMap, T> read, bool needed = true)
    {
        FileNode? value = needed ? Need(key, $"a list, each entry {described}") : Find(key);
        var entries = new List<T>();
        foreach (FileNode item in Items(value, described))
        {
            var map = new FileMap(item, described, faults);
            entries.Add(read(map));
            map.Close();
        }

        if (needed && value is ListNode { Items.Count: 0 })
        {
            faults.Add(value.At, $"'{key}' is an empty list; expected at least one entry, {described}");
        }

        return entries;
    }

    /// <summary>What stands under a key as one entry or as a list of several; nothing where the key is missing, which is noted
    /// where it is <paramref name="needed"/>.</summary>
    public IReadOnlyList<FileNode> OneOrMore(string key, string described, bool needed = false)
    {
        FileNode? value = needed ? Need(key, described) : Find(key);
        if (needed && value is ListNode { Items.Count: 0 })
        {
            faults.Add(value.At, $"'{key}' is an empty list; expected {described}");
        }

        return value switch
        {
            null or UnreadableNode => [],
            ListNode list => list.Items,
            _ => [value],
        };
    }

    /// <summary>All keys with values where the keys are the practical's own words.</summary>
    public IReadOnlyList<FileEntry> Pairs()
    {
        IReadOnlyList<FileEntry> all = node?.Entries ?? [];
        asked.AddRange(all.Select(e => e.Key.Text));
        return all;
    }

    /// <summary>The only entry of a map that names its kind by its key, or null where it is not of a known kind.</summary>
    public FileEntry? Single(IEnumerable<string> kinds)
    {
        IReadOnlyList<FileEntry> all = Pairs();
        if (all.Count != 1 && node is not null)
        {
            faults.Add(At, $"{what} has one key, which names its kind: {string.Join(", ", kinds)}; here are {all.Count}");
        }

        if (all.Count == 1 && !kinds.Contains(all[0].Key.Text))
        {
            faults.Add(all[0].Key.At, $"'{all[0].Key.Text}' is no kind of {Bare(what)}; {NearestWord.Choice(all[0].Key.Text, kinds)}");
            return null;
        }

        return all.Count == 1 ? all[0] : null;
    }

    /// <summary>Notes every key that was never asked for.</summary>
    public void Close()
    {
        foreach (FileEntry entry in (node?.Entries ?? []).Where(e => !asked.Contains(e.Key.Text)))
        {
            // In { } a comma ends a text; what follows it then looks like a key without a value.
            string advice = entry.Value is ScalarNode { IsNothing: true }
                ? "in { } and [ ] a text with a comma needs quotes"
                : NearestWord.Choice(entry.Key.Text, asked.Distinct());
            faults.AddHarmless(entry.Key.At, $"'{Short(entry.Key.Text)}' is no key of {what}; {advice}");
        }
    }

    private IReadOnlyList<FileNode> Items(FileNode? value, string described)
    {
        if (value is not (null or ListNode or UnreadableNode))
        {
            faults.Add(value.At, $"{Said(value)}, where a list was expected, each entry {described}");
        }

        return (value as ListNode)?.Items ?? [];
    }

    private static string Said(FileNode node) => node switch
    {
        ScalarNode { IsNothing: true } => "nothing stands here",
        ScalarNode scalar => $"'{Short(scalar.Text)}' stands here",
        ListNode => "a list stands here",
        _ => "keys with values stand here",
    };

    private static string Short(string text) => text.Length <= 40 ? text : text[..40] + "...";

    private static string Bare(string described) => described[(described.IndexOf(' ', StringComparison.Ordinal) + 1)..];
}
