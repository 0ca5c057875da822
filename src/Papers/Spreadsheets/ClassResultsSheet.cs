using Calx.Papers.Handouts;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;
using System.Globalization;

namespace Calx.Papers.Spreadsheets;

/// <summary>The class's table: a row a group and trial, headed so that an analysis reads it back, with the answers live beside the
/// readings. It is the first sheet: the first with readings is the one that is read back.</summary>
internal static class ClassResultsSheet
{
    private const int HeadingRow = 5;
    private const int FirstRow = HeadingRow + 1;

    /// <summary>A printed sheet is written on by hand.</summary>
    private const double RowInLines = 1.5;

    public static SheetDraft Of(ResultsLesson lesson, LookTable looks)
    {
        PlanSettings plan = lesson.Plan;
        WorkbookTexts texts = lesson.Texts;
        var sheet = new SheetDraft(texts.ClassTab, looks) { HeadingRow = HeadingRow };
        string[] names = [texts.GroupColumn, .. plan.Trials > 1 ? [texts.TrialColumn] : (string[])[], .. plan.Balances.Count > 1 ? [texts.BalanceColumn] : (string[])[]];
        int readings = names.Length + 1;
        int observations = readings + lesson.Weighings.Count;
        int answers = observations + 1;
        int columns = observations + lesson.Answers.Count;
        int lastRow = HeadingRow + (plan.Groups * plan.Trials);
        sheet.FrozenColumns = plan.Trials > 1 ? 2 : 1;
        Widths(sheet, names.Length, observations, columns);
        Head(sheet, lesson, readings, columns);
        Headings(sheet, lesson, names, observations);
        AnswerFormula[] byRow = [.. Enumerable.Range(FirstRow, lastRow - HeadingRow).Select(row => lesson.Formulas(
            w => SheetDraft.Reference(row, readings + w), a => SheetDraft.Reference(row, answers + a)))];
        for (int row = FirstRow; row <= lastRow; row++)
        {
            Named(sheet, plan, names.Length, row);
            sheet.Tall(row, RowInLines);
            for (int w = 0; w < lesson.Weighings.Count; w++)
            {
                sheet.Blank(row, readings + w, CellLook.Reading(lesson.FormatOf(lesson.Weighings[w])));
            }

            sheet.Blank(row, observations, CellLook.Words);
            for (int a = 0; a < lesson.Answers.Count; a++)
            {
                sheet.Formula(row, answers + a, byRow[row - FirstRow].Of(lesson.Answers[a]), CellLook.WorkedOut(lesson.FormatOf(lesson.Answers[a])));
            }
        }

        for (int w = 0; w < lesson.Weighings.Count; w++)
        {
            sheet.Checked.Add(new CheckedRange(
                SheetDraft.Reference(FirstRow, readings + w), SheetDraft.Reference(lastRow, readings + w), lesson.IsMass(lesson.Weighings[w])));
        }

        Summary(sheet, lesson, answers, lastRow);
        Points(sheet, lesson, columns + 1, lastRow);
        return sheet;
    }

    /// <summary>Mass against time to the right of everything: a column for each time between the first and the last.</summary>
    private static void Points(SheetDraft sheet, ResultsLesson lesson, int first, int lastRow)
    {
        if (lesson.Setting.Practical.Series is not SeriesDefinition series)
        {
            return;
        }

        double[] times = [.. series.TimesInMinutes.Skip(1).SkipLast(1)];
        string? format = lesson.FormatOf(lesson.Weighings.First(w => w.Reading == series.From));
        for (int i = 0; i < times.Length; i++)
        {
            sheet.Wide(first + i, 11);
            sheet.Text(
                HeadingRow, first + i, Sentences.Heading(lesson.Texts.PointColumn(series.Label, series.TimeText(times[i]), series.TimeUnit), "g"), CellLook.Heading);
            for (int row = FirstRow; row <= lastRow; row++)
            {
                sheet.Blank(row, first + i, CellLook.Reading(format));
            }
        }

        sheet.Fit(HeadingRow);
        sheet.Checked.Add(new CheckedRange(SheetDraft.Reference(FirstRow, first), SheetDraft.Reference(lastRow, first + times.Length - 1), true));
    }

