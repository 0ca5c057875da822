using Calx.App.Input;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Live;

/// <summary>Makes a room of what was kept of a lesson: its practical as it was then, and its plan.</summary>
public static class LessonOpening
{
    /// <summary>Opens it.</summary>
    /// <exception cref="InvalidDataException">What was kept cannot be read by this program.</exception>
    public static LessonRoom Open(Lesson lesson, RecordStore store)
    {
        (Practical practical, PlanChoice choice) = Plan(lesson);
        return new LessonRoom(lesson, practical, choice.Settings, store);
    }

    /// <summary>The plan of a lesson that was read before, as it is with the numbers of the practical's own file.</summary>
    public static PlanSettings PlanOfFile(Lesson lesson, Practical practical) =>
        new PlanCheck(practical, PlanSnapshot.Read(lesson.Plan) with { Learned = null }).Choice()!.Settings;

    /// <summary>The practical as it was then, and the plan.</summary>
    /// <exception cref="InvalidDataException">What was kept cannot be read by this program.</exception>
    public static (Practical Practical, PlanChoice Choice) Plan(Lesson lesson)
    {
        PracticalReading reading = PracticalReader.Read(lesson.PracticalSource, lesson.PracticalId);
        Practical practical = reading.Practical
            ?? throw new InvalidDataException($"The practical of this lesson cannot be read: {string.Join("; ", reading.Faults)}");
        var check = new PlanCheck(practical, PlanSnapshot.Read(lesson.Plan));
        PlanChoice? choice = check.Choice();
        return choice is not null && check.Faults.Count == 0
            ? (practical, choice)
            : throw new InvalidDataException($"The plan of this lesson cannot be read: {string.Join("; ", check.Faults)}");
    }
}
