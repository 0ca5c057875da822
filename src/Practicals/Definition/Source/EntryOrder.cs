using Calx.Measurement.Expressions;
using Calx.Measurement.Numbers;

namespace Calx.Practicals.Definition.Source;

/// <summary>
/// The entries of a list with formulas, of which each may use those above it: looked over before they are read, so that one that comes too
/// late, and two that rest on each other, are told as such and not as unknown.
/// </summary>
internal sealed class EntryOrder
{
    private readonly Dictionary<string, Entry> entries = new(StringComparer.Ordinal);

    /// <summary>Looks over what stands under a key; what cannot be read there is told by whoever reads it.</summary>
    public EntryOrder(IReadOnlyList<FileNode> list)
    {
        foreach (MapNode map in list.OfType<MapNode>())
        {
            if (Text(map, "id") is ScalarNode id)
            {
                Parsed<Expression>? formula = Text(map, "formula") is ScalarNode written ? Expression.Parse(written.Text) : null;
                entries.TryAdd(id.Text, new Entry(map.At.Line, formula is { Succeeded: true } read ? [.. read.Value.Names] : []));
            }
        }
    }

    /// <summary>Why an entry cannot be used by the one on a line, or null where no entry has that id.</summary>
    /// <param name="kind">What they are: answer.</param>
    /// <param name="id">The id that is used.</param>
    /// <param name="line">The line of the entry that uses it.</param>
    public string? WhyNotYet(string kind, string id, int line)
    {
        if (!entries.TryGetValue(id, out Entry? used))
        {
            return null;
        }

        string? user = entries.Where(e => e.Value.Line == line).Select(e => e.Key).FirstOrDefault();
        return user == id ? $"the {kind} '{id}' cannot be worked out from itself; write a formula over readings and what stands above"
            : user is not null && RestsOn(id, user, []) ? FormattableString.Invariant($"'{user}' and '{id}' (line {used.Line}) rest on each other, so neither can be worked out; let one of them follow from readings alone")
            : FormattableString.Invariant($"the {kind} '{id}' is worked out only further down, on line {used.Line}; put that one above this");
    }

    private bool RestsOn(string id, string on, HashSet<string> seen) =>
        seen.Add(id) && entries.TryGetValue(id, out Entry? entry) && (entry.Names.Contains(on) || entry.Names.Any(n => RestsOn(n, on, seen)));

    private static ScalarNode? Text(MapNode map, string key) => map.Entries.FirstOrDefault(e => e.Key.Text == key)?.Value as ScalarNode;

    private sealed record Entry(int Line, IReadOnlyList<string> Names);
}
