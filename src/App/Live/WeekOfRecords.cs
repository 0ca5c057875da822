using Calx.App.Pages;
using Calx.App.Input;
using Calx.Papers.Handouts;
using Calx.Papers.Week;
using Calx.Records;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Live;

/// <summary>The lessons of a week in the records, for the technician.</summary>
/// <param name="Week">The week.</param>
/// <param name="Unread">Lessons that this program cannot read, a sentence each.</param>
public sealed record WeekOfRecords(TechnicianWeek Week, IReadOnlyList<string> Unread)
{
    /// <summary>Gathers it.</summary>
    /// <param name="store">The records.</param>
    /// <param name="from">The first day of the seven.</param>
    /// <param name="cancellation">Gives up.</param>
    public static async Task<WeekOfRecords> Of(RecordStore store, DateOnly from, CancellationToken cancellation)
    {
        Dictionary<RecordId, SchoolClass> classes = (await store.Classes(cancellation)).ToDictionary(c => c.Id);
        IReadOnlySet<RecordId> covers = await store.CoverLessons(cancellation);
        int balances = (await store.Balances(cancellation)).Count;
        var lessons = new List<WeekLesson>();
        var unread = new List<string>();
        foreach (Lesson lesson in (await store.Lessons(cancellation)).Where(l => l.Date >= from && l.Date <= from.AddDays(6)))
        {
            string name = classes.TryGetValue(lesson.ClassId, out SchoolClass? one) ? one.Name : "";
            try
            {
                PlanChoice choice = LessonOpening.Plan(lesson).Choice;
                var occasion = new PaperOccasion(
                    lesson.Settings.Trial ? $"{name} (trial run)" : name, Dates.Day(lesson.Date), Said(lesson.Room), Said(lesson.Period), Said(lesson.Teacher), null);
                lessons.Add(new WeekLesson(lesson.Date, occasion, choice.Settings, choice.Stock, covers.Contains(lesson.Id), $"/lessons/{lesson.Id}/papers"));
            }
            catch (InvalidDataException)
            {
                unread.Add($"{Dates.Day(lesson.Date)}, {name}: this lesson was kept by another version of the program and cannot be read; look at its page.");
            }
        }

        return new WeekOfRecords(new TechnicianWeek(from, lessons, balances > 0 ? balances : null), unread);
    }

    private static string? Said(string text) => text.Length > 0 ? text : null;
}
