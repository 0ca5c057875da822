using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Records.Journal;
using Calx.Tests;
using CsCheck;

namespace Calx.Records.Tests.Journal;

public sealed class LessonJournalTests
{
    private static readonly DateTimeOffset Noon = new(2026, 3, 4, 12, 0, 0, TimeSpan.Zero);

    /// <summary>Entries of a small class: few cells, so that many meet; corrections of earlier ones, of later ones and of none.</summary>
    private static readonly Gen<JournalEntry[]> Sent =
        Gen.Select(Gen.Int[1, 3], Gen.Int[0, 2], Gen.Int[0, 999], Gen.Int[0, 30]).Array[1, 25].Select(rows => rows.Select((row, i) =>
        {
            (int group, int what, int digits, int of) = row;
            EntryId? replaces = of < i ? Id(of + 1) : of == 30 ? Id(900) : null;
            return Reading(i + 1, group, what switch { 0 => "empty", 1 => "before", _ => "after" }, (digits / 100m).ToString("F2", CultureInfo.InvariantCulture), replaces);
        }).ToArray());

    [Fact]
    public void A_correction_is_current_and_what_it_replaces_stays_with_its_reason()
    {
        var journal = new LessonJournal();
        journal.Append(Reading(1, 4, "after", "30.83"), Noon);
        journal.Append(Reading(2, 4, "after", "30.38", replaces: Id(1)), Noon.AddMinutes(3));
        CellState cell = journal.Find(new JournalCell(4, 1, "after"))!;
        Assert.Equal(("30.38", false), (Shown(cell.Current), cell.IsContested));
        Assert.Equal(["30.83", "30.38"], cell.History.Select(Shown));
        Assert.Equal("looked again at the display", cell.Current.Entry.Reason);
        Assert.Equal(2, journal.Entries.Count);
    }

    [Fact]
    public void A_second_reading_of_the_same_cell_pushes_nothing_aside()
    {
        var journal = new LessonJournal();
        journal.Append(Reading(1, 2, "before", "30.24"), Noon);
        journal.Append(Reading(2, 2, "before", "30.42"), Noon);
        CellState cell = journal.Find(new JournalCell(2, 1, "before"))!;
        Assert.Equal(("30.24", true, 2), (Shown(cell.Current), cell.IsContested, cell.Standing.Count));
        // Two people who correct the same entry at once: both corrections stand until somebody decides.
        journal.Append(Reading(3, 2, "before", "30.22", replaces: Id(1)), Noon);
        journal.Append(Reading(4, 2, "before", "30.25", replaces: Id(1)), Noon);
        Assert.Equal(["30.42", "30.22", "30.25"], journal.Find(cell.Cell)!.Standing.Select(Shown));
    }

    [Fact]
    public void What_is_set_aside_no_longer_counts_and_stays_with_the_reason()
    {
        var journal = new LessonJournal();
        JournalEntry first = Reading(1, 2, "before", "27.63"), second = Reading(2, 2, "before", "26.63");
        journal.Append(first, Noon);
        journal.Append(second, Noon);
        journal.Append(JournalEntry.SettingAside(Id(3), first, "teacher", Noon, "the paper record says so"), Noon);
        CellState cell = journal.Find(first.Cell)!;
        Assert.Equal(("26.63", false, true), (Shown(cell.Current), cell.IsContested, cell.IsCorrected));
        Assert.Equal("the paper record says so", cell.ReplacerOf(cell.History[0])!.Entry.Reason);
        Assert.Equal(3, cell.History.Count);
        // A correction beside one that was set aside counts at once, and what comes later does not push it aside.
        journal.Append(JournalEntry.SettingAside(Id(4), second, "teacher", Noon, "misread"), Noon);
        journal.Append(Reading(5, 2, "before", "27.64", replaces: Id(1)), Noon);
        journal.Append(Reading(6, 2, "before", "27.99"), Noon);
        Assert.Equal(("27.64", "27.99"), (Shown(journal.Find(first.Cell)!.Current), Shown(journal.Find(first.Cell)!.Rivals.Single())));
    }

    [Theory]
    [InlineData("tablet 3", "30.24", "B", false)]
    [InlineData("tablet 3", "30.42", "A", true)]
    [InlineData("tablet 4", "30.24", "A", false)]
    [InlineData("tablet 4", "30.24", "B", true)]
    [InlineData("tablet 3", "30.240", "A", true)]
    public void What_says_the_same_twice_needs_no_decision(string device, string written, string balance, bool contested)
    {
        var journal = new LessonJournal();
        journal.Append(Reading(1, 2, "before", "30.24"), Noon);
        var content = new EntryContent.Reading(new WrittenNumber(decimal.Parse(written, CultureInfo.InvariantCulture)), "g", balance, null);
        journal.Append(new JournalEntry(Id(2), new JournalCell(2, 1, "before"), content, device, Noon), Noon);
        CellState cell = journal.Find(new JournalCell(2, 1, "before"))!;
        Assert.Equal((contested, false), (cell.IsContested, cell.IsCorrected));
    }

