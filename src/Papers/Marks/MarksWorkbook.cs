using Calx.Papers.Spreadsheets;
using Calx.Papers.Texts;
using Calx.Practicals.Marking;

namespace Calx.Papers.Marks;

/// <summary>
/// The marks of a class as a workbook (Office Open XML, ECMA-376): a table with a row a student, every answer with what may lie behind it,
/// and what the class has in common. Nothing is locked: it is the teacher's own. What looks adjusted is not in it.
/// </summary>
public static class MarksWorkbook
{
    /// <summary>Writes it.</summary>
    /// <param name="marked">The class, marked; may be empty.</param>
    /// <param name="setting">Practical, class and date.</param>
    /// <returns>The bytes of an XLSX file; the same for the same class.</returns>
    public static byte[] Of(MarkedClass marked, MarksSetting setting)
    {
        ArgumentNullException.ThrowIfNull(marked);
        ArgumentNullException.ThrowIfNull(setting);
        var looks = new LookTable(setting.Look);
        return SheetBook.Of(
            [MarksSheet.Of(marked, setting, looks), AnswersSheet.Of(marked, setting, looks), ClassMarksSheet.Of(marked, setting, looks)],
            looks,
            setting.Practical.Title,
            new SheetPrint(setting.Look.Size, setting.Heads(new MarksTexts(setting.Language).Kind), setting.Language));
    }
}
