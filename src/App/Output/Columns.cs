namespace Calx.App.Output;

/// <summary>A table for the terminal: texts in columns two spaces apart, figures to the right.</summary>
internal sealed class Columns
{
    private readonly bool[] toTheRight;
    private readonly List<string[]> rows = [];

    /// <summary>Takes one letter a column: <c>l</c> for words, <c>r</c> for figures.</summary>
    public Columns(string sides) => toTheRight = sides.Select(side => side == 'r').ToArray();

    /// <summary>Adds a row; it has as many cells as there are columns.</summary>
    public void Add(params string[] cells)
    {
        if (cells.Length != toTheRight.Length)
        {
            throw new ArgumentException($"Expected {toTheRight.Length} cells.", nameof(cells));
        }

        rows.Add(cells);
    }

    /// <summary>Adds a heading whose long cells are broken at their spaces over as many rows as they need, ending on one
    /// line.</summary>
    /// <param name="widest">Places that a cell may take, if its words allow.</param>
    /// <param name="cells">One a column.</param>
    public void AddHeading(int widest, params string[] cells)
    {
        string[][] broken = [.. cells.Select(cell => Lines(cell, widest))];
        int height = broken.Max(lines => lines.Length);
        for (int line = 0; line < height; line++)
        {
            Add([.. broken.Select(lines => line < height - lines.Length ? "" : lines[line - height + lines.Length])]);
        }
    }

    /// <summary>Prints the rows, each after <paramref name="indent"/>.</summary>
    public void Write(TextWriter output, string indent = "  ")
    {
        int[] widths = new int[toTheRight.Length];
        foreach (string[] row in rows)
        {
            for (int i = 0; i < row.Length; i++)
            {
                widths[i] = Math.Max(widths[i], TextWidth.Of(row[i]));
            }
        }

        foreach (string[] row in rows)
        {
            output.WriteLine((indent + string.Join("  ", row.Select((cell, i) => Padded(cell, widths[i], toTheRight[i]))))
                .TrimEnd());
        }
    }

    private static string[] Lines(string text, int widest)
    {
        var lines = new List<string> { "" };
        foreach (string part in text.Replace(" / ", "\u00A0/\u00A0", StringComparison.Ordinal).Split(' '))
        {
            string word = part.Replace('\u00A0', ' ');   // a unit stays with the word before it
            string longer = lines[^1].Length == 0 ? word : $"{lines[^1]} {word}";
            if (lines[^1].Length == 0 || TextWidth.Of(longer) <= widest)
            {
                lines[^1] = longer;
            }
            else
            {
                lines.Add(word);
            }
        }

        return [.. lines];
    }

    private static string Padded(string cell, int width, bool toTheRight)
    {
        string space = new(' ', width - TextWidth.Of(cell));
        return toTheRight ? space + cell : cell + space;
    }
}
