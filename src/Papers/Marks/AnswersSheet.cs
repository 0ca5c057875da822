using System.Globalization;
using Calx.Papers.Handouts;
using Calx.Papers.Spreadsheets;
using Calx.Papers.Texts;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Prose;

namespace Calx.Papers.Marks;

/// <summary>A row an answer: as given, what was expected, what was said of it, what may lie behind it.</summary>
internal static class AnswersSheet
{
    private const int HeadingRow = 3;

    private static readonly CellLook Words = CellLook.RowHeading;
    private static readonly CellLook Count = Words with { Stands = Side.Right, Format = "0_)" };

    public static SheetDraft Of(MarkedClass marked, MarksSetting setting, LookTable looks)
    {
        MarksTexts texts = new(setting.Language);
        var sheet = new SheetDraft(texts.AnswersTab, looks) { HeadingRow = HeadingRow, FrozenColumns = 1, IsFree = true, HasFilter = true };
        (string Heading, double Letters)[] columns =
        [
            (texts.StudentColumn, 19), (texts.GroupColumn, 8), (texts.AskedColumn, 29), (texts.GivenColumn, 26), (texts.ExpectedColumn, 28), (texts.OwnColumn, 13),
            (texts.VerdictColumn, 18), (texts.EarnedColumn, 8), (texts.OfColumn, 5), (texts.BehindColumn, 44), (texts.FeedbackColumn, 40), (texts.YoursColumn, 20),
        ];
        for (int i = 0; i < columns.Length; i++)
        {
            sheet.Wide(i + 1, columns[i].Letters);
            sheet.Text(HeadingRow, i + 1, columns[i].Heading, CellLook.Heading);
        }

        sheet.Band(1, columns.Length, texts.AnswersTitle(setting.Practical.Title), CellLook.Title);
        sheet.Band(2, columns.Length, setting.ClassAndDate, CellLook.Plain);
        sheet.Fit(HeadingRow, 2);
        int row = HeadingRow;
        var verdicts = new VerdictWords(setting.Language);
        foreach (MarkedWork work in marked.Works)
        {
            foreach (AnswerMark mark in work.Answers)
            {
                Write(sheet, ++row, work, mark, setting, verdicts);
            }

            foreach (ProseMark prose in work.Prose)
            {
                Write(sheet, ++row, work, prose, setting, verdicts);
            }
        }

        return sheet;
    }

    private static void Write(SheetDraft sheet, int row, MarkedWork work, AnswerMark mark, MarksSetting setting, VerdictWords verdicts)
    {
        Names(sheet, row, work, Reports.Text.Capital(MarksSetting.Asked(mark.Answer)));
        sheet.Text(row, 4, setting.Given(mark), Words);
        Known(sheet, row, 5, mark.Expected, setting.Expected(mark));
        Known(sheet, row, 6, mark.Own, null);
        sheet.Text(row, 7, verdicts.Of(mark), Words);
        sheet.Number(row, 8, mark.Marks, MarkLooks.Of(mark));
        sheet.Number(row, 9, mark.Answer.Marks, Count);
        sheet.Text(row, 10, verdicts.Behind(mark, setting.Practical), Words);
        sheet.Text(row, 11, mark.Feedback, Words);
        sheet.Text(row, 12, mark.Overruled?.Reason ?? string.Empty, Words);
        sheet.Fit(row);
    }

    private static void Write(SheetDraft sheet, int row, MarkedWork work, ProseMark prose, MarksSetting setting, VerdictWords verdicts)
    {
        Names(sheet, row, work, verdicts.Texts.QuestionInFull(setting.NumberOf(prose), prose.Question.Ask));
        sheet.Text(row, 4, prose.Text, Words);
        sheet.Text(row, 5, string.Join("; ", prose.Question.Expected), Words);
        sheet.Blank(row, 6, Words);
        sheet.Text(row, 7, verdicts.Of(prose), Words);
        if (prose.Marks is int marks)
        {
            sheet.Number(row, 8, marks, MarkLooks.Of(prose));
        }
        else
        {
            sheet.Text(row, 8, MarkLooks.Waiting, MarkLooks.Waits);
        }

        sheet.Number(row, 9, prose.Of, Count);
        sheet.Text(row, 10, verdicts.Misused(prose), Words);
        sheet.Blank(row, 11, Words);
        sheet.Text(row, 12, prose.Comment ?? string.Empty, Words);
        sheet.Fit(row);
    }

    private static void Names(SheetDraft sheet, int row, MarkedWork work, string asked)
    {
        sheet.Text(row, 1, work.Work.Student, Words);
        sheet.Text(row, 2, work.Work.Group ?? string.Empty, Words with { Stands = Side.Middle });
        sheet.Text(row, 3, asked, Words);
    }

    /// <summary>To four figures: what students write has fewer, and more would look surer than the readings are.</summary>
    private static void Known(SheetDraft sheet, int row, int column, double? value, string? text)
    {
        if (value is double number)
        {
            sheet.Number(row, column, double.Parse(number.ToString("G4", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture), Words);
        }
        else
        {
            sheet.Text(row, column, text ?? string.Empty, Words);
        }
    }
}
