using Calx.Measurement.Numbers;

namespace Calx.Records.Archive;

/// <summary>
/// A row of a CSV file (RFC 4180). A cell that a spreadsheet would take for a formula is made text by an apostrophe before it;
/// a number stays one, whatever its sign.
/// </summary>
internal static class CsvLine
{
    /// <summary>The wide forms too, which some spreadsheets read alike.</summary>
    private const string FormulaBegins = "=+-@＝＋－＠";

    public static string Of(IEnumerable<string?> cells) => string.Join(',', cells.Select(c => Quoted(Harmless(c ?? "")))) + "\r\n";

    private static string Harmless(string text)
    {
        ReadOnlySpan<char> seen = text.AsSpan().TrimStart();
        bool begins = seen.Length > 0 && (FormulaBegins.Contains(seen[0], StringComparison.Ordinal) || text[0] is '\t' or '\r' or '\n');
        return begins && !WrittenNumber.TryParse(text, out _) ? "'" + text : text;
    }

    private static string Quoted(string text) => text.AsSpan().IndexOfAny(",\"\r\n") < 0
        ? text
        : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
