using System.IO.Compression;
using System.Text;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Calx.Papers.Tests.Tables;

/// <summary>Workbooks made for the tests.</summary>
internal static class MadeWorkbook
{
    /// <summary>Style numbers of <see cref="Styles"/>.</summary>
    public const uint General = 0, TwoDecimals = 1, Grams = 2, Date = 3, Percent = 4, Accounting = 5, UpToThree = 6, Thousands = 7;

    public static byte[] Of(params (string Name, SheetStateValues? State, Row[] Rows)[] sheets) => Of(sheets, []);

    public static byte[] Of((string Name, SheetStateValues? State, Row[] Rows)[] sheets, string[] merges)
    {
        using MemoryStream stream = new();
        using (SpreadsheetDocument document = SpreadsheetDocument.Create(stream, SpreadsheetDocumentType.Workbook))
        {
            WorkbookPart workbook = document.AddWorkbookPart();
            workbook.Workbook = new Workbook(new Sheets());
            workbook.AddNewPart<WorkbookStylesPart>().Stylesheet = Styles();
            workbook.AddNewPart<SharedStringTablePart>().SharedStringTable = new SharedStringTable(
                new SharedStringItem(new Text("shared")),
                new SharedStringItem(new DocumentFormat.OpenXml.Spreadsheet.Run(new Text("Gr")), new DocumentFormat.OpenXml.Spreadsheet.Run(new Text("oup"))));
            uint id = 1;
            foreach ((string name, SheetStateValues? state, Row[] rows) in sheets)
            {
                WorksheetPart part = workbook.AddNewPart<WorksheetPart>();
                part.Worksheet = new Worksheet(new SheetData(rows));
                if (merges.Length > 0)
                    part.Worksheet.Append(new MergeCells(merges.Select(m => new MergeCell { Reference = m })));
                workbook.Workbook.Sheets!.Append(new Sheet { Name = name, SheetId = id++, Id = workbook.GetIdOfPart(part), State = state });
            }
        }
        return stream.ToArray();
    }

    public static Row Row(uint number, params Cell[] cells) => new(cells) { RowIndex = number };

    public static Cell Text(string reference, string text) => new()
    {
        CellReference = reference,
        DataType = CellValues.InlineString,
        InlineString = new InlineString(new Text(text)),
    };

    public static Cell Shared(string reference, int index) =>
        new() { CellReference = reference, DataType = CellValues.SharedString, CellValue = new CellValue(index) };

    public static Cell Number(string reference, string stored, uint style = General, string? formula = null) => new()
    {
        CellReference = reference,
        StyleIndex = style,
        CellFormula = formula is null ? null : new CellFormula(formula),
        CellValue = stored.Length == 0 ? null : new CellValue(stored),
    };

    public static Cell Typed(string reference, string stored, CellValues type) =>
        new() { CellReference = reference, DataType = type, CellValue = new CellValue(stored) };

    /// <summary>A copy of a workbook with one part written anew.</summary>
    public static byte[] With(byte[] workbook, string part, Action<Stream> write)
    {
        using MemoryStream stream = new();
        stream.Write(workbook);
        using (ZipArchive zip = new(stream, ZipArchiveMode.Update, true))
        {
            zip.GetEntry(part)?.Delete();
            using Stream entry = zip.CreateEntry(part, CompressionLevel.Optimal).Open();
            write(entry);
        }
        return stream.ToArray();
    }

    public static byte[] With(byte[] workbook, string part, string text) => With(workbook, part, s => s.Write(Encoding.UTF8.GetBytes(text)));

    private static Stylesheet Styles() => new(
        new NumberingFormats(
            Format(164, "0.00\" g\""), Format(165, "_-* #,##0.000_-;\\-* #,##0.000_-"), Format(166, "0.0##"), Format(167, "[Red]#,##0.00")),
        new Fonts(new Font()),
        new Fills(new Fill()),
        new Borders(new Border()),
        new CellFormats(new uint[] { 0, 2, 164, 14, 10, 165, 166, 167 }.Select(n => new CellFormat { NumberFormatId = n })));

    private static NumberingFormat Format(uint id, string code) => new() { NumberFormatId = id, FormatCode = code };
}
