using System.Globalization;
using System.Xml;
using Calx.Papers.Texts;
using Calx.Practicals.Readings;

namespace Calx.Papers.Tables;

/// <summary>Reads one sheet of a workbook from front to back; memory grows with its filled cells only.</summary>
internal sealed class WorkbookSheet(
    string name, WorkbookStyles styles, List<string> sharedTexts, bool from1904, TableLimits limits, int mostRows, TableTexts texts)
{
    private readonly List<(int Number, List<TableCell> Cells)> rows = [];
    private readonly List<MergedCells> merged = [];
    private int row;
    private int column;
    private int hiddenRows;
    private int withoutValue;

    public string Name { get; } = name;

    /// <summary>The fault of the file, or null.</summary>
    public TableFile.Fault? Fault { get; private set; }

    public int FilledRows => rows.Count;

    /// <summary>What a person should know of the sheet.</summary>
    public IEnumerable<string> Notes
    {
        get
        {
            if (hiddenRows > 0)
                yield return hiddenRows == 1 ? texts.OneHiddenRow(Name) : texts.HiddenRows(Name, InDigits(hiddenRows));
            if (withoutValue > 0)
                yield return withoutValue == 1 ? texts.OneFormula(Name) : texts.Formulas(Name, InDigits(withoutValue));
        }
    }

    /// <summary>Reads the sheet.</summary>
    public void Read(XmlReader reader)
    {
        while (Fault is null && reader.Read())
        {
            if (reader.NodeType != XmlNodeType.Element)
                continue;
            if (reader.LocalName == "row")
                StartRow(reader);
            else if (reader.LocalName == "c")
                TakeCell(reader);
            else if (reader.LocalName == "mergeCell" && MergedCells.Parse(reader.GetAttribute("ref")) is MergedCells merge)
                merged.Add(merge);
        }
    }

    /// <summary>The cells, with the text of cells merged over several rows in each of them: a group written once for
    /// all of its trials.</summary>
    public CellTable Table()
    {
        foreach (MergedCells merge in merged)
            merge.FillDown(rows);
        return new CellTable(Name, [.. rows.Select(r => new CellRow(r.Number, r.Cells))]);
    }

    private void StartRow(XmlReader reader)
    {
        int number = int.TryParse(reader.GetAttribute("r"), NumberStyles.None, CultureInfo.InvariantCulture, out int written) ? written : row + 1;
        if (number <= row)
            throw new InvalidDataException("Rows are out of order.");
        (row, column) = (number, 0);
        hiddenRows += reader.GetAttribute("hidden") is "1" or "true" ? 1 : 0;
    }

    private void TakeCell(XmlReader reader)
    {
        int number = CellReference.Column(reader.GetAttribute("r")) ?? column + 1;
        if (number <= column || row == 0)
            throw new InvalidDataException("Cells are out of order.");
        column = number;
        string? type = reader.GetAttribute("t");
        NumberFormat format = styles.Of(
            int.TryParse(reader.GetAttribute("s"), NumberStyles.None, CultureInfo.InvariantCulture, out int style) ? style : 0);
        (string? value, string? formula, string? inline) = Content(reader);
        bool isNumber = type is null or "n" && value is not null;
        string text = inline ?? Text(type, value, formula, format);
        if (!string.IsNullOrWhiteSpace(text))
            Keep(new TableCell(column, text, !isNumber || format.ShowsDecimals));
    }

    private static (string? Value, string? Formula, string? Inline) Content(XmlReader reader)
    {
        string? value = null;
        string? formula = null;
        string? inline = null;
        if (reader.IsEmptyElement)
            return (null, null, null);
        int depth = reader.Depth;
        reader.Read();
        while (reader.Depth > depth)
        {
            if (reader.NodeType != XmlNodeType.Element)
            {
                reader.Read();
            }
            else if (reader.LocalName == "is")
            {
                inline = WorkbookXml.RichText(reader);
                reader.Read();
            }
            else if (reader.LocalName == "v")
            {
                value = reader.ReadElementContentAsString();
            }
            else if (reader.LocalName == "f")
            {
                formula = reader.ReadElementContentAsString();
            }
            else
            {
                reader.Skip();
            }
        }
        return (value, formula, inline);
    }

    private string Text(string? type, string? value, string? formula, NumberFormat format)
    {
        if (string.IsNullOrEmpty(value))
        {
            // A formula whose value is an empty text has one: many a row says nothing until its readings are there.
            withoutValue += formula is null || (type == "str" && value is not null) ? 0 : 1;
            return formula is null || type == "str" ? "" : "=" + formula;
        }
        return type switch
        {
            "s" => int.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out int at) && at < sharedTexts.Count
                ? sharedTexts[at]
                : throw new InvalidDataException("A shared text is missing."),
            "b" => value == "1" ? "TRUE" : "FALSE",
            null or "n" => format.Show(value, from1904),
            _ => value,
        };
    }

    private void Keep(TableCell cell)
    {
        if (cell.Column > limits.MostColumns || cell.Text.Length > limits.LongestCell)
        {
            string cellName = new CellPosition("", row, cell.Column).ToString();
            Fault = new TableFile.Fault(TableFaultKind.TooLarge, cell.Column > limits.MostColumns
                ? texts.SheetTooWide(Name, cellName, InDigits(limits.MostColumns)) : texts.SheetLongCell(Name, cellName, InDigits(limits.LongestCell)));
            return;
        }
        if (rows.Count == 0 || rows[^1].Number != row)
            rows.Add((row, []));
        rows[^1].Cells.Add(cell);
        if (rows.Count > mostRows)
            Fault = new TableFile.Fault(TableFaultKind.TooLarge, texts.TooManyRows(InDigits(limits.MostRows)));
    }

    private static string InDigits(int number) => number.ToString(CultureInfo.InvariantCulture);
}
