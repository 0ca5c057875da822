using System.Globalization;
using Calx.App.Live;
using Calx.App.Pages.Lessons;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Prose;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Marking;

/// <summary>What the pages of a lesson's marking show and keep, but for the answers in words one by one.</summary>
public sealed class MarkingDesk(LessonDesk lessons, LessonMarking marking, TimeProvider clock)
{
    /// <summary>Answers for the lesson of an id, or says that there is none.</summary>
    public async Task<IResult> In(string id, HttpContext context, Func<LessonRoom, Task<IResult>> answer) =>
        await lessons.Room(id, context.RequestAborted) is LessonRoom room ? await answer(room) : Show.Nothing("lesson");

    /// <summary>A lesson's answers, marked.</summary>
    public async Task<MarkingModel> Model(LessonRoom room, PageSaid said, CancellationToken cancellation) =>
        new(await marking.Of(room, cancellation), await lessons.Class(room, cancellation), said);

    /// <summary>Opens feedback to students, or closes it again.</summary>
    public async Task<IResult> OpenFeedback(LessonRoom room, HttpContext context)
    {
        bool opens = (await FormFields.Of(context))["open"] == LessonState.Yes;
        bool isOpen = MarkingSettings.Of(await room.Now(context.RequestAborted)).IsOpened;
        AppendResult? result = opens == isOpen ? null
            : await room.Append(MarkingSettings.OpeningEntry(NewEntryId.Draw(), opens, clock.GetUtcNow()), context.RequestAborted);
        string address = $"/lessons/{room.Lesson.Id}/marking#feedback";
        return Show.See(result is AppendResult.Refused refused
            ? Changes.Saying(address, "fault", refused.Reason)
            : Changes.Saying(address, "done", opens ? "Students see feedback now." : "Students see no feedback any more."));
    }

    /// <summary>The marks as a file.</summary>
    public async Task<IResult> File(LessonRoom room, string name, HttpContext context)
    {
        if (MarkingDownloads.Find(name) is not MarkingDownload download)
        {
            return Show.Nothing("file of marks");
        }

        MarkingModel model = await Model(room, new PageSaid(null, null), context.RequestAborted);
        return Results.File(download.Write(model), download.ContentType, $"{LessonPapers.FileName(model.Class, room.Lesson)}-{download.Name}");
    }

    /// <summary>Keeps how the lesson is marked.</summary>
    public async Task<IResult> KeepSettings(LessonRoom room, HttpContext context)
    {
        MarkingSettings set = MarkingSettingsForm.Read(await FormFields.Of(context), room.Practical);
        string? fault = MarkingSettingsForm.Fault(set)
            ?? (await room.Append(set.Entry(NewEntryId.Draw(), clock.GetUtcNow()), context.RequestAborted) as AppendResult.Refused)?.Reason;
        return fault is null
            ? Show.See(Changes.Saying($"/lessons/{room.Lesson.Id}/marking/settings", "done", "Kept. All answers are marked by it."))
            : Show.Page<MarkingSettingsPage>(new SettingsModel(await Model(room, new PageSaid(null, fault), context.RequestAborted), set));
    }

    /// <summary>Keeps the teacher's own marks for one answer, or takes them back.</summary>
    public async Task<IResult> Decide(LessonRoom room, int number, string answer, bool takesBack, HttpContext context)
    {
        LessonMarks marks = await marking.Of(room, context.RequestAborted);
        (LessonWork work, MarkedWork marked) = marks.Each.FirstOrDefault(e => e.Work.Member.Number == number);
        if (work is null || Asked(marked, answer) is not (int of, bool isWords))
        {
            return Show.Nothing(work is null ? "student with answers in this lesson" : "answer that is asked in this lesson");
        }

        var wish = MarkWish.Of(await FormFields.Of(context));
        var writer = new MarkWriter(room, clock);
        string? fault = takesBack
            ? await writer.TakeBack(work, answer, wish, context.RequestAborted)
            : await writer.Give(work, answer, of, isWords, wish, context.RequestAborted);
        string address = string.Create(CultureInfo.InvariantCulture, $"/lessons/{room.Lesson.Id}/marking/students/{number}#a-{answer}");
        return Show.See(fault is not null ? Changes.Saying(address, "fault", fault)
            : Changes.Saying(address, "done", takesBack ? "Your marks are taken back." : "Your marks are kept."));
    }

    private static (int Of, bool IsWords)? Asked(MarkedWork marked, string answer) =>
        marked.Answers.FirstOrDefault(a => a.Answer.Id == answer) is AnswerMark mark ? (mark.Answer.Marks, false)
        : marked.Prose.FirstOrDefault(p => p.Question.Id == answer) is ProseMark prose ? (prose.Of, true) : null;
}
