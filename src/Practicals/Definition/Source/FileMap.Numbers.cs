namespace Calx.Practicals.Definition.Source;

/// <content>Numbers.</content>
internal sealed partial class FileMap
{
    /// <summary>A number that must be there; 0 stands in for a wrong one.</summary>
    public double Number(string key, NumberRange range) =>
        Need(key, range.Words) is FileNode value ? NumberOf(value, range) ?? 0 : 0;

    /// <summary>A number that may be missing.</summary>
    public double? OptionalNumber(string key, NumberRange range) =>
        Find(key) is FileNode value ? NumberOf(value, range) : null;

    /// <summary>A whole number from <paramref name="least"/> up to 1000 that must be there.</summary>
    public int Whole(string key, int least) =>
        Need(key, $"a whole number from {least}") is FileNode value ? WholeOf(value, least) : least;

    /// <summary>A whole number that is <paramref name="least"/> where the key is missing.</summary>
    public int OptionalWhole(string key, int least) => Find(key) is FileNode value ? WholeOf(value, least) : least;

    /// <summary>The whole number in a node; <paramref name="least"/> stands in for a wrong one.</summary>
    public int WholeOf(FileNode value, int least)
    {
        var whole = new NumberRange(
            $"a whole number from {least} to 1000", x => x >= least && x <= 1000 && Math.Floor(x) == x);
        return NumberOf(value, whole) is double number ? (int)number : least;
    }

    /// <summary>The number in a node, or null where there is none of that range, which is noted.</summary>
    public double? NumberOf(FileNode value, NumberRange range)
    {
        string reason = Said(value);
        double? number = value is ScalarNode scalar ? FileNumber.Read(scalar, out reason) : null;
        if (number is double read && !range.Holds(read))
        {
            (number, reason) = (null, ((ScalarNode)value).Text + " stands here");
        }

        if (number is null && value is not UnreadableNode)
        {
            faults.Add(value.At, $"{reason}; expected {range.Words}");
        }

        return number;
    }

    /// <summary>As many numbers as <paramref name="names"/> under a key, or null where there are not, which is noted.</summary>
    public double[]? Numbers(FileNode value, IReadOnlyList<string> names)
    {
        string expected = $"[{string.Join(", ", names)}]";
        if (value is not ListNode { Items: var items } || items.Count != names.Count)
        {
            if (value is not UnreadableNode)
            {
                string said = value is ListNode list ? $"a list of {list.Items.Count} stands here" : Said(value);
                faults.Add(value.At, $"{said}; expected {expected}{Commas(value)}");
            }

            return null;
        }

        double?[] read = [.. items.Select(item => NumberOf(item, NumberRange.Any))];
        return read.Any(x => x is null) ? null : [.. read.Select(x => x!.Value)];
    }

    private static string Commas(FileNode value)
    {
        IReadOnlyList<FileNode> items = value is ListNode list ? list.Items : [];
        IReadOnlyList<FileNode> joined = DecimalComma.Joined(items);
        return joined.Count == items.Count ? "" : $". Where a comma is a decimal one, write a full stop: [{string.Join(", ", joined.Select(n => n is ScalarNode scalar ? scalar.Text : "..."))}]";
    }
}
