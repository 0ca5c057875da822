using System.Buffers.Binary;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Calx.App.Input;
using Calx.App.Live;
using Calx.App.Serving;
using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Records;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Demo;

/// <summary>
/// Fills empty records with an invented school: a class half-way through a lesson, six lessons of the same practical in two earlier
/// years, two balances with their checks.
/// </summary>
/// <param name="store">The records, empty.</param>
/// <param name="clock">The clock of the records, which is set back meanwhile.</param>
public sealed class DemoLesson(RecordStore store, ShiftedClock clock)
{
    /// <summary>How far the lesson is, in min.</summary>
    public const double Minute = 52;

    private const string By = "demo";

    /// <summary>The class whose calculations are there to be marked.</summary>
    private const string Answering = "9A";

    /// <summary>In min: crucibles cool longer in this school than the practical's file says, so that there is something to learn.</summary>
    private static readonly StepMinutes Cooling = new(11, 14.5, 24);

    /// <summary>Years ago, class, seed, and days after the day of the year that it is today.</summary>
    private static readonly (int Years, string Class, ulong Seed, int Days)[] Earlier =
        [(2, "9C", 5, 9), (2, "9B", 6, 11), (2, "9F", 7, 16), (1, "9C", 12, 3), (1, "9F", 13, 4), (1, "9A", 11, 9)];

    private const int Groups = 12;
    private const int LessonMinutes = 100;
    private const ulong Seed = 20;

    private static readonly string[] Names =
    [
        "Ada", "Bo", "Cleo", "Dev", "Esme", "Finn", "Gwen", "Hari", "Ines", "Jude", "Kit", "Lena", "Milo", "Nia", "Otis", "Pia", "Quinn", "Rafi", "Suki", "Theo", "Uma", "Vito", "Wren", "Yusuf",
    ];

    private static readonly string[] EarlierNames =
    [
        "Ana", "Bilal", "Carys", "Dara", "Eli", "Freya", "Goran", "Hana", "Idris", "Joni", "Kaya", "Leo", "Mina", "Noor", "Orla", "Petra", "Rosa", "Samir", "Tilda", "Umar", "Vera", "Will", "Yara", "Zeb",
    ];

    /// <summary>Writes it and returns the page to open.</summary>
    public async Task<string> Write(CancellationToken cancellation)
    {
        DateTimeOffset now = clock.GetUtcNow();
        await WriteBalances(now, cancellation);
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        await WriteEarlier(practical, now, cancellation);
        RecordId lesson = await WriteLive(practical, now, cancellation);
        clock.GoOn();
        return $"/lessons/{lesson}/live";
    }

    private async Task WriteBalances(DateTimeOffset now, CancellationToken cancellation)
    {
        clock.Pretend(now.AddYears(-2));
        (RecordId a, RecordId b) = (RecordId.Draw(), RecordId.Draw());
        await store.AddBalance(new KeptBalance(a, "A", "two decimals, by the window", "0.01"), By, cancellation);
        await store.AddBalance(new KeptBalance(b, "B", "two decimals, by the door", "0.01"), By, cancellation);
        // B drifts: one step in two years.
        string[] shownByA = ["50.00", "50.00", "50.01", "50.00", "50.00", "49.99"];
        string[] shownByB = ["50.00", "50.00", "50.01", "50.01", "50.02", "50.02"];
        for (int i = 0; i < shownByA.Length; i++)
        {
            DateTimeOffset at = now.AddMonths(-22 + (4 * i));
            clock.Pretend(at);
            await store.AddCheck(new BalanceCheck(RecordId.Draw(), a, at, Number("50.00"), Number(shownByA[i]), "technician", ""), By, cancellation);
            await store.AddCheck(new BalanceCheck(RecordId.Draw(), b, at, Number("50.00"), Number(shownByB[i]), "technician", ""), By, cancellation);
        }
    }

    private async Task WriteEarlier(Practical practical, DateTimeOffset now, CancellationToken cancellation)
    {
        foreach ((int years, string name, ulong seed, int days) in Earlier)
        {
            DateTimeOffset began = now.AddYears(-years).AddDays(days);
            clock.Pretend(began);
            SchoolClass school = await AddClass(Year(began), name, cancellation);
            if (name == Answering)
            {
                await AddMembers(school, EarlierNames, cancellation);
            }

            await WriteLesson(school, practical, began, LessonMinutes, seed, cancellation);
        }
    }

    private async Task AddMembers(SchoolClass school, string[] names, CancellationToken cancellation)
    {
        for (int i = 0; i < names.Length; i++)
        {
            await store.PutMember(new Member(school.Id, i + 1, names[i]), By, cancellation);
        }
    }

    private async Task<SchoolClass> AddClass(string year, string name, CancellationToken cancellation)
    {
        var added = new SchoolClass(RecordId.Draw(), year, name, namesForgotten: false);
        await store.AddClass(added, By, cancellation);
        return added;
    }

    private async Task<RecordId> WriteLive(Practical practical, DateTimeOffset now, CancellationToken cancellation)
    {
        DateTimeOffset began = now.AddMinutes(-Minute);
        clock.Pretend(began.AddDays(-3));
        SchoolClass school = await AddClass(Year(now), "9F", cancellation);
        await AddMembers(school, Names, cancellation);
        clock.Pretend(began.AddMinutes(-5));
        return await WriteLesson(school, practical, began, Minute, Seed, cancellation);
    }