    private static void Widths(SheetDraft sheet, int names, int observations, int columns)
    {
        for (int column = 1; column <= columns; column++)
        {
            sheet.Wide(column, column <= names ? 10 : column < observations ? 16 : column == observations ? 26 : 19);
        }
    }

    private static void Head(SheetDraft sheet, ResultsLesson lesson, int readings, int columns)
    {
        PaperSetting setting = lesson.Setting;
        WorkbookTexts texts = lesson.Texts;
        sheet.Band(1, columns, texts.ClassTitle(setting.Practical.Title), CellLook.Title);
        sheet.Text(2, 1, texts.Class, CellLook.Plain);
        sheet.Text(2, readings, setting.Occasion.ClassName ?? string.Empty, CellLook.Name);
        sheet.Text(2, readings + 1, texts.Date, CellLook.Plain with { Stands = Side.Middle });
        sheet.Text(2, readings + 2, setting.Occasion.Date ?? string.Empty, CellLook.Name);
        sheet.Band(3, columns, $"{ReadingCheck.Sentence(lesson)} {texts.GreyCellsOfRow(setting.Practical.Id)}", CellLook.Sentence);
        if (setting.Draft is string draft)
        {
            sheet.Band(4, columns, draft, CellLook.Subheading);
        }
    }

    private static void Headings(SheetDraft sheet, ResultsLesson lesson, string[] names, int observations)
    {
        string[] headings =
        [
            .. names,
            .. lesson.Weighings.Select(w => SheetReadings.Heading(lesson.Setting.Practical, w)),
            lesson.Texts.ObservationsColumn,
            // A ready-made mass of a class's table has the same name as an answer; with this word it is told from one.
            .. lesson.Answers.Select(a => Sentences.Heading(lesson.Texts.CalculatedColumn(a.Label), a.Unit)),
        ];
        for (int i = 0; i < headings.Length; i++)
        {
            sheet.Text(HeadingRow, i + 1, headings[i], CellLook.Heading);
        }

        sheet.Fit(HeadingRow);
    }

    /// <summary>Groups are numbered, to be written over with what they are called.</summary>
    private static void Named(SheetDraft sheet, PlanSettings plan, int names, int row)
    {
        int at = row - FirstRow;
        sheet.Number(row, 1, (at / plan.Trials) + 1, CellLook.Name);
        for (int column = 2; column <= names; column++)
        {
            if (column == 2 && plan.Trials > 1)
            {
                sheet.Number(row, column, (at % plan.Trials) + 1, CellLook.Name);
            }
            else
            {
                sheet.Blank(row, column, CellLook.Name);
            }
        }
    }

    /// <summary>Median and count, under words that an analysis knows for no group.</summary>
    private static void Summary(SheetDraft sheet, ResultsLesson lesson, int answers, int lastRow)
    {
        if (lesson.Answers.Count == 0)
        {
            return;
        }

        sheet.Text(lastRow + 1, 1, lesson.Texts.Median, CellLook.Subheading);
        sheet.Text(lastRow + 2, 1, lesson.Texts.Count, CellLook.Subheading);
        sheet.Tall(lastRow + 1, RowInLines);
        sheet.Tall(lastRow + 2, RowInLines);
        for (int a = 0; a < lesson.Answers.Count; a++)
        {
            string values = string.Create(
                CultureInfo.InvariantCulture, $"{SheetDraft.Reference(FirstRow, answers + a)}:{SheetDraft.Reference(lastRow, answers + a)}");
            sheet.Formula(
                lastRow + 1, answers + a, $"IF(COUNT({values})=0,\"\",MEDIAN({values}))",
                CellLook.WorkedOut(lesson.FormatOf(lesson.Answers[a])) with { IsBold = true });
            sheet.Formula(lastRow + 2, answers + a, $"COUNT({values})", CellLook.WorkedOut("0") with { IsBold = true });
        }
    }
}
