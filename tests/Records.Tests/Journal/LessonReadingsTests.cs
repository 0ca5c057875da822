using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;
using Calx.Records.Journal;

namespace Calx.Records.Tests.Journal;

/// <summary>From what is typed in a lesson to what the engine finds.</summary>
public sealed class LessonReadingsTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 4, 12, 0, 0, TimeSpan.Zero);

    private int next = 1;

    /// <summary>By hand, as in any textbook: 30.00, 30.24, 30.38 g give 0.24 g of magnesium and 0.14 g of oxygen, 0.14/15.999 over
    /// 0.24/24.305, 0.886.</summary>
    [Fact]
    public void Readings_as_they_came_give_the_result_worked_out_by_hand()
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        var journal = new LessonJournal();
        Type(journal, 1, "after2", "30.38");
        Type(journal, 1, "before", "30.24");
        EntryId wrong = Type(journal, 1, "after", "30.73");
        Type(journal, 1, "empty", "30.00");
        Type(journal, 1, "after", "30.37", wrong);
        Type(journal, 2, "empty", "29.10");
        journal.Append(new JournalEntry(EntryId.Of((UInt128)next++), new JournalCell(1, 1, "smoke-seen"), new EntryContent.Observation(true), "phone 1", Noon), Noon);
        journal.Append(new JournalEntry(EntryId.Of((UInt128)next++), new JournalCell(1, 1, "cracked"), new EntryContent.Observation(false), "phone 1", Noon), Noon);

        IReadOnlyList<GroupReadings> groups = LessonReadings.Of(journal, practical);
        Assert.Equal(["G1", "G2"], groups.Select(g => g.Name));
        Assert.Equal(["empty 30.00 g", "before 30.24 g", "after 30.37 g", "after2 30.38 g"], groups[0].Readings.Select(r => r.ToString()));
        Assert.Equal(["smoke-seen"], groups[0].Remarks.Observations);

        var readings = new ClassReadings(practical.Id, groups, new BalanceReport(new BalanceOptions(0.01m, null), new Dictionary<string, decimal>()));
        ClassFindings findings = ClassAnalysis.Of(practical, readings, AtomicWeights.Iupac2024, new AnalysisOptions(Causes: false, []));
        Assert.Equal(0.14 / 15.999 / (0.24 / 24.305), findings.Groups[0].Find("moleRatio")!.Value, 3e-4);
        Assert.Null(findings.Groups[1].Find("moleRatio"));
    }

    [Fact]
    public void Trials_are_rows_of_their_own_and_an_unknown_cell_stays_in_the_journal_only()
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        var journal = new LessonJournal();
        Type(journal, 3, "empty", "30.00");
        Type(journal, 3, "empty", "31.00", trial: 2);
        Type(journal, 3, "no-such-reading", "1.00");
        IReadOnlyList<GroupReadings> groups = LessonReadings.Of(journal, practical);
        Assert.Equal([("G3", "1", 1), ("G3", "2", 1)], groups.Select(g => (g.Name, g.Trial!, g.Readings.Count)));
        Assert.Equal(3, journal.Entries.Count);
    }

    [Fact]
    public void What_was_seen_can_be_taken_back_and_seen_again_and_the_last_word_holds()
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        var journal = new LessonJournal();
        foreach (bool seen in (bool[])[true, false, true, false])
        {
            journal.Append(new JournalEntry(EntryId.Of((UInt128)next++), new JournalCell(1, 1, "smoke-seen"), new EntryContent.Observation(seen), "phone 1", Noon), Noon);
            Assert.Equal(seen ? ["smoke-seen"] : [], LessonReadings.Of(journal, practical).Single().Remarks.Observations);
        }
    }

    private EntryId Type(LessonJournal journal, int group, string what, string written, EntryId? replaces = null, int trial = 1)
    {
        EntryId id = EntryId.Of((UInt128)next++);
        journal.Append(
            new JournalEntry(
                id,
                new JournalCell(group, trial, what),
                new EntryContent.Reading(new WrittenNumber(decimal.Parse(written, CultureInfo.InvariantCulture)), "g", null, null),
                "phone 1",
                Noon,
                replaces,
                replaces is null ? null : "misread"),
            Noon);
        return id;
    }
}
