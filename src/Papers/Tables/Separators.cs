using Calx.Practicals.Readings;

namespace Calx.Papers.Tables;

/// <summary>
/// Decides what separates the cells of a text: the separator under which most cells are numbers. Decimal commas in a
/// text with semicolons, semicolons in a remark and tabs then settle themselves; where numbers do not decide, the
/// separator that most lines have, in the order tab, semicolon, comma.
/// </summary>
internal static class Separators
{
    private const int LinesLookedAt = 300;

    private static readonly char[] Candidates = ['\t', ';', ','];

    /// <summary>The separator of a text.</summary>
    public static char Of(string text)
    {
        List<string> lines = Lines(text);
        char best = ',';
        (int Numbers, int Lines) bestScore = (0, 0);
        foreach (char candidate in Candidates)
        {
            (int Numbers, int Lines) score = Score(lines, candidate);
            if (score.Lines > 0 && score.CompareTo(bestScore) > 0)
                (best, bestScore) = (candidate, score);
        }
        return best;
    }

    /// <summary>The separator that a first line <c>sep=;</c> declares, as spreadsheets write it, or null.</summary>
    public static char? Declared(string text) =>
        text.Length > 4 && text.StartsWith("sep=", StringComparison.OrdinalIgnoreCase) && (text.Length == 5 || text[5] is '\r' or '\n')
            ? text[4]
            : null;

    private static (int Numbers, int Lines) Score(List<string> lines, char separator)
    {
        int numbers = 0;
        int with = 0;
        foreach (string line in lines)
        {
            List<string> cells = Cells(line, separator);
            numbers += cells.Count(IsNumber);
            with += cells.Count > 1 ? 1 : 0;
        }
        return (numbers, with);
    }

    private static bool IsNumber(string cell) =>
        NumberText.Read(cell, new NumberExpectation(mayBeNegative: true)) is NumberCell.Number;

    private static List<string> Lines(string text)
    {
        List<string> lines = [];
        using StringReader reader = new(text);
        for (string? line = reader.ReadLine(); line is not null && lines.Count < LinesLookedAt; line = reader.ReadLine())
        {
            if (!string.IsNullOrWhiteSpace(line))
                lines.Add(line.Length > 10_000 ? line[..10_000] : line);
        }
        return lines;
    }

    private static List<string> Cells(string line, char separator)
    {
        List<string> cells = [];
        int start = 0;
        bool quoted = false;
        for (int i = 0; i <= line.Length; i++)
        {
            if (i < line.Length && line[i] == '"')
                quoted = !quoted;
            if (i < line.Length && (line[i] != separator || quoted))
                continue;
            cells.Add(line[start..i].Trim('"', ' '));
            start = i + 1;
        }
        return cells;
    }
}
