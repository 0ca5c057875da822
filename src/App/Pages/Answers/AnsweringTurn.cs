using Calx.App.Live;
using Calx.App.Serving;
using Calx.Records.Journal;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages.Answers;

/// <summary>The teacher opens answers to students' devices, closes them, and makes a code for after the lesson.</summary>
public static class AnsweringTurn
{
    /// <summary>The word that makes a code, and leaves answers as they are.</summary>
    public const string Code = "code";

    /// <summary>Does what the form says.</summary>
    public static async Task<IResult> Take(LessonRoom room, HttpContext context, RecordStore store, TimeProvider clock)
    {
        FormFields form = await FormFields.Of(context);
        string word = form["answers"], here = $"/lessons/{room.Lesson.Id}";
        if (word is not (Answering.Open or Answering.Closed or Code))
        {
            return Show.See(Changes.Saying(here, "fault", "What was sent neither opens nor closes answers."));
        }

        if (word != Code && EntryId.TryParse(form["id"], out EntryId id)
            && await room.Append(Answering.Entry(id, word == Answering.Open, clock.GetUtcNow()), context.RequestAborted) is AppendResult.Refused refused)
        {
            return Show.See(Changes.Saying(here, "fault", refused.Reason));
        }

        if ((await room.Now(context.RequestAborted)).State.IsOver)
        {
            // After the lesson its own codes have ended; one for answers comes and goes with them.
            await (word == Answering.Closed
                ? store.CloseDoor(room.Lesson.Id, Visitor.TeachersDevice, context.RequestAborted)
                : store.OpenDoor(room.Lesson.Id, Visitor.TeachersDevice, context.RequestAborted) as Task);
        }

        return Show.See($"{here}#answers");
    }
}