    private async Task<RecordId> WriteLesson(
        SchoolClass school, Practical practical, DateTimeOffset began, double until, ulong seed, CancellationToken cancellation)
    {
        bool isOver = until >= LessonMinutes;
        PlanWords words = Words;
        PlanSettings plan = new PlanCheck(practical, words).Choice()!.Settings;
        var lesson = new Lesson(
            RecordId.Draw(), school.Id, practical.Id, practical.Version, practical.SourceText, PlanSnapshot.Text(words),
            DateOnly.FromDateTime(began.LocalDateTime), "Lab 2", Groups, LessonMinutes, new LessonSettings(Assessed: false, DecideFirst: true, Trial: false),
            "L. Marsh", "3");
        await store.AddLesson(lesson, By, cancellation);
        await store.Sign(new Signature(practical.Id, practical.Version, SafetyFingerprint.Of(plan), "LM", clock.GetUtcNow()), By, cancellation);
        await store.OpenDoor(lesson.Id, By, cancellation);
        if (isOver)
        {
            await store.CloseDoor(lesson.Id, By, cancellation);
        }

        PlanSettings held = isOver ? plan.WithTime("cool", Cooling) : plan;
        LessonTimeline timeline = LessonForecast.Of(held, AtomicWeights.Iupac2024, seed, lessons: 200).Typical;
        SimulatedClass drawn = SimulatedClass.Draw(
            new Circumstances(practical, plan.AllConditions), AtomicWeights.Iupac2024, new SimulationPlan(Groups, plan.Balances[0]), seed, cancellation: cancellation);
        await Append(lesson.Id, 0, Happening(0, Acts.Began), began, cancellation);
        for (int member = 1; member <= Names.Length; member++)
        {
            await Append(lesson.Id, 0.5, Seat(member, ((member - 1) / 2) + 1), began, cancellation);
        }

        IEnumerable<DemoEntry> entries = new DemoScript(plan, timeline, drawn, name => IdOf($"{lesson.Id}/{name}"), taps: isOver).Entries();
        foreach (DemoEntry entry in entries.Where(e => e.Minute <= until))
        {
            await Append(lesson.Id, entry.Minute, entry, began, cancellation);
        }

        if (isOver)
        {
            await Append(lesson.Id, LessonMinutes, Happening(LessonMinutes, Acts.Ended), began, cancellation);
        }

        if (school.Name == Answering)
        {
            DateTimeOffset over = began.AddMinutes(LessonMinutes);
            await store.Append(lesson.Id, (MarkingSettings.Usual with { Asked = DemoAnswers.Asked }).Entry(NewEntryId.Draw(), over), cancellation);
            foreach (DemoEntry entry in new DemoAnswers(drawn, name => IdOf($"{lesson.Id}/{name}")).Entries(EarlierNames.Length))
            {
                await Append(lesson.Id, entry.Minute, entry, began, cancellation);
            }
        }

        return lesson.Id;
    }

    private async Task Append(RecordId lesson, double minute, DemoEntry entry, DateTimeOffset began, CancellationToken cancellation)
    {
        clock.Pretend(began.AddMinutes(minute));
        await store.Append(lesson, new JournalEntry(entry.Id, entry.Cell, entry.Content, entry.Device, began.AddMinutes(minute)), cancellation);
    }

    private static DemoEntry Happening(double minute, string what) =>
        new(minute, new JournalCell(0, 1, what), new EntryContent.Happening(""), NewEntryId.Draw(), Visitor.TeachersDevice);

    private static DemoEntry Seat(int member, int group) => new(
        0.5, new JournalCell(0, 1, Acts.SeatOf, member), new EntryContent.Happening(group.ToString(CultureInfo.InvariantCulture)), NewEntryId.Draw(), Visitor.TeachersDevice);

    private static EntryId IdOf(string name)
    {
        byte[] hash = SHA256.HashData(Encoding.UTF8.GetBytes(name));
        return EntryId.Of(BinaryPrimitives.ReadUInt128BigEndian(hash));
    }

    private static WrittenNumber Number(string text) => WrittenNumber.TryParse(text, out WrittenNumber number) ? number : throw new ArgumentException(text, nameof(text));

    /// <summary>A school year as it is written: from September.</summary>
    private static string Year(DateTimeOffset time)
    {
        int first = time.Month >= 9 ? time.Year : time.Year - 1;
        return string.Create(CultureInfo.InvariantCulture, $"{first}/{(first + 1) % 100:00}");
    }

    private static PlanWords Words => new()
    {
        Groups = Groups, Students = Names.Length, Balances = 2, Resolutions = ["0.01"], Repeatability = null, Minutes = LessonMinutes, Mass = null, Trials = 1, Heatings = 2,
        NoEmpty = false, Prepared = true, Stagger = 0, Wanted = [], Conditions = [], Without = [], Moved = ["brief", "work-out"], Alongside = ["clear-up"], Times = [], Kit = [], Prices = [], Metre = null,
    };
}
