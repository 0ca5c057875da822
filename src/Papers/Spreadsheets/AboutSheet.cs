using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Spreadsheets;

/// <summary>What the workbook is of, what is locked in it, and what it cannot do.</summary>
internal static class AboutSheet
{
    public static SheetDraft Of(ResultsLesson lesson, LookTable looks)
    {
        WorkbookTexts texts = lesson.Texts;
        Practical practical = lesson.Setting.Practical;
        var sheet = new SheetDraft(texts.AboutTab, looks);
        sheet.Wide(1, 26);
        sheet.Wide(2, 84);
        sheet.Band(1, 2, texts.AboutTitle, CellLook.Title);
        (string What, string Text)[] lines =
        [
            (texts.PracticalLead, practical.Title),
            (texts.VersionLead, texts.Version(practical.Id, Sentences.Count(practical.Version))),
            (texts.OccasionLead, string.Join(", ", new[] { lesson.Setting.Occasion.ClassName, lesson.Setting.Occasion.Date }.OfType<string>().DefaultIfEmpty(texts.OccasionNotSaid))),
            (texts.PrintedLead, lesson.Setting.Occasion.Printed ?? texts.PrintedNotSaid),
            (texts.SheetsLead, texts.Sheets(texts.ClassTab, texts.GroupTab, texts.ConstantsTab)),
            (texts.LockedLead, texts.Locked),
            (texts.UnlockLead, texts.Unlock),
            (texts.WarnedLead, texts.Warned),
            (texts.RepeatedLead, texts.Repeated),
            (texts.EmptyLead, texts.Empty(AnswerFormula.NoValue)),
            (texts.UncertaintyLead, texts.Uncertainty(practical.Id, texts.ClassTab)),
        ];
        for (int i = 0; i < lines.Length; i++)
        {
            sheet.Text(i + 3, 1, lines[i].What, CellLook.Heading);
            sheet.Text(i + 3, 2, lines[i].Text, CellLook.RowHeading);
            sheet.Fit(i + 3);
        }

        return sheet;
    }
}
