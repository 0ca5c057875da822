using System.Globalization;
using Calx.App.Live;
using Calx.App.Pages.Classes;
using Calx.App.Pages.Keeping;
using Calx.App.Pages.Practicals;
using Calx.App.Serving;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Lessons;

/// <summary>What the teacher changes of a lesson on its own page.</summary>
public static class LessonChanges
{
    /// <summary>Keeps day, place, teacher and settings; what it was stays in the audit.</summary>
    public static async Task<IResult> Settings(LessonRoom room, HttpContext context, RecordStore store, LessonRooms rooms)
    {
        FormFields form = await FormFields.Of(context);
        Lesson was = room.Lesson;
        string place = NamesPasted.Clean(form["room"]);
        if (NewLessonWords.DayOf(form["date"]) is not DateOnly day)
        {
            return Back(room, "fault", $"'{form.Short("date", 20)}' is no day: a date such as 2026-11-25 is expected.");
        }

        if (NewLessonWords.RoomFault(place) is string fault)
        {
            return Back(room, "fault", fault);
        }

        string teacher = form.Has("teacher") ? NamesPasted.Clean(form["teacher"]) : was.Teacher;
        string period = form.Has("period") ? NamesPasted.Clean(form["period"]) : was.Period;
        if (NewLessonWords.OtherFault(teacher, period) is string tooLong)
        {
            return Back(room, "fault", tooLong);
        }

        LessonSettings settings = NewLessonWords.SettingsOf(form) with { Trial = was.Settings.Trial };
        var changed = new Lesson(
            was.Id, was.ClassId, was.PracticalId, was.PracticalVersion, was.PracticalSource, was.Plan, day, place, was.Groups, was.Minutes, settings, teacher, period);
        ChangeResult result = await store.ChangeLesson(changed, Visitor.TeachersDevice, context.RequestAborted);
        rooms.OpenAnew(was.Id);
        return result.Fault() is string refused ? Back(room, "fault", refused) : Back(room, "done", "Kept.");
    }

    /// <summary>Signs the safety check for the practical and the plan as the lesson has them.</summary>
    public static async Task<IResult> Sign(LessonRoom room, HttpContext context, RecordStore store, TimeProvider clock)
    {
        string? fault = await Signing.Take(await FormFields.Of(context), room.Plan, context, store, clock);
        return fault is null ? Back(room, "done", "The check is signed. Students who join see the practical.") : Back(room, "fault", fault);
    }

    /// <summary>Keeps whether a member is here, or which group they are in.</summary>
    public static async Task<IResult> Member(LessonRoom room, int number, HttpContext context, LessonDesk desk, TimeProvider clock)
    {
        FormFields form = await FormFields.Of(context);
        LessonModel model = await desk.Model(room, new PageSaid(null, null), context.RequestAborted);
        if (model.Members.All(m => m.Number != number))
        {
            return Show.Nothing("member of this class");
        }

        var writer = new RollWriter(room, clock);
        string presence = form["presence"];
        if (MemberState.All.Contains(presence))
        {
            await writer.Presence(number, presence, context.RequestAborted);
        }
        else if (int.TryParse(form["group"], NumberStyles.None, CultureInfo.InvariantCulture, out int group) && group <= (await room.Now(context.RequestAborted)).GroupCount)
        {
            await writer.Group(number, group, context.RequestAborted);
        }
        else
        {
            return Back(room, "fault", "What was sent says neither who is here nor a group of this lesson.");
        }

        return Show.See(string.Create(CultureInfo.InvariantCulture, $"/lessons/{room.Lesson.Id}#member-{number}"));
    }

    /// <summary>Puts everybody who is here into groups.</summary>
    public static async Task<IResult> Groups(LessonRoom room, HttpContext context, LessonDesk desk, TimeProvider clock)
    {
        FormFields form = await FormFields.Of(context);
        await new RollWriter(room, clock).Spread(
            await desk.Model(room, new PageSaid(null, null), context.RequestAborted), form["way"], context.RequestAborted);
        return Show.See($"/lessons/{room.Lesson.Id}#roll");
    }

    /// <summary>Ends it: the journal says so, and the codes let nobody in any more.</summary>
    public static async Task<IResult> End(LessonRoom room, HttpContext context, Doors doors, TimeProvider clock)
    {
        await room.Append(
            new JournalEntry(NewEntryId.Draw(), new JournalCell(0, 1, Acts.Ended), new EntryContent.Happening(""), Visitor.TeachersDevice, clock.GetUtcNow()),
            context.RequestAborted);
        await doors.CloseAtTheEnd(room, context.RequestAborted);
        return Show.See($"/lessons/{room.Lesson.Id}");
    }

    /// <summary>Exports it and then deletes it, where the class's name was typed.</summary>
    public static async Task<IResult> Delete(LessonRoom room, HttpContext context, LessonDesk desk, RecordStore store, Exports exports)
    {
        SchoolClass one = await desk.Class(room, context.RequestAborted);
        if ((await FormFields.Of(context))["typed"] != one.Name)
        {
            return Show.See(Changes.Saying(
                $"/lessons/{room.Lesson.Id}/delete", "fault", $"That is not the class's name. Type {one.Name} where the lesson is to be deleted."));
        }

        SavedFile saved = await exports.SaveLesson(room.Lesson, context.RequestAborted);
        if (saved.Fault is string fault)
        {
            return Back(room, "fault", fault);
        }

        ChangeResult result = await store.DeleteLesson(room.Lesson.Id, Visitor.TeachersDevice, context.RequestAborted);
        return result.Fault() is string refused
            ? Back(room, "fault", refused)
            : Show.See(Changes.Saying("/lessons", "done", $"The lesson of {one.Name} on {Dates.Day(room.Lesson.Date)} is deleted. It is still in {saved.Path}."));
    }

    private static IResult Back(LessonRoom room, string kind, string sentence) => Show.See(Changes.Saying($"/lessons/{room.Lesson.Id}", kind, sentence));
}
