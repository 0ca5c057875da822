using System.Globalization;
using Calx.App.Demo;
using Calx.App.Input;
using Calx.App.Learning;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Records;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Tests.Learning;

/// <summary>Lessons of Larkmoor School, which is invented, that are over: four groups burnt magnesium, and their crucibles cooled for as
/// long as a test says.</summary>
internal static class HeldLessons
{
    private const string By = "the teacher";

    private static readonly DateTimeOffset First = new(2026, 3, 4, 9, 0, 0, TimeSpan.Zero);

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>The plan of each.</summary>
    public static PlanWords Words => new()
    {
        Groups = 4, Students = 8, Balances = 2, Resolutions = [], Repeatability = null, Minutes = 100, Mass = null, Trials = 1, Heatings = 2, NoEmpty = false, Prepared = true,
        Stagger = 0, Wanted = [], Conditions = [], Without = [], Moved = ["brief"], Alongside = [], Times = [], Kit = [], Prices = [], Metre = null,
    };

    /// <summary>Writes lessons, a week after each other and a class each.</summary>
    /// <param name="store">The records.</param>
    /// <param name="clock">Their clock, which is set back meanwhile.</param>
    /// <param name="waited">For each lesson the minutes between flame out and reading.</param>
    /// <param name="settings">How they were held; null for as usual.</param>
    public static async Task Write(RecordStore store, ShiftedClock clock, double[] waited, LessonSettings? settings = null)
    {
        for (int i = 0; i < waited.Length; i++)
        {
            DateTimeOffset began = First.AddDays(7 * i);
            clock.Pretend(began);
            SchoolClass school = await Class(store, $"9{(char)('A' + i)}");
            await Write(store, clock, await Make(store, school, DateOnly.FromDateTime(began.Date), settings), began, waited[i]);
        }

        clock.GoOn();
    }

    /// <summary>A lesson that has not begun.</summary>
    public static async Task<Lesson> Make(RecordStore store, SchoolClass school, DateOnly day, LessonSettings? settings = null, AcceptedNumbers? learned = null)
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        var lesson = new Lesson(
            RecordId.Draw(), school.Id, practical.Id, practical.Version, practical.SourceText, PlanSnapshot.Text(Words with { Learned = learned }), day, "Lab 2", 4, 100,
            settings ?? new LessonSettings(false, true, false));
        Assert.IsType<ChangeResult.Done>(await store.AddLesson(lesson, By, Cancel));
        return lesson;
    }

    public static async Task<SchoolClass> Class(RecordStore store, string name)
    {
        var school = new SchoolClass(RecordId.Draw(), "2025/26", name, namesForgotten: false);
        Assert.IsType<ChangeResult.Done>(await store.AddClass(school, By, Cancel));
        return school;
    }

    /// <summary>Group by group: empty, filled, lit at minute 12, out at 30, and weighed so much later on a balance that nobody else used.</summary>
    private static async Task Write(RecordStore store, ShiftedClock clock, Lesson lesson, DateTimeOffset began, double waited)
    {
        await Append(0, new JournalCell(0, 1, Acts.Began), new EntryContent.Happening(""), Visitor.TeachersDevice);
        for (int group = 1; group <= 4; group++)
        {
            string device = $"tablet {group}";
            await Append(6 + group, new JournalCell(group, 1, "empty"), Reading("30.10", group), device);
            await Append(9 + group, new JournalCell(group, 1, "before"), Reading("30.34", group), device);
            await Append(12 + group, new JournalCell(group, 1, Acts.FlameOn), new EntryContent.Happening(""), device);
            await Append(30 + group, new JournalCell(group, 1, Acts.FlameOut), new EntryContent.Happening(""), device);
            await Append(30 + group + waited + (0.3 * group), new JournalCell(group, 1, "after"), Reading("30.49", group), device);
        }

        await Append(95, new JournalCell(0, 1, Acts.Ended), new EntryContent.Happening(""), Visitor.TeachersDevice);

        async Task Append(double minute, JournalCell cell, EntryContent content, string device)
        {
            clock.Pretend(began.AddMinutes(minute));
            Assert.IsType<AppendResult.Added>(await store.Append(lesson.Id, new JournalEntry(NewEntryId.Draw(), cell, content, device, began.AddMinutes(minute)), Cancel));
        }
    }

    private static EntryContent.Reading Reading(string written, int group) => new(
        WrittenNumber.TryParse(written, out WrittenNumber number) ? number : throw new ArgumentException(written, nameof(written)), "g", ((char)('A' + group)).ToString(CultureInfo.InvariantCulture), null);
}
