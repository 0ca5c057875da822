using System.Text.RegularExpressions;

namespace Calx.Practicals.Definition.Source;

/// <summary>In { } and [ ] a comma parts two entries, so that 2,5 is read as a 2 and a 5.</summary>
internal static partial class DecimalComma
{
    /// <summary>The number that two scalars were meant to be: whole numbers with nothing but a comma between them. Null where they are
    /// something else.</summary>
    public static ScalarNode? Joined(FileNode before, FileNode after) =>
        before is ScalarNode { Plain: true } whole && after is ScalarNode { Plain: true } part
        && whole.At.Line == part.At.Line && whole.At.Column + whole.Text.Length + 1 == part.At.Column
        && Whole().IsMatch(whole.Text) && Digits().IsMatch(part.Text)
            ? whole with { Text = $"{whole.Text}.{part.Text}" } : null;

    /// <summary>What is said of one.</summary>
    public static string Advice(ScalarNode meant) =>
        $"'{meant.Text.Replace('.', ',')}' has a decimal comma; write a full stop: {meant.Text}";

    /// <summary>A list with every such pair joined.</summary>
    public static IReadOnlyList<FileNode> Joined(IReadOnlyList<FileNode> items)
    {
        var joined = new List<FileNode>();
        for (int i = 0; i < items.Count; i++)
        {
            ScalarNode? meant = i + 1 < items.Count ? Joined(items[i], items[i + 1]) : null;
            joined.Add(meant ?? items[i]);
            i += meant is null ? 0 : 1;
        }

        return joined;
    }

    [GeneratedRegex(@"^-?[0-9]+\z")]
    private static partial Regex Whole();

    [GeneratedRegex(@"^[0-9]+\z")]
    private static partial Regex Digits();
}
