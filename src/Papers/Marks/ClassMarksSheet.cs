using Calx.Papers.Handouts;
using Calx.Papers.Spreadsheets;
using Calx.Papers.Texts;
using Calx.Practicals.Marking;

namespace Calx.Papers.Marks;

/// <summary>What the class has in common: how each answer went, which ideas are widespread, with what to begin the next lesson.</summary>
internal static class ClassMarksSheet
{
    private const int Columns = 6;

    /// <summary>Rarer ideas are single students', who are on the second sheet.</summary>
    private const int MostIdeas = 12;

    private static readonly CellLook Words = CellLook.RowHeading;
    private static readonly CellLook Count = Words with { Stands = Side.Middle, Format = "0" };
    private static readonly CellLook Share = Words with { Stands = Side.Middle, Format = "0%" };

    public static SheetDraft Of(MarkedClass marked, MarksSetting setting, LookTable looks)
    {
        MarksTexts texts = new(setting.Language);
        var sheet = new SheetDraft(texts.ClassTab, looks) { IsFree = true };
        double[] letters = [46, 11, 11, 13, 56, 46];
        for (int i = 0; i < letters.Length; i++)
        {
            sheet.Wide(i + 1, letters[i]);
        }

        sheet.Band(1, Columns, texts.ClassTitle(setting.Practical.Title), CellLook.Title);
        sheet.Band(2, Columns, setting.ClassAndDate, CellLook.Plain);
        int row = Answers(sheet, 4, marked, texts);
        row = Ideas(sheet, row + 2, marked, texts);
        Groupings(sheet, row + 2, marked, texts);
        return sheet;
    }

    private static int Answers(SheetDraft sheet, int row, MarkedClass marked, MarksTexts texts)
    {
        Head(sheet, row++, texts.AnswersHeading);
        string[] headings = [texts.AskedColumn, texts.AnsweredColumn, texts.AcceptedColumn, texts.CarriedColumn];
        for (int i = 0; i < headings.Length; i++)
        {
            sheet.Text(row, i + 1, headings[i], CellLook.Heading);
        }

        sheet.Fit(row);
        foreach (QuestionResult question in marked.Questions)
        {
            sheet.Text(++row, 1, Reports.Text.Capital(question.Answer.Label), Words);
            sheet.Number(row, 2, question.Answered, Count);
            sheet.Number(row, 3, question.Accepted, Count);
            sheet.Number(row, 4, question.Carried, Count);
            sheet.Fit(row);
        }

        return row;
    }

    private static int Ideas(SheetDraft sheet, int row, MarkedClass marked, MarksTexts texts)
    {
        Head(sheet, row++, texts.IdeasHeading);
        if (marked.Ideas.Count == 0)
        {
            sheet.Band(row, Columns, texts.NoIdeas, CellLook.Sentence);
            return row;
        }

        Wide(sheet, row, CellLook.Heading, texts.IdeaColumn, texts.AskNextColumn, texts.StudentsColumn);
        sheet.Text(row, 2, texts.ShareColumn, CellLook.Heading);
        foreach (IdeaShare idea in marked.Ideas.Take(MostIdeas))
        {
            Wide(sheet, ++row, Words, Reports.Text.Capital(idea.Idea.Label), idea.Idea.Mend, string.Join(", ", idea.Students));
            sheet.Number(row, 2, idea.Share, Share);
        }

        return row;
    }

    private static void Groupings(SheetDraft sheet, int row, MarkedClass marked, MarksTexts texts)
    {
        Head(sheet, row++, texts.GroupingsHeading);
        if (marked.Groupings.Count == 0)
        {
            sheet.Band(row, Columns, texts.NobodyHandedIn, CellLook.Sentence);
            return;
        }

        Wide(sheet, row, CellLook.Heading, texts.GroupingColumn, texts.AskNextColumn, texts.StudentsColumn);
        sheet.Text(row, 2, texts.NumberColumn, CellLook.Heading);
        foreach (Grouping grouping in marked.Groupings)
        {
            Wide(sheet, ++row, Words, Reports.Text.Capital(grouping.Title), grouping.Question, string.Join(", ", grouping.Students));
            sheet.Number(row, 2, grouping.Students.Count, Count);
        }
    }

    private static void Head(SheetDraft sheet, int row, string text) => sheet.Band(row, Columns, text, CellLook.Subheading with { Scale = 1.2 });

    /// <summary>A row with a number in the three middle columns, which are one.</summary>
    private static void Wide(SheetDraft sheet, int row, CellLook look, string first, string ask, string students)
    {
        sheet.Text(row, 1, first, look);
        sheet.Space(row, 2, 4, look);
        sheet.Text(row, 5, ask, look);
        sheet.Text(row, 6, students, look);
        sheet.Fit(row);
    }
}
