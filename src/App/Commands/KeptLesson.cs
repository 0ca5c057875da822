using Calx.App.Input;
using Calx.App.Live;
using Calx.App.Output;
using Calx.App.Serving;
using Calx.Records;

namespace Calx.App.Commands;

/// <summary>A lesson of the records, for a command that reads it.</summary>
internal static class KeptLesson
{
    /// <summary>Finds what was handed in in it.</summary>
    /// <param name="id">Its id.</param>
    /// <param name="options">Whose records; null where they were named with a fault, which was told.</param>
    /// <param name="surroundings">Where trouble is told.</param>
    /// <param name="marks">The lesson, or null where there was trouble.</param>
    /// <param name="className">Its class, or null where there was trouble.</param>
    /// <returns>The exit code.</returns>
    public static int Find(string id, ServeOptions? options, Surroundings surroundings, out LessonMarks? marks, out string? className)
    {
        (marks, className) = (null, null);
        if (options is null)
        {
            return ExitCode.BadInput;
        }

        if (!RecordId.TryParse(id, out RecordId lesson))
        {
            surroundings.Error.WriteLine($"calx mark: --lesson: '{id}' is no id of a lesson; 12 letters and digits were expected");
            return ExitCode.BadInput;
        }

        if (RecordsChoice.Missing(options, "mark") is string missing)
        {
            surroundings.Error.WriteLine(missing);
            return ExitCode.BadInput;
        }

        LessonMarks? found = null;
        string? name = null;
        int code = RecordsChoice.Open(options, "mark", surroundings, async (store, cancellation) =>
        {
            using var rooms = new LessonRooms(store);
            try
            {
                if (await rooms.Find(lesson, cancellation) is LessonRoom room)
                {
                    found = await new LessonMarking(store).Of(room, cancellation);
                    name = (await store.FindClass(room.Lesson.ClassId, cancellation))?.Name;
                    return ExitCode.Done;
                }

                surroundings.Error.WriteLine($"calx mark: --lesson: there is no lesson '{id}' in these records");
            }
            catch (InvalidDataException)
            {
                surroundings.Error.WriteLine($"calx mark: --lesson: lesson '{id}' was kept by another version of the program and cannot be read");
            }

            return ExitCode.BadInput;
        }).GetAwaiter().GetResult();
        (marks, className) = (found, name);
        return code;
    }
}
