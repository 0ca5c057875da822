namespace Calx.Papers.Roster;

/// <summary>A file of a table for a school system.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Text">What is in it: RFC 4180, to be written as UTF-8.</param>
public sealed record RosterFile(string Name, string Text)
{
    /// <summary>Rows of cells. A line's end within a cell, which the convention does not allow, becomes a blank.</summary>
    internal static RosterFile Of(string name, params IEnumerable<IEnumerable<string>> rows) =>
        new(name, string.Concat(rows.Select(row => $"{string.Join(',', row.Select(Cell))}\r\n")));

    private static string Cell(string text)
    {
        string line = text.ReplaceLineEndings(" ");
        return line.AsSpan().IndexOfAny(",\"") < 0 ? line : $"\"{line.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
