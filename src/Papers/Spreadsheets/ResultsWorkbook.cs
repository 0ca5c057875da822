using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Calx.Papers.Spreadsheets;

/// <summary>
/// A workbook for a class's results (Office Open XML, ECMA-376): a table that an analysis reads back, with the answers live beside the
/// readings. Headings and formulas are locked without a password.
/// </summary>
public sealed class ResultsWorkbook
{
    private const double UsualPoints = 11;
    private const double LargePoints = 18;
    private readonly ResultsLesson lesson;

    private ResultsWorkbook(ResultsLesson lesson) => this.lesson = lesson;

    /// <summary>What its file is called.</summary>
    public string Id { get; } = "class-results";

    /// <summary>Makes the workbook of a lesson.</summary>
    /// <param name="setting">The lesson.</param>
    public static ResultsWorkbook Of(PaperSetting setting)
    {
        ArgumentNullException.ThrowIfNull(setting);
        return new ResultsWorkbook(new ResultsLesson(setting));
    }

    /// <summary>Writes it.</summary>
    /// <returns>The bytes of an XLSX file; the same for the same lesson.</returns>
    public byte[] Bytes()
    {
        PaperSetting setting = lesson.Setting;
        RunningHeads heads = setting.Heads(lesson.Texts.Kind);
        using var bytes = new MemoryStream();
        using (var file = SpreadsheetDocument.Create(bytes, SpreadsheetDocumentType.Workbook))
        {
            WorkbookPart book = file.AddWorkbookPart();
            var looks = new LookTable(setting.Look.IsLarge ? LargePoints : UsualPoints);
            SheetDraft[] drafts =
                [ClassResultsSheet.Of(lesson, looks), OneGroupSheet.Of(lesson, looks), ConstantsSheet.Of(lesson, looks), AboutSheet.Of(lesson, looks)];
            var sheets = new Sheets();
            for (int i = 0; i < drafts.Length; i++)
            {
                string id = FormattableString.Invariant($"sheet{i + 1}");
                book.AddNewPart<WorksheetPart>(id).Worksheet = drafts[i].Worksheet(new SheetPrint(setting.Look.Size, heads, setting.Language));
                sheets.Append(new Sheet { Name = drafts[i].Name, SheetId = (uint)i + 1, Id = id });
            }

            book.AddNewPart<WorkbookStylesPart>("styles").Stylesheet = looks.Stylesheet();
            // Spreadsheets work the formulas out anew when they open the file, whatever values are kept in it.
            book.Workbook = new Workbook(
                new BookViews(new WorkbookView { ActiveTab = 0 }), sheets, Names(drafts), new CalculationProperties { FullCalculationOnLoad = true });
            FileProperties.Write(file.AddCoreFilePropertiesPart(), setting.Practical.Title, heads.Foot, setting.Language);
            PartIds.Fix(file, _ => true);
        }

        return FixedZip.Of(bytes.ToArray());
    }

    private DefinedNames Names(SheetDraft[] drafts)
    {
        var names = new DefinedNames();
        for (int i = 0; i < drafts.Length; i++)
        {
            if (drafts[i].HeadingRow > 0)
            {
                names.Append(new DefinedName(FormattableString.Invariant($"'{drafts[i].Name}'!${drafts[i].HeadingRow}:${drafts[i].HeadingRow}"))
                {
                    Name = "_xlnm.Print_Titles", LocalSheetId = (uint)i,
                });
            }
        }

        names.Append(ConstantsSheet.Names(lesson).Select(n => new DefinedName(n.Cell) { Name = n.Name }));
        return names;
    }
}
