using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Lessons;

/// <summary>Turns a lesson into a cover lesson, and back: an entry of its journal, as everything that happens in a lesson.</summary>
public static class CoverTurn
{
    /// <summary>Turns it, where that was confirmed and it has not begun.</summary>
    public static async Task<IResult> Into(LessonRoom room, HttpContext context, TimeProvider clock)
    {
        LessonState state = (await room.Now(context.RequestAborted)).State;
        string? fault = !(await FormFields.Of(context)).IsTicked("sure") ? "Nothing was changed: tick that this lesson has no practical work."
            : room.Lesson.Settings.Trial ? "A trial run is your own practical work; it cannot be a cover lesson."
            : state.BeganAt is not null ? "This lesson has begun, so it stays a practical lesson. Groups can go on with simulated data one by one."
            : null;
        return fault is null
            ? await Write(room, CoverActs.Yes, "This is a cover lesson now. Print its papers, and tell the technician that nothing is wanted.", context, clock)
            : Back(room, "fault", fault);
    }

    /// <summary>Turns it back, where it has not begun.</summary>
    public static async Task<IResult> Out(LessonRoom room, HttpContext context, TimeProvider clock) =>
        (await room.Now(context.RequestAborted)).State.BeganAt is null
            ? await Write(room, "no", "This is a practical lesson again, with all that was typed before.", context, clock)
            : Back(room, "fault", "This lesson has begun, so it stays a cover lesson.");

    private static async Task<IResult> Write(LessonRoom room, string text, string done, HttpContext context, TimeProvider clock)
    {
        bool isSo = (await room.Now(context.RequestAborted)).State.IsCover == (text == CoverActs.Yes);
        AppendResult? result = isSo ? null : await room.Append(
            new JournalEntry(NewEntryId.Draw(), new JournalCell(0, 1, CoverActs.Cover), new EntryContent.Happening(text), Visitor.TeachersDevice, clock.GetUtcNow()),
            context.RequestAborted);
        return result is AppendResult.Refused refused ? Back(room, "fault", refused.Reason) : Back(room, "done", done);
    }

    private static IResult Back(LessonRoom room, string kind, string sentence) => Show.See(Changes.Saying($"/lessons/{room.Lesson.Id}", kind, sentence));
}
