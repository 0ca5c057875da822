namespace Calx.Papers.SheetCheck;

/// <summary>
/// Reads a worksheet in plain text. Lines with tabs or upright strokes between their cells are a table; other lines that follow each other
/// without a blank are one paragraph, unless a line begins like a new one: a capital, a number, a stroke or a dot before an item.
/// </summary>
internal sealed class TextSheet
{
    private readonly List<SheetParagraph> paragraphs = [];
    private readonly List<SheetTable> tables = [];
    private readonly List<IReadOnlyList<SheetCell>> rows = [];
    private readonly List<SheetPlace.LineStart> starts = [];
    private string text = "";
    private bool isTooLong;

    /// <summary>The sheet, or null where it is longer than is read.</summary>
    public static Sheet? Read(string text)
    {
        if (text.Length > SheetLimits.MostCharacters)
        {
            return null;
        }

        var sheet = new TextSheet();
        string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        for (int i = 0; i < lines.Length && !sheet.isTooLong && sheet.paragraphs.Count <= SheetLimits.MostParagraphs; i++)
        {
            sheet.Line(lines[i], i + 1);
        }

        sheet.EndParagraph();
        sheet.EndTable();
        return sheet.isTooLong || sheet.paragraphs.Count > SheetLimits.MostParagraphs ? null : new Sheet(sheet.paragraphs, sheet.tables, []);
    }

    private void Line(string line, int number)
    {
        isTooLong |= text.Length + line.Length > SheetLimits.LongestParagraph;
        // Below a row a tab at the end is an empty cell to write in; elsewhere it is an indent or a slip.
        List<(int Start, string Text)> cells = line.Contains('|', StringComparison.Ordinal) || (rows.Count > 0 ? line : line.Trim()).Contains('\t', StringComparison.Ordinal) ? Cells(line) : [];
        if (cells.Count > 1)
        {
            EndParagraph();
            Row(cells, number);
            return;
        }

        EndTable();
        string trimmed = line.Trim();
        if (trimmed.Length == 0 || IsNew(trimmed))
        {
            EndParagraph();
        }

        if (trimmed.Length == 0)
        {
            return;
        }

        text += text.Length == 0 ? "" : "\n";
        starts.Add(new SheetPlace.LineStart(text.Length, number, line.Length - line.TrimStart().Length + 1));
        text += trimmed;
    }

    private static bool IsNew(string line) => char.IsUpper(line[0]) || char.IsDigit(line[0]) || line[0] is '-' or '*' or '•' or '·' or '#' or '(';

    private void EndParagraph()
    {
        if (text.Length > 0)
        {
            paragraphs.Add(new SheetParagraph(text, SheetPlace.Lines([.. starts]), IsHeading(text), InTable: false));
        }

        text = "";
        starts.Clear();
    }

    // A short line without an end of sentence: 'Safety', '## Results', 'METHOD:'.
    private static bool IsHeading(string text) =>
        text[0] == '#' || (text.Length <= 40 && !text.Contains('\n', StringComparison.Ordinal) && text.Split(' ').Length <= 4 && text.TrimEnd(':')[^1..] is [var last] && char.IsLetter(last) && char.IsUpper(text[0]));

    private void Row(List<(int Start, string Text)> cells, int line)
    {
        // The line of dashes under headings is no row.
        if (cells.All(c => c.Text.Length > 0 && c.Text.All(x => x is '-' or '=' or ':' or '+')))
        {
            return;
        }

        int row = rows.Count + 1;
        List<SheetCell> read = [];
        for (int i = 0; i < cells.Count; i++)
        {
            SheetPlace place = SheetPlace.Lines([new SheetPlace.LineStart(0, line, cells[i].Start + 1)]);
            read.Add(new SheetCell(row, i + 1, 1, cells[i].Text, place, IsContinued: false));
            if (cells[i].Text.Length > 0)
            {
                paragraphs.Add(new SheetParagraph(cells[i].Text, place, IsHeading: false, InTable: true));
            }
        }

        rows.Add(read);
    }

    private void EndTable()
    {
        if (rows.Count > 0)
        {
            tables.Add(new SheetTable(tables.Count + 1, [.. rows]));
        }

        rows.Clear();
    }

    private static List<(int Start, string Text)> Cells(string line)
    {
        char separator = line.Contains('|', StringComparison.Ordinal) ? '|' : '\t';
        int from = separator == '|' && line.TrimStart().StartsWith('|') ? line.IndexOf('|', StringComparison.Ordinal) + 1 : 0;
        int to = separator == '|' && from > 0 && line.TrimEnd().EndsWith('|') ? line.LastIndexOf('|') : line.Length;
        List<(int, string)> cells = [];
        int start = from;
        for (int i = from; i <= to && start <= to; i++)
        {
            if (i < to && line[i] != separator)
            {
                continue;
            }

            string part = line[start..i];
            cells.Add((start + part.Length - part.TrimStart().Length, part.Trim()));
            start = i + 1;
        }

        return line.TrimStart().Length == 0 ? [] : cells;
    }
}
