using System.Globalization;
using Calx.Practicals.Readings;
using CsvHelper;
using CsvHelper.Configuration;

namespace Calx.Papers.Tables;

/// <summary>Reads a text of separated cells. Rows are counted as a spreadsheet counts them, blank ones included.</summary>
internal static class CsvText
{
    /// <summary>Reads the one sheet of a text.</summary>
    public static TableFile Read(byte[] bytes, TableLimits limits)
    {
        if (TextDecoding.Decode(bytes) is not (string text, string encoding))
            return new TableFile.Fault(TableFaultKind.Binary, "not a text and not an XLSX workbook; save the table as CSV or XLSX");
        if (string.IsNullOrWhiteSpace(text))
            return new TableFile.Fault(TableFaultKind.Empty, "there is nothing in the file but blanks");
        if (IsMarkup(text))
        {
            return new TableFile.Fault(
                TableFaultKind.OtherFormat, "a web page or XML under the name of a table; open it in a spreadsheet and save it as XLSX");
        }
        char separator = Separators.Declared(text) ?? Separators.Of(text);
        return Read(text, separator, encoding, limits);
    }

    private static bool IsMarkup(string text)
    {
        ReadOnlySpan<char> start = text.AsSpan().TrimStart();
        return start is ['<', '!' or '?', ..] || start.StartsWith("<html", StringComparison.OrdinalIgnoreCase)
            || start.StartsWith("<table", StringComparison.OrdinalIgnoreCase);
    }

    private static TableFile Read(string text, char separator, string encoding, TableLimits limits)
    {
        bool unclosed = false;
        CsvConfiguration configuration = new(CultureInfo.InvariantCulture)
        {
            Delimiter = separator.ToString(),
            HasHeaderRecord = false,
            IgnoreBlankLines = false,
            // A quotation mark inside a cell is kept as it is; one that swallows the lines below it is told.
            BadDataFound = found => unclosed |= found.Field.AsSpan().IndexOfAny('\r', '\n') >= 0,
        };
        using StringReader reader = new(text);
        using CsvParser parser = new(reader, configuration);
        List<CellRow> rows = [];
        while (parser.Read())
        {
            TableFile.Fault? fault = Limit(parser, rows.Count, limits);
            if (fault is not null)
                return fault;
            List<TableCell> cells = Cells(parser);
            if (unclosed)
            {
                return new TableFile.Fault(TableFaultKind.Damaged, string.Create(
                    CultureInfo.InvariantCulture, $"row {parser.Row}: a quotation mark is opened and never closed"));
            }
            bool declaration = parser.Row == 1 && Separators.Declared(text) is not null;
            if (cells.Count > 0 && !declaration)
                rows.Add(new CellRow(parser.Row, cells));
        }
        return new TableFile.Opened([new CellTable("", rows)], $"text, {encoding}, separated by {Name(separator)}", []);
    }

    private static List<TableCell> Cells(CsvParser parser)
    {
        List<TableCell> cells = new(parser.Count);
        for (int i = 0; i < parser.Count; i++)
        {
            if (!string.IsNullOrWhiteSpace(parser[i]))
                cells.Add(new TableCell(i + 1, parser[i]));
        }
        return cells;
    }

    private static TableFile.Fault? Limit(CsvParser parser, int rows, TableLimits limits)
    {
        if (rows >= limits.MostRows)
            return new TableFile.Fault(TableFaultKind.TooLarge, $"more than {limits.MostRows} rows");
        if (parser.Count > limits.MostColumns)
        {
            return new TableFile.Fault(TableFaultKind.TooLarge, string.Create(
                CultureInfo.InvariantCulture, $"row {parser.Row} has more than {limits.MostColumns} columns"));
        }
        for (int i = 0; i < parser.Count; i++)
        {
            if (parser[i].Length > limits.LongestCell)
            {
                return new TableFile.Fault(TableFaultKind.TooLarge, string.Create(CultureInfo.InvariantCulture,
                    $"row {parser.Row} has a cell of more than {limits.LongestCell} characters; is a quotation mark not closed?"));
            }
        }
        return null;
    }

    private static string Name(char separator) => separator switch
    {
        '\t' => "tabs",
        ';' => "semicolons",
        ',' => "commas",
        _ => $"'{separator}'",
    };
}
