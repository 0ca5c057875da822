using Calx.Papers.Handouts;

namespace Calx.Papers.Spreadsheets;

/// <summary>
/// A workbook for a class's results (Office Open XML, ECMA-376): a table that an analysis reads back, with the answers live beside the
/// readings. Headings and formulas are locked without a password.
/// </summary>
public sealed class ResultsWorkbook
{
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
        var looks = new LookTable(setting.Look);
        return SheetBook.Of(
            [ClassResultsSheet.Of(lesson, looks), OneGroupSheet.Of(lesson, looks), ConstantsSheet.Of(lesson, looks), AboutSheet.Of(lesson, looks)],
            looks,
            setting.Practical.Title,
            new SheetPrint(setting.Look.Size, setting.Heads(lesson.Texts.Kind), setting.Language),
            ConstantsSheet.Names(lesson));
    }
}
