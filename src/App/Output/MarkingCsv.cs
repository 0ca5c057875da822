using System.Globalization;
using Calx.Practicals.Marking;

namespace Calx.App.Output;

/// <summary>The marks as a table, a row a student. A text that a spreadsheet would take for a formula is kept a text.</summary>
internal static class MarkingCsv
{
    public static string Of(MarkedClass marked)
    {
        MarkedWork[] works = [.. marked.Works];
        string[] ids = works.Length == 0 ? [] : [.. works[0].Answers.Select(a => a.Answer.Id)];
        string head = CsvLine.Of(["student", .. ids, "total", "of", "feedback"]);
        return head + string.Concat(works.Select(w => CsvLine.Of(
            [Neutral(w.Work.Student), .. w.Answers.Select(a => Number(a.Marks)), Number(w.Total), Number(w.Of), Neutral(w.Feedback)])));
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Neutral(string text) => text.Length > 0 && "=+-@\t\r".Contains(text[0], StringComparison.Ordinal) ? $"'{text}" : text;
}
