using System.Globalization;
using Calx.Papers.Handouts;
using Calx.Papers.Spreadsheets;
using Calx.Papers.Texts;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Prose;

namespace Calx.Papers.Marks;

/// <summary>A row a student: marks, total, per cent. It prints on one side.</summary>
internal static class MarksSheet
{
    private const int HeadingRow = 4;
    private const int FirstMark = 3;

    /// <summary>Letters of an upright heading before it is broken.</summary>
    private const int LettersUpright = 24;

    private static readonly CellLook Upright = CellLook.Heading with { IsUpright = true, Stands = Side.Middle };

    public static SheetDraft Of(MarkedClass marked, MarksSetting setting, LookTable looks)
    {
        MarksTexts texts = new(setting.Language);
        var sheet = new SheetDraft(texts.MarksTab, looks) { HeadingRow = HeadingRow, FrozenColumns = 1, IsFree = true, IsOnePage = true };
        string[] headings =
        [
            .. marked.Questions.Select(q => texts.MarksColumn(Reports.Text.Capital(q.Answer.Label), Sentences.Count(q.Answer.Marks))),
            .. marked.Works.Take(1).SelectMany(w => w.Prose).Select(p => texts.MarksColumn(texts.Question(setting.NumberOf(p)), Sentences.Count(p.Of))),
        ];
        int total = FirstMark + headings.Length;
        Head(sheet, setting, texts, headings, total);
        int row = HeadingRow;
        foreach (MarkedWork work in marked.Works)
        {
            Student(sheet, ++row, work, total);
        }

        if (marked.Works.Count > 0)
        {
            Means(sheet, marked, texts, row, total);
        }

        return sheet;
    }

    private static void Head(SheetDraft sheet, MarksSetting setting, MarksTexts texts, string[] headings, int total)
    {
        sheet.Wide(1, 24);
        sheet.Wide(2, 9);
        int lines = headings.Select(h => (h.Length + LettersUpright - 1) / LettersUpright).DefaultIfEmpty(1).Max();
        for (int column = FirstMark; column < total; column++)
        {
            sheet.Wide(column, 4.6 + (1.8 * lines));
            sheet.Text(HeadingRow, column, headings[column - FirstMark], Upright);
        }

        sheet.Wide(total, 8);
        sheet.Wide(total + 1, 6);
        sheet.Wide(total + 2, 8);
        sheet.Band(1, total + 2, texts.MarksTitle(setting.Practical.Title), CellLook.Title);
        sheet.Band(2, total + 2, setting.ClassAndDate, CellLook.Plain);
        sheet.Band(
            3, total + 2,
            texts.Legend(MarkLooks.Wrong, MarkLooks.Carried, MarkLooks.Rounded, MarkLooks.Missing, MarkLooks.Look, MarkLooks.Own, MarkLooks.Waiting), CellLook.Sentence);
        sheet.Text(HeadingRow, 1, texts.StudentColumn, CellLook.Heading);
        sheet.Text(HeadingRow, 2, texts.GroupColumn, CellLook.Heading);
        sheet.Text(HeadingRow, total, texts.TotalColumn, CellLook.Heading);
        sheet.Text(HeadingRow, total + 1, texts.OfColumn, CellLook.Heading);
        sheet.Text(HeadingRow, total + 2, texts.PerCentColumn, CellLook.Heading);
        // A letter is about 0.4 lines wide.
        sheet.Tall(HeadingRow, Math.Max(2, 0.4 * (4 + headings.Select(h => Math.Min(h.Length, LettersUpright)).DefaultIfEmpty(0).Max())));
    }

    private static void Student(SheetDraft sheet, int row, MarkedWork work, int total)
    {
        sheet.Text(row, 1, work.Work.Student, CellLook.RowHeading with { Wraps = false });
        sheet.Text(row, 2, work.Work.Group ?? string.Empty, CellLook.RowHeading with { Stands = Side.Middle, Wraps = false });
        int column = FirstMark;
        foreach (AnswerMark mark in work.Answers)
        {
            sheet.Number(row, column++, mark.Marks, MarkLooks.Of(mark));
        }

        foreach (ProseMark prose in work.Prose)
        {
            if (prose.Marks is int marks)
            {
                sheet.Number(row, column++, marks, MarkLooks.Of(prose));
            }
            else
            {
                sheet.Text(row, column++, MarkLooks.Waiting, MarkLooks.Waits);
            }
        }

        string earned = SheetDraft.Reference(row, total), of = SheetDraft.Reference(row, total + 1);
        string range = total == FirstMark ? "0" : $"{SheetDraft.Reference(row, FirstMark)}:{SheetDraft.Reference(row, total - 1)}";
        sheet.Formula(row, total, $"SUM({range})", CellLook.WorkedOut("0") with { IsBold = true }, work.Total);
        sheet.Number(row, total + 1, work.Of, CellLook.WorkedOut("0"));
        sheet.Formula(row, total + 2, $"IF({of}=0,0,{earned}/{of})", CellLook.WorkedOut("0%"), work.Of == 0 ? 0 : (double)work.Total / work.Of);
    }

    /// <summary>Below each column its mean; a column in which nothing is marked yet has none.</summary>
    private static void Means(SheetDraft sheet, MarkedClass marked, MarksTexts texts, int lastRow, int total)
    {
        int row = lastRow + 1;
        sheet.Text(row, 1, texts.Mean, CellLook.Heading);
        sheet.Blank(row, 2, CellLook.Heading);
        IReadOnlyList<MarkedWork> works = marked.Works;
        double?[] means =
        [
            .. marked.Questions.Select((_, i) => (double?)works.Average(w => w.Answers[i].Marks)),
            .. works[0].Prose.Select((_, i) => works.Average(w => w.Prose[i].Marks)),
            works.Average(w => w.Total), works.Average(w => w.Of), works.Average(w => w.Of == 0 ? 0 : (double)w.Total / w.Of),
        ];
        for (int i = 0; i < means.Length; i++)
        {
            int column = FirstMark + i;
            string range = string.Create(CultureInfo.InvariantCulture, $"{SheetDraft.Reference(HeadingRow + 1, column)}:{SheetDraft.Reference(lastRow, column)}");
            CellLook look = CellLook.WorkedOut(column == total + 2 ? "0%" : "0.0") with { IsBold = true };
            string formula = $"IF(COUNT({range})=0,\"\",AVERAGE({range}))";
            if (means[i] is double mean)
            {
                sheet.Formula(row, column, formula, look, mean);
            }
            else
            {
                sheet.Formula(row, column, formula, look);
            }
        }
    }
}
