namespace Calx.Practicals.Definition.Source;

/// <summary>A list or map whose end has not been read yet.</summary>
internal sealed class OpenNode(bool isMap, FilePosition at)
{
    private readonly List<FileNode> nodes = [];

    /// <summary>Where it starts.</summary>
    public FilePosition At { get; } = at;

    /// <summary>How many entries it has so far.</summary>
    public int Count => isMap ? (nodes.Count + 1) / 2 : nodes.Count;

    /// <summary>Adds an item of a list; of a map the keys and values by turns.</summary>
    public void Add(FileNode node) => nodes.Add(node);

    /// <summary>The whole node; a key that stands twice is reported and its first value kept.</summary>
    public FileNode Close(FaultList faults) => isMap ? new MapNode(Entries(faults), At) : new ListNode(nodes, At);

    private List<FileEntry> Entries(FaultList faults)
    {
        var entries = new List<FileEntry>();
        var seen = new Dictionary<string, FilePosition>(StringComparer.Ordinal);
        for (int i = 0; i + 1 < nodes.Count; i += 2)
        {
            if (nodes[i] is not ScalarNode key)
            {
                faults.Add(nodes[i].At, "a key is one word, not a list or a map");
            }
            else if (nodes[i + 1] is ScalarNode { IsNothing: true } && entries.Count > 0 && DecimalComma.Joined(entries[^1].Value, key) is ScalarNode meant)
            {
                faults.Add(meant.At, DecimalComma.Advice(meant));
                entries[^1] = entries[^1] with { Value = meant };
            }
            else if (seen.TryAdd(key.Text, key.At))
            {
                entries.Add(new FileEntry(key, nodes[i + 1]));
            }
            else
            {
                faults.Add(key.At, $"the key '{key.Text}' stands twice; it is already on line {seen[key.Text].Line}");
            }
        }

        return entries;
    }
}
