using System.Globalization;
using System.Security.Cryptography;
using Calx.App.Input;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Practicals.Definition;
using Calx.Records;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.Rehearsal;

/// <summary>
/// A lesson that is about to begin: class 9F of Larkmoor School (invented, both), two balances, the safety check signed, the
/// door open, the clock started. It is written straight into the records, for proofs that are not about how a lesson is made.
/// </summary>
/// <param name="Id">The lesson.</param>
/// <param name="Code">What a phone joins with.</param>
/// <param name="StationCode">What a balance station joins with.</param>
/// <param name="Groups">How many groups.</param>
public sealed record RehearsedLesson(RecordId Id, string Code, string StationCode, int Groups)
{
    private const string By = "rehearsal";
    private const int LessonMinutes = 100;

    /// <summary>Writes one into a program's data folder, which must not be serving yet.</summary>
    public static async Task<RehearsedLesson> Write(string dataFolder, RehearsalSettings? settings = null)
    {
        await using RecordStore store = await Open(dataFolder);
        return await Write(store, settings ?? new RehearsalSettings());
    }

    /// <summary>Writes one into open records.</summary>
    public static async Task<RehearsedLesson> Write(RecordStore store, RehearsalSettings settings)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(settings);
        SchoolClass school = await ClassIn(store, settings);
        await Balances(store);
        Practical practical = BuiltInPracticals.Find(settings.PracticalId)!;
        PlanWords words = WordsFor(settings.Groups, practical);
        var lesson = new Lesson(
            RecordId.Draw(), school.Id, practical.Id, practical.Version, practical.SourceText, PlanSnapshot.Text(words), DateOnly.FromDateTime(DateTime.Now),
            "Lab 2", settings.Groups, LessonMinutes, new LessonSettings(settings.Assessed, settings.DecideFirst, Trial: false));
        await store.AddLesson(lesson, By);
        await store.Sign(
            new Signature(practical.Id, practical.Version, SafetyFingerprint.Of(new PlanCheck(practical, words).Choice()!.Settings), "LM", DateTimeOffset.UtcNow), By);
        LessonDoor door = (await store.OpenDoor(lesson.Id, By))!;
        if (settings.Begins)
        {
            await Happen(store, lesson.Id, Acts.Began);
            await Happen(store, lesson.Id, Acts.WorkBegan);
        }

        return new RehearsedLesson(lesson.Id, door.Code, door.StationCode, settings.Groups);
    }

    /// <summary>Opens the records of a data folder, as the program does.</summary>
    public static Task<RecordStore> Open(string dataFolder) =>
        RecordStore.Open(new StoreSettings(new ServeOptions(dataFolder).Connection), TimeProvider.System);

    private static async Task<SchoolClass> ClassIn(RecordStore store, RehearsalSettings settings)
    {
        var school = new SchoolClass(RecordId.Draw(), "2026/27", settings.ClassName, namesForgotten: false);
        await store.AddClass(school, By);
        foreach ((int index, string name) in settings.Names.Index())
        {
            await store.PutMember(new Member(school.Id, index + 1, name), By);
        }

        return school;
    }

    private static async Task Balances(RecordStore store)
    {
        if ((await store.Balances()).Count == 0)
        {
            await store.AddBalance(new KeptBalance(RecordId.Draw(), "A", "two decimals, by the window", "0.01"), By);
            await store.AddBalance(new KeptBalance(RecordId.Draw(), "B", "two decimals, by the door", "0.01"), By);
        }
    }

    private static async Task Happen(RecordStore store, RecordId lesson, string what)
    {
        var id = EntryId.Of(BitConverter.ToUInt128(RandomNumberGenerator.GetBytes(16)));
        await store.Append(
            lesson, new JournalEntry(id, new JournalCell(0, 1, what), new EntryContent.Happening(""), Visitor.TeachersDevice, DateTimeOffset.UtcNow));
    }

    private static PlanWords WordsFor(int groups, Practical practical) => new()
    {
        Groups = groups, Students = 2 * groups, Balances = 2, Resolutions = ["0.01"], Repeatability = null, Minutes = LessonMinutes, Mass = null, Trials = 1,
        Heatings = practical.Findings.ConstantMass is null ? null : 2, NoEmpty = false, Prepared = true, Stagger = 0, Wanted = [], Conditions = [], Without = [], Moved = [], Alongside = [], Times = [], Kit = [],
        Prices = [], Metre = null,
    };
}
