using Calx.Papers.Reports;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Spreadsheets;

/// <summary>A group's own table with its workings live: a row a reading, a row a step.</summary>
internal static class OneGroupSheet
{
    private const int HeadingRow = 5;
    private const double RowInLines = 1.2;

    public static SheetDraft Of(ResultsLesson lesson, LookTable looks)
    {
        int trials = lesson.Plan.Trials;
        int how = trials + 2;
        int readings = HeadingRow + 1;
        int answers = readings + lesson.Weighings.Count;
        var sheet = new SheetDraft(lesson.Texts.GroupTab, looks) { HeadingRow = HeadingRow, FrozenColumns = 1 };
        sheet.Wide(1, 46);
        for (int trial = 1; trial <= trials; trial++)
        {
            sheet.Wide(trial + 1, 16);
        }

        sheet.Wide(how, 70);
        Head(sheet, lesson, trials, how);
        for (int w = 0; w < lesson.Weighings.Count; w++)
        {
            sheet.Text(readings + w, 1, SheetReadings.Heading(lesson.Setting.Practical, lesson.Weighings[w]), CellLook.RowHeading);
            sheet.Text(readings + w, how, lesson.Texts.Read, CellLook.RowHeading);
            sheet.Fit(readings + w, RowInLines);
            for (int trial = 1; trial <= trials; trial++)
            {
                sheet.Blank(readings + w, trial + 1, CellLook.Reading(lesson.FormatOf(lesson.Weighings[w])));
            }

            sheet.Checked.Add(new CheckedRange(
                SheetDraft.Reference(readings + w, 2), SheetDraft.Reference(readings + w, trials + 1), lesson.IsMass(lesson.Weighings[w])));
        }

        Workings(sheet, lesson, readings, answers);
        return sheet;
    }

    private static void Head(SheetDraft sheet, ResultsLesson lesson, int trials, int how)
    {
        WorkbookTexts texts = lesson.Texts;
        sheet.Band(1, how, texts.GroupTitle(lesson.Setting.Practical.Title), CellLook.Title);
        sheet.Text(2, 1, texts.Names, CellLook.Plain);
        sheet.Space(2, 2, how, CellLook.Words);
        sheet.Band(3, how, $"{ReadingCheck.Sentence(lesson)} {texts.GreyCells}", CellLook.Sentence);
        if (lesson.Setting.Draft is string draft)
        {
            sheet.Band(4, how, draft, CellLook.Subheading);
        }

        sheet.Text(HeadingRow, 1, texts.QuantityColumn, CellLook.Heading);
        for (int trial = 1; trial <= trials; trial++)
        {
            sheet.Text(HeadingRow, trial + 1, trials == 1 ? texts.NumberColumn : texts.NumberedTrialColumn(Sentences.Count(trial)), CellLook.Heading);
        }

        sheet.Text(HeadingRow, how, texts.HowColumn, CellLook.Heading);
        sheet.Fit(HeadingRow, RowInLines);
    }

    private static void Workings(SheetDraft sheet, ResultsLesson lesson, int readings, int answers)
    {
        for (int a = 0; a < lesson.Answers.Count; a++)
        {
            AnswerDefinition answer = lesson.Answers[a];
            int row = answers + a;
            sheet.Text(row, 1, Sentences.Heading(Text.Capital(answer.Label), answer.Unit), CellLook.RowHeading);
            sheet.Text(row, lesson.Plan.Trials + 2, SheetWorkings.InWords(lesson.Setting.Practical, answer, lesson.Setting.Language), CellLook.RowHeading);
            for (int column = 2; column <= lesson.Plan.Trials + 1; column++)
            {
                int at = column;
                AnswerFormula formulas = lesson.Formulas(w => SheetDraft.Reference(readings + w, at), b => SheetDraft.Reference(answers + b, at));
                sheet.Formula(row, column, formulas.Of(answer), CellLook.WorkedOut(lesson.FormatOf(answer)));
            }

            sheet.Fit(row, RowInLines);
        }
    }
}
