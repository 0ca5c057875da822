using System.Globalization;

namespace Calx.Practicals.Definition.Source;

/// <summary>Finds the line whose indentation fits none of those above it, once a file has turned out to be no YAML: the parser's own words
/// do not tell it.</summary>
internal static class Indentation
{
    /// <summary>The parser stumbles on the line or just behind it.</summary>
    private const int Before = 1;

    /// <summary>Where an indentation is wrong near a line, and how it should be; null where all of them fit.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="near">The line, from 1, at which the parser gave up.</param>
    public static (FilePosition At, string Reason)? At(string text, int near)
    {
        string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        for (int line = Math.Max(2, near - Before); line <= Math.Min(near, lines.Length); line++)
        {
            if (WrongAt(lines, line - 1) is (int indented, int expected))
            {
                return (new FilePosition(line, indented + 1), string.Create(
                    CultureInfo.InvariantCulture,
                    $"this line is indented by {Spaces(indented)}, which fits no line above it; keys of one entry begin below each other, here after {Spaces(expected)}"));
            }
        }

        return null;
    }

    private static (int Indented, int Expected)? WrongAt(string[] lines, int at)
    {
        if (!IsKey(lines[at]))
        {
            return null;
        }

        // Upwards, the places at which entries that are still open have their keys: each further to the left than the one before.
        int indented = Indent(lines[at]), open = int.MaxValue;
        var keys = new List<int>();
        for (int line = at - 1; line >= 0 && open > 0; line--)
        {
            if (IsKey(lines[line]) || IsItem(lines[line]))
            {
                int column = KeyColumn(lines[line]);
                if (column < open)
                {
                    // A line that only begins what is below it may have keys further to the right.
                    if (line == at - 1 && IsBeginning(lines[line]) && indented > column)
                    {
                        return null;
                    }

                    keys.Add(column);
                    open = IsItem(lines[line]) ? Indent(lines[line]) : column;
                }
            }
            else if (lines[line].Trim() is { Length: > 0 } other && other[0] != '#' && Indent(lines[line]) <= Math.Min(open, indented))
            {
                // A text over several lines: what belongs to what cannot be told by the first column.
                return null;
            }
        }

        return keys.Count == 0 || keys.Contains(indented) ? null : (indented, keys.MinBy(k => Math.Abs(k - indented)));
    }

    /// <summary>A word and a colon.</summary>
    private static bool IsKey(string line)
    {
        string text = line.TrimStart(' ');
        int colon = text.IndexOf(':', StringComparison.Ordinal);
        return colon > 0 && text.AsSpan(0, colon).IndexOfAnyExcept(Word) < 0 && (colon == text.Length - 1 || text[colon + 1] == ' ');
    }

    private static bool IsItem(string line) => line.TrimStart(' ').StartsWith("- ", StringComparison.Ordinal);

    private static bool IsBeginning(string line) => line.TrimEnd().EndsWith(':');

    private static int Indent(string line) => line.Length - line.TrimStart(' ').Length;

    /// <summary>Where the keys of an entry begin: behind its dash, if it has one.</summary>
    private static int KeyColumn(string line) => IsItem(line) ? line.IndexOf('-', StringComparison.Ordinal) + 1 + Indent(line[(line.IndexOf('-', StringComparison.Ordinal) + 1)..]) : Indent(line);

    private static string Spaces(int count) => count switch
    {
        0 => "no space",
        1 => "1 space",
        _ => string.Create(CultureInfo.InvariantCulture, $"{count} spaces"),
    };

    private static readonly System.Buffers.SearchValues<char> Word =
        System.Buffers.SearchValues.Create("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-");
}
