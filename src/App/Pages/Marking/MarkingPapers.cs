using Calx.App.Output;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Marks;
using Calx.Papers.Roster;

namespace Calx.App.Pages.Marking;

/// <summary>The marks of a lesson as files to keep, to hand out, and for a school system.</summary>
internal static class MarkingPapers
{
    /// <summary>The workbook.</summary>
    public static byte[] Workbook(MarkingModel model) => MarksWorkbook.Of(model.Marks.Class, Setting(model));

    /// <summary>The slips, to print from a browser.</summary>
    public static byte[] SlipsToPrint(MarkingModel model) => PaperFiles.Page(Slips(model));

    /// <summary>The slips for a word processor.</summary>
    public static byte[] SlipsToEdit(MarkingModel model) => PaperWord.Of(Slips(model));

    /// <summary>The totals by the OneRoster convention. Marks are as old as the last thing that was entered.</summary>
    public static byte[] Roster(MarkingModel model) => RosterResults.Zip(model.Marks.Class, new RosterAbout(
        string.Empty, model.Class.Name, model.Lesson.Id.ToString(), model.Marks.View.Practical.Title, model.Lesson.Date,
        model.Marks.View.Entries is [.., var last] ? last.ReceivedAt : new DateTimeOffset(model.Lesson.Date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero)));

    private static Paper Slips(MarkingModel model) => FeedbackSlips.Of(model.Marks.Class, Setting(model));

    private static MarksSetting Setting(MarkingModel model) =>
        new(model.Marks.View.Practical, new PaperOccasion(model.Class.Name, Dates.Day(model.Lesson.Date), null, null, null, null));
}
