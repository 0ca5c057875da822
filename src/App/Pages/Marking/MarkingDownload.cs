using System.Text;
using Calx.App.Output;

namespace Calx.App.Pages.Marking;

/// <summary>A file that the marks of a lesson are given as.</summary>
/// <param name="Name">The end of its address, with what the file ends in: <c>marks.csv</c>.</param>
/// <param name="Label">What its link says.</param>
/// <param name="About">What stands in it, behind the link.</param>
/// <param name="ContentType">Its kind.</param>
/// <param name="Write">Makes it.</param>
public sealed record MarkingDownload(string Name, string Label, string About, string ContentType, Func<MarkingModel, byte[]> Write);

/// <summary>The files that the marks of a lesson are given as: one more is one more line here.</summary>
public static class MarkingDownloads
{
    /// <summary>All of them, in the order in which the page lists them.</summary>
    public static IReadOnlyList<MarkingDownload> All { get; } =
    [
        new("marks.csv", "Marks as CSV", "a row a student, with the sentences for each", "text/csv; charset=utf-8", m => Encoding.UTF8.GetBytes(MarkingCsv.Of(m.Marks.Class))),
        new("marks.xlsx", "Marks as a workbook", "marks with live totals, every answer with what may lie behind it, the class", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet", MarkingPapers.Workbook),
        new("feedback-slips.html", "Feedback slips to print", "one a student, to cut apart; no slip tells an expected value", "text/html; charset=utf-8", MarkingPapers.SlipsToPrint),
        new("feedback-slips.docx", "Feedback slips for a word processor", "the same, to change", "application/vnd.openxmlformats-officedocument.wordprocessingml.document", MarkingPapers.SlipsToEdit),
        new("roster.zip", "Totals for a school system", "by the open OneRoster convention", "application/zip", MarkingPapers.Roster),
    ];

    /// <summary>The one of a name, or null.</summary>
    public static MarkingDownload? Find(string name) => All.FirstOrDefault(d => d.Name == name);
}
