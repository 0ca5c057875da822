using Calx.Practicals.Definition;
using Calx.Practicals.Definition.Source;

namespace Calx.Practicals.Checking;

/// <summary>Where something stands in a file, by the keys and places in lists that lead to it.</summary>
internal sealed class FilePlaces(FileNode root)
{
    /// <summary>The position of the deepest node of a path that is there.</summary>
    /// <param name="path">Keys (text) and places in lists (whole numbers from 0), from the root.</param>
    public FilePosition Of(params ReadOnlySpan<object> path)
    {
        FileNode at = root;
        foreach (object part in path)
        {
            FileNode? next = (at, part) switch
            {
                (MapNode map, string key) => map.Entries.FirstOrDefault(e => e.Key.Text == key)?.Value,
                (ListNode list, int place) when place < list.Items.Count => list.Items[place],
                _ => null,
            };
            if (next is null)
            {
                break;
            }

            at = next;
        }

        return at.At;
    }
}
