using Calx.App.Input;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.App.Tests.Serving;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using Calx.Records;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Pages.Students;

/// <summary>A lesson of class 9F of Larkmoor School (both invented) on the real program: four groups, two balances, door open.</summary>
internal sealed class Taught : IAsyncDisposable
{
    private const string By = "teacher";

    private Taught(OpenHost host, Lesson lesson, LessonDoor door) => (Host, Lesson, Door) = (host, lesson, door);

    /// <summary>The program.</summary>
    public OpenHost Host { get; }

    /// <summary>The lesson.</summary>
    public Lesson Lesson { get; }

    /// <summary>Its codes.</summary>
    public LessonDoor Door { get; }

    /// <summary>Starts it.</summary>
    /// <param name="assessed">Whether it is assessed.</param>
    /// <param name="decideFirst">Whether students decide first.</param>
    /// <param name="signed">Whether the safety check is signed.</param>
    /// <param name="practicalId">Which practical.</param>
    public static async Task<Taught> Start(bool assessed = false, bool decideFirst = true, bool signed = true, string practicalId = "magnesium-oxide")
    {
        OpenHost host = await OpenHost.Start();
        CancellationToken none = CancellationToken.None;
        var school = new SchoolClass(RecordId.Draw(), "2026/27", "9F", namesForgotten: false);
        await host.Store.AddClass(school, By, none);
        await host.Store.AddBalance(new KeptBalance(RecordId.Draw(), "A", "by the window", "0.01"), By, none);
        await host.Store.AddBalance(new KeptBalance(RecordId.Draw(), "C", "by the door", "0.001"), By, none);
        Practical practical = BuiltInPracticals.Find(practicalId)!;
        var lesson = new Lesson(
            RecordId.Draw(), school.Id, practical.Id, practical.Version, practical.SourceText, PlanSnapshot.Text(WordsFor(practical)),
            new DateOnly(2026, 11, 26), "Lab 2", 4, 100, new LessonSettings(assessed, decideFirst, Trial: false));
        await host.Store.AddLesson(lesson, By, none);
        if (signed)
        {
            string fingerprint = SafetyFingerprint.Of(new PlanCheck(practical, WordsFor(practical)).Choice()!.Settings);
            await host.Store.Sign(new Signature(practical.Id, practical.Version, fingerprint, "LM", DateTimeOffset.UnixEpoch), By, none);
        }

        return new Taught(host, lesson, (await host.Store.OpenDoor(lesson.Id, By, none))!);
    }

    /// <summary>A device that has joined and, above 0, taken a group.</summary>
    public async Task<Device> Device(int group = 0, bool isStation = false)
    {
        var device = new Device(Host.Browser());
        await device.Send("/join", ("code", isStation ? Door.StationCode : Door.Code));
        if (group > 0)
        {
            await device.Send("/groups", ("group", FormattableString.Invariant($"{group}")));
        }

        return device;
    }

    /// <summary>The lesson in the program's memory.</summary>
    public async Task<LessonRoom> Room() => (await Host.Services.GetRequiredService<LessonRooms>().Find(Lesson.Id, CancellationToken.None))!;

    /// <summary>The teacher writes something, in the program: the next page shows it.</summary>
    public async Task Teacher(string what, string text = "", int group = 0) => await (await Room()).Append(
        new JournalEntry(
            Entries.NewId(), new JournalCell(group, 1, what), new EntryContent.Happening(text), Visitor.TeachersDevice, DateTimeOffset.UnixEpoch),
        CancellationToken.None);

    /// <summary>The journal so far, without devices that came and went.</summary>
    public async Task<IReadOnlyList<JournalEntry>> Journal() =>
    [
        .. (await Host.Store.Entries(Lesson.Id, 0, CancellationToken.None)).Select(k => k.Entry)
            .Where(e => e.Cell.What is not (Acts.DeviceIn or Acts.DeviceOut)),
    ];

    public ValueTask DisposeAsync() => Host.DisposeAsync();

    private static PlanWords WordsFor(Practical practical) => Words with { Heatings = Math.Min(2, PlanSettings.MostHeatings(practical)) };

    private static PlanWords Words => new()
    {
        Groups = 4, Students = 8, Balances = 2, Resolutions = ["0.01"], Repeatability = null, Minutes = 100, Mass = null, Trials = 1,
        Heatings = 2, NoEmpty = false, Prepared = true, Stagger = 0, Wanted = [], Conditions = [], Without = [], Moved = [],
        Alongside = [], Times = [], Kit = [], Prices = [], Metre = null,
    };
}
