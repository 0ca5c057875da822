namespace Calx.App.Output;

/// <summary>A row of a CSV file as RFC 4180 has it: a cell that holds a comma, a quotation mark or a line's end stands in
/// quotation marks.</summary>
internal static class CsvLine
{
    public static string Of(IEnumerable<string> cells) => string.Join(',', cells.Select(Cell)) + "\n";

    private static string Cell(string text) => text.AsSpan().IndexOfAny(",\"\r\n") < 0
        ? text
        : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
