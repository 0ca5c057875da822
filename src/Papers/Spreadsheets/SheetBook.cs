using Calx.Papers.Documents;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Calx.Papers.Spreadsheets;

/// <summary>Puts drawn-up sheets together to a workbook.</summary>
internal static class SheetBook
{
    /// <summary>Writes it.</summary>
    /// <param name="drafts">Its sheets in order.</param>
    /// <param name="looks">The looks that their cells have.</param>
    /// <param name="title">What it is called.</param>
    /// <param name="print">How its sheets are printed.</param>
    /// <param name="names">Names that formulas use, and the cells that they stand for.</param>
    /// <returns>The bytes of an XLSX file; the same for the same sheets.</returns>
    public static byte[] Of(IReadOnlyList<SheetDraft> drafts, LookTable looks, string title, SheetPrint print, params IEnumerable<(string Name, string Cell)> names)
    {
        using var bytes = new MemoryStream();
        using (var file = SpreadsheetDocument.Create(bytes, SpreadsheetDocumentType.Workbook))
        {
            WorkbookPart book = file.AddWorkbookPart();
            var sheets = new Sheets();
            for (int i = 0; i < drafts.Count; i++)
            {
                string id = FormattableString.Invariant($"sheet{i + 1}");
                book.AddNewPart<WorksheetPart>(id).Worksheet = drafts[i].Worksheet(print);
                sheets.Append(new Sheet { Name = drafts[i].Name, SheetId = (uint)i + 1, Id = id });
            }

            book.AddNewPart<WorkbookStylesPart>("styles").Stylesheet = looks.Stylesheet();
            DefinedName[] defined = [.. Printed(drafts), .. names.Select(n => new DefinedName(n.Cell) { Name = n.Name })];
            book.Workbook = new Workbook(new BookViews(new WorkbookView { ActiveTab = 0 }), sheets);
            if (defined.Length > 0)
            {
                book.Workbook.Append(new DefinedNames(defined));
            }

            // Spreadsheets work the formulas out anew when they open the file, whatever values are kept in it.
            book.Workbook.Append(new CalculationProperties { FullCalculationOnLoad = true });
            FileProperties.Write(file.AddCoreFilePropertiesPart(), title, print.Heads.Foot, print.Language);
            PartIds.Fix(file, _ => true);
        }

        return FixedZip.Of(bytes.ToArray());
    }

    /// <summary>Headings stand on every page; a filter has a name that spreadsheets expect of one.</summary>
    private static IEnumerable<DefinedName> Printed(IReadOnlyList<SheetDraft> drafts)
    {
        for (int i = 0; i < drafts.Count; i++)
        {
            if (drafts[i].Filtered is string range)
            {
                yield return new DefinedName($"'{drafts[i].Name}'!{range}") { Name = "_xlnm._FilterDatabase", LocalSheetId = (uint)i, Hidden = true };
            }

            if (drafts[i].HeadingRow > 0)
            {
                yield return new DefinedName(FormattableString.Invariant($"'{drafts[i].Name}'!${drafts[i].HeadingRow}:${drafts[i].HeadingRow}"))
                {
                    Name = "_xlnm.Print_Titles", LocalSheetId = (uint)i,
                };
            }
        }
    }
}
