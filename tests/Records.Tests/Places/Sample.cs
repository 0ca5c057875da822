using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.Records.Tests.Places;

/// <summary>Class 9F of Larkmoor School, which is invented, and what it does on a day.</summary>
public static class Sample
{
    public static readonly DateTimeOffset Noon = new(2026, 3, 4, 12, 0, 0, TimeSpan.Zero);

    public static readonly RecordId ClassId = RecordId.Parse("9f0000000001");

    public static readonly RecordId LessonId = RecordId.Parse("9f0000000002");

    public static readonly RecordId BalanceId = RecordId.Parse("9f0000000003");

    public const string By = "the teacher";

    public static SchoolClass Class { get; } = new(ClassId, "2025/26", "9F", false);

    public static KeptBalance Balance { get; } = new(BalanceId, "A", "by the window", "0.01");

    public static Lesson Lesson { get; } = OfId(LessonId);

    public static Lesson OfId(RecordId id, string plan = """{"groups":12}""", int day = 4, string room = "Lab 2") => new(
        id, ClassId, "magnesium-oxide", 1, "id: magnesium-oxide\nname: 'Burning magnesium'\n", plan, new DateOnly(2026, 3, day), room, 12, 60, new LessonSettings(false, true, false));

    public static JournalEntry Reading(int id, int group, string what, string written, int? replaces = null, string device = "tablet 3") => new(
        Id(id),
        new JournalCell(group, 1, what),
        new EntryContent.Reading(new WrittenNumber(decimal.Parse(written, CultureInfo.InvariantCulture)), "g", "A", "7"),
        device,
        Noon,
        replaces is int other ? Id(other) : null,
        replaces is null ? null : "looked again at the display");

    public static JournalEntry Entry(int id, JournalCell cell, EntryContent content) => new(Id(id), cell, content, "tablet 3", new DateTimeOffset(2026, 3, 4, 13, 4, 5, 678, TimeSpan.FromHours(1)));

    public static EntryId Id(int number) => EntryId.Of((UInt128)number);

    /// <summary>One entry of each kind.</summary>
    public static JournalEntry[] OfEachKind() =>
    [
        Reading(1, 1, "empty", "30.10"),
        Reading(2, 1, "before", "30.43"),
        Reading(3, 1, "before", "30.34", replaces: 2),
        Entry(4, new JournalCell(1, 1, "smoke-seen"), new EntryContent.Observation(true)),
        Entry(5, new JournalCell(1, 1, "ratio", 7), new EntryContent.Answer("1 : 1,\n\"about\"; =1+1", "mol")),
        Entry(6, new JournalCell(1, 1, "ratio", 7), new EntryContent.Mark(1.50m, 2m, "units – missing ½ ✓")),
        Entry(7, new JournalCell(1, 1, "ratio", 8), new EntryContent.Mark(0m, 2m, null)),
        Entry(8, new JournalCell(1, 1, "after"), new EntryContent.Note("lid cracked while it cooled")),
        Entry(9, new JournalCell(0, 1, "bell"), new EntryContent.Happening("12:55")),
        Entry(10, new JournalCell(1, 1, "flame-out"), new EntryContent.Happening("")),
        Entry(11, new JournalCell(2, 2, "empty"), new EntryContent.Reading(new WrittenNumber(31.0m), "g", null, null)),
    ];

    public static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>A class, its balance and a lesson.</summary>
    public static async Task Prepare(RecordStore store)
    {
        await Done(store.AddClass(Class, By, Cancel));
        await Done(store.AddBalance(Balance, By, Cancel));
        await Done(store.AddLesson(Lesson, By, Cancel));
    }

    /// <summary>As <see cref="Prepare"/>, with two members, a check, a signature and an entry of each kind.</summary>
    public static async Task Fill(RecordStore store)
    {
        await Prepare(store);
        await Done(store.PutMember(new Member(ClassId, 1, "Ada"), By, Cancel));
        await Done(store.PutMember(new Member(ClassId, 2, "Bo"), By, Cancel));
        await Done(store.AddCheck(
            new BalanceCheck(RecordId.Parse("9f0000000004"), BalanceId, Noon, new(50.00m), new(50.01m), "technician", "after moving it"), By, Cancel));
        await Done(store.Sign(new Signature("magnesium-oxide", 1, "abc", "LM", Noon), By, Cancel));
        foreach (JournalEntry entry in OfEachKind())
        {
            Assert.IsType<AppendResult.Added>(await store.Append(LessonId, entry, Cancel));
        }
    }

    public static async Task Done(Task<ChangeResult> change) => Assert.IsType<ChangeResult.Done>(await change);

    public static async Task<string> Refused(Task<ChangeResult> change) => Assert.IsType<ChangeResult.Refused>(await change).Reason;
}
