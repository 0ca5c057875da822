using System.Globalization;
using Calx.Papers.Texts;
using Calx.Practicals.Readings;
using CsvHelper;
using CsvHelper.Configuration;

namespace Calx.Papers.Tables;

/// <summary>Reads a text of separated cells. Rows are counted as a spreadsheet counts them, blank ones included.</summary>
internal static class CsvText
{
    /// <summary>Reads the one sheet of a text.</summary>
    public static TableFile Read(byte[] bytes, TableLimits limits, TableTexts texts)
    {
        if (TextDecoding.Decode(bytes) is not (string text, string encoding))
            return new TableFile.Fault(TableFaultKind.Binary, texts.NoTable);
        if (string.IsNullOrWhiteSpace(text))
            return new TableFile.Fault(TableFaultKind.Empty, texts.Blank);
        if (IsMarkup(text))
        {
            return new TableFile.Fault(TableFaultKind.OtherFormat, texts.Markup);
        }
        char separator = Separators.Declared(text) ?? Separators.Of(text);
        return Read(text, separator, encoding, limits, texts);
    }

    private static bool IsMarkup(string text)
    {
        ReadOnlySpan<char> start = text.AsSpan().TrimStart();
        return start is ['<', '!' or '?', ..] || start.StartsWith("<html", StringComparison.OrdinalIgnoreCase)
            || start.StartsWith("<table", StringComparison.OrdinalIgnoreCase);
    }

    private static TableFile Read(string text, char separator, string encoding, TableLimits limits, TableTexts texts)
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
            TableFile.Fault? fault = Limit(parser, rows.Count, limits, texts);
            if (fault is not null)
                return fault;
            List<TableCell> cells = Cells(parser);
            if (unclosed)
            {
                return new TableFile.Fault(TableFaultKind.Damaged, texts.UnclosedQuote(InDigits(parser.Row)));
            }
            bool declaration = parser.Row == 1 && Separators.Declared(text) is not null;
            if (cells.Count > 0 && !declaration)
                rows.Add(new CellRow(parser.Row, cells));
        }
        return new TableFile.Opened([new CellTable("", rows)], texts.TextFormat(encoding, Name(separator, texts)), []);
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

    private static TableFile.Fault? Limit(CsvParser parser, int rows, TableLimits limits, TableTexts texts)
    {
        if (rows >= limits.MostRows)
            return new TableFile.Fault(TableFaultKind.TooLarge, texts.TooManyRows(InDigits(limits.MostRows)));
        if (parser.Count > limits.MostColumns)
        {
            return new TableFile.Fault(TableFaultKind.TooLarge, texts.TooManyColumns(InDigits(parser.Row), InDigits(limits.MostColumns)));
        }
        for (int i = 0; i < parser.Count; i++)
        {
            if (parser[i].Length > limits.LongestCell)
            {
                return new TableFile.Fault(TableFaultKind.TooLarge, texts.LongCell(InDigits(parser.Row), InDigits(limits.LongestCell)));
            }
        }
        return null;
    }

    private static string InDigits(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Name(char separator, TableTexts texts) => separator switch
    {
        '\t' => texts.Tabs,
        ';' => texts.Semicolons,
        ',' => texts.Commas,
        _ => $"'{separator}'",
    };
}
