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

    private static string Padded(string cell, int width, bool toTheRight)
    {
        string space = new(' ', width - TextWidth.Of(cell));
        return toTheRight ? space + cell : cell + space;
    }
}
