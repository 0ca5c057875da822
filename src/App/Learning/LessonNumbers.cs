using Calx.App.Input;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Learning;

/// <summary>The accepted numbers of a lesson that has not begun: those it was made with, and those that hold now.</summary>
public static class LessonNumbers
{
    /// <summary>The numbers that would be taken into the lesson now; null where it has them, or there are none for its version.</summary>
    public static async Task<AcceptedNumbers?> Newer(LessonRoom room, SchoolClass of, RecordStore store, CancellationToken cancellation)
    {
        PlanWords words = PlanSnapshot.Read(room.Lesson.Plan);
        AcceptedNumbers? now = (await PlanNumbers.Now(store, room.Practical, cancellation)).OfLesson(words.Numbers, of.Name);
        return now is null || Text(words, now) == room.Lesson.Plan || (await room.Now(cancellation)).State.BeganAt is not null ? null : now;
    }

    /// <summary>Puts them in; what the plan was stays in the audit. Returns why not, or null.</summary>
    public static async Task<string?> PutInto(LessonRoom room, SchoolClass of, RecordStore store, CancellationToken cancellation)
    {
        if (await Newer(room, of, store, cancellation) is not AcceptedNumbers numbers)
        {
            return "This lesson has begun, or its plan has the accepted numbers already.";
        }

        Lesson was = room.Lesson;
        var changed = new Lesson(
            was.Id, was.ClassId, was.PracticalId, was.PracticalVersion, was.PracticalSource, Text(PlanSnapshot.Read(was.Plan), numbers), was.Date, was.Room,
            was.Groups, was.Minutes, was.Settings, was.Teacher, was.Period);
        return (await store.ChangeLesson(changed, Visitor.TeachersDevice, cancellation) as ChangeResult.Refused)?.Reason;
    }

    private static string Text(PlanWords words, AcceptedNumbers numbers) => PlanSnapshot.Text(words with { Learned = numbers });
}
