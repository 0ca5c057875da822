using System.Globalization;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Calx.Papers.Tests.Spreadsheets;

/// <summary>Finds its way about a workbook.</summary>
internal static class Sheets
{
    private const int HeadingRow = 5;

    public static SpreadsheetDocument Open(byte[] bytes) => SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);

    public static Worksheet Named(SpreadsheetDocument file, string name)
    {
        Sheet sheet = file.WorkbookPart!.Workbook!.Descendants<Sheet>().Single(s => s.Name == name);
        return ((WorksheetPart)file.WorkbookPart.GetPartById(sheet.Id!)).Worksheet!;
    }

    public static Cell Cell(Worksheet sheet, string column, int row) =>
        sheet.Descendants<Cell>().Single(c => c.CellReference == string.Create(CultureInfo.InvariantCulture, $"{column}{row}"));

    /// <summary>The text of a cell, shared with others or its own.</summary>
    public static string TextOf(SpreadsheetDocument file, Cell cell) => cell.DataType?.Value == CellValues.SharedString
        ? file.WorkbookPart!.SharedStringTablePart!.SharedStringTable!.Elements<SharedStringItem>()
            .ElementAt(int.Parse(cell.CellValue!.Text, CultureInfo.InvariantCulture)).InnerText
        : cell.InlineString?.InnerText ?? cell.CellValue?.Text ?? "";

    /// <summary>Column of a heading of the class's table, written with spaces of the usual kind.</summary>
    public static string ColumnOf(Worksheet sheet, string heading) => sheet.Descendants<Row>().Single(r => r.RowIndex! == HeadingRow).Elements<Cell>()
        .Single(c => Plain(c.InnerText) == heading).CellReference!.Value!.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');

    /// <summary>Row whose first cell is a text.</summary>
    public static int RowOf(Worksheet sheet, string first) => (int)sheet.Descendants<Row>()
        .Single(r => r.Elements<Cell>().FirstOrDefault() is Cell cell && Plain(cell.InnerText) == first).RowIndex!.Value;

    public static string Plain(string text) => text.Replace('\u00a0', ' ');
}
