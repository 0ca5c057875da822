using System.Globalization;
using Calx.Practicals.Marking;

namespace Calx.App.Output;

/// <summary>The marks as a table, a row a student. A text that a spreadsheet would take for a formula is kept a text.</summary>
internal static class MarkingCsv
{
    public static string Of(MarkedClass marked)
    {
        MarkedWork[] works = [.. marked.Works];
        string[] ids = works.Length == 0 ? [] : [.. works[0].Answers.Select(a => a.Answer.Id), .. works[0].Prose.Select(p => p.Question.Id)];
        bool prose = Array.Exists(works, w => w.Prose.Count > 0);
        string head = CsvLine.Of(["student", .. ids, "total", "of", .. prose ? ["waiting"] : Array.Empty<string>(), "feedback"]);
        return head + string.Concat(works.Select(w => CsvLine.Of(
        [
            Neutral(w.Work.Student), .. w.Answers.Select(a => Number(a.Marks)), .. w.Prose.Select(p => p.Marks is int marks ? Number(marks) : ""),
            Number(w.Total), Number(w.Of), .. prose ? [Number(w.Waiting)] : Array.Empty<string>(), Neutral(w.Feedback),
        ])));
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Neutral(string text) => text.Length > 0 && "=+-@\t\r".Contains(text[0], StringComparison.Ordinal) ? $"'{text}" : text;
}