    [Fact]
    public void A_correction_of_another_cell_or_of_nothing_replaces_nothing()
    {
        var journal = new LessonJournal();
        journal.Append(Reading(1, 1, "empty", "30.00"), Noon);
        journal.Append(Reading(2, 2, "empty", "31.00", replaces: Id(1)), Noon);
        journal.Append(Reading(3, 1, "before", "30.24", replaces: Id(77)), Noon);
        Assert.Equal(["30.00", "30.24", "31.00"], journal.Table.Select(c => Shown(c.Current)).Order(StringComparer.Ordinal));
        Assert.DoesNotContain(journal.Table, c => c.IsContested);
    }

    [Fact]
    public void Sent_twice_is_one_entry_and_another_entry_under_its_id_is_refused()
    {
        var journal = new LessonJournal();
        JournalEntry entry = Reading(1, 1, "empty", "15.10");
        var added = Assert.IsType<AppendResult.Added>(journal.Append(entry, Noon));
        var known = Assert.IsType<AppendResult.Known>(journal.Append(Reading(1, 1, "empty", "15.10"), Noon.AddHours(1)));
        Assert.Equal(added.Kept, known.Kept);
        // 15.1 is another reading than 15.10.
        Assert.IsType<AppendResult.Refused>(journal.Append(Reading(1, 1, "empty", "15.1"), Noon));
        Assert.Equal("15.10", Shown(Assert.Single(journal.Entries)));
    }

    [Fact]
    public void Whatever_is_sent_nothing_is_lost_and_sending_again_changes_nothing()
    {
        Sent.Always(
            sent =>
            {
                var once = new LessonJournal();
                var twice = new LessonJournal();
                foreach (JournalEntry entry in sent)
                {
                    once.Append(entry, Noon);
                    twice.Append(entry, Noon);
                    twice.Append(sent[0], Noon.AddMinutes(1));
                    twice.Append(entry, Noon.AddMinutes(2));
                }

                Assert.Equal(sent.Select(e => e.Id), once.Entries.Select(e => e.Entry.Id));
                Assert.Equal(sent.Length, once.Table.Sum(c => c.History.Count));
                Assert.Equal(once.Entries, twice.Entries);
                Assert.All(once.Table, c => Assert.NotEmpty(c.Standing));
                Assert.Equal(once.Table.Select(c => (c.Cell, c.Current)), twice.Table.Select(c => (c.Cell, c.Current)));
            },
            iter: 400);
    }

    /// <summary>The slow obvious version: an entry stands unless a later one of its cell names it.</summary>
    [Fact]
    public void What_stands_is_what_no_later_entry_of_its_cell_names()
    {
        Sent.Always(
            sent =>
            {
                var journal = new LessonJournal();
                foreach (JournalEntry entry in sent)
                {
                    journal.Append(entry, Noon);
                }

                foreach (CellState cell in journal.Table)
                {
                    EntryId[] expected = [.. sent.Where((e, i) => e.Cell == cell.Cell && !sent.Skip(i + 1).Any(l => l.Cell == e.Cell && l.Replaces == e.Id)).Select(e => e.Id)];
                    Assert.Equal(expected, cell.Standing.Select(e => e.Entry.Id));
                }
            },
            iter: 400);
    }

    [Theory]
    [InlineData("00000000000000000000000000000001", true)]
    [InlineData("7F3A00000000000000000000000000FE", true)]
    [InlineData("00000000000000000000000000000000", false)]
    [InlineData("1", false)]
    [InlineData("+0000000000000000000000000000001", false)]
    [InlineData("7f3a00000000000000000000000000fg", false)]
    [InlineData(null, false)]
    public void An_id_is_thirty_two_hexadecimal_digits(string? text, bool read)
    {
        Assert.Equal(read, EntryId.TryParse(text, out EntryId id));
        Assert.Equal(read, id != default);
        Assert.True(!read || string.Equals(text, id.ToString(), StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void A_correction_needs_a_reason_and_nothing_else_has_one()
    {
        EntryContent content = new EntryContent.Observation(true);
        var cell = new JournalCell(1, 1, "smoke-seen");
        Assert.Throws<ArgumentException>(() => new JournalEntry(Id(1), cell, content, "tablet 3", Noon, Id(2)));
        Assert.Throws<ArgumentException>(() => new JournalEntry(Id(1), cell, content, "tablet 3", Noon, null, "because"));
        Assert.Throws<ArgumentException>(() => new JournalEntry(Id(1), cell, content, "tablet 3", Noon, Id(1), "because"));
        Assert.Throws<ArgumentException>(() => new JournalEntry(Id(1), cell, content, new string('x', 201), Noon));
        Assert.Throws<ArgumentException>(() => new JournalEntry(Id(1), new JournalCell(-1, 1, "smoke-seen"), content, "tablet 3", Noon));
        Assert.Throws<ArgumentException>(() => new JournalEntry(default, cell, content, "tablet 3", Noon));
    }

    private static EntryId Id(int number) => EntryId.Of((UInt128)number);

    private static JournalEntry Reading(int id, int group, string what, string written, EntryId? replaces = null) => new(
        Id(id),
        new JournalCell(group, 1, what),
        new EntryContent.Reading(new WrittenNumber(decimal.Parse(written, CultureInfo.InvariantCulture)), "g", "A", null),
        "tablet 3",
        Noon,
        replaces,
        replaces is null ? null : "looked again at the display");

    private static string Shown(KeptEntry kept) => ((EntryContent.Reading)kept.Entry.Content).Written.ToString();
}
