using System.IO.Compression;
using System.Text;
using Calx.Records.Archive;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Archive;

/// <summary>Writing records out and taking them in.</summary>
public abstract class ArchiveTests(Place place)
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Where the records go that were written out of <paramref name="place"/>: a database of the other kind.</summary>
    protected abstract Place Other { get; }

    [Fact]
    public async Task Everything_comes_back_as_it_was_from_a_database_of_the_other_kind()
    {
        await using RecordStore first = await place.OpenFresh();
        await Sample.Fill(first);
        byte[] zip = await All(first);
        await using RecordStore second = await Other.OpenFresh();
        ImportResult.Taken taken = Assert.IsType<ImportResult.Taken>(await LessonArchive.Read(second, new MemoryStream(zip), Sample.By, Cancel));
        Assert.Empty(taken.Refused);
        // A class, two members, a balance, a check, a signature, a lesson and its entries.
        Assert.Equal((7 + Sample.OfEachKind().Length, 0), (taken.Added, taken.Known));
        Assert.Equal(await first.Entries(Sample.LessonId, 0, Cancel), await second.Entries(Sample.LessonId, 0, Cancel));
        Assert.Equal(Records(zip), Records(await All(second)));
    }

    [Fact]
    public async Task Taking_the_same_in_twice_changes_nothing()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Fill(store);
        byte[] zip = await All(store);
        int lines = (await store.Audit(1000, Cancel)).Count;
        ImportResult.Taken taken = Assert.IsType<ImportResult.Taken>(await LessonArchive.Read(store, new MemoryStream(zip), Sample.By, Cancel));
        Assert.Equal(0, taken.Added);
        Assert.Empty(taken.Refused);
        Assert.Equal(lines, (await store.Audit(1000, Cancel)).Count);
        Assert.Equal(Records(zip), Records(await All(store)));
    }

    [Fact]
    public async Task What_is_kept_is_never_overwritten_by_what_comes_in()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Fill(store);
        byte[] zip = await All(store);
        await Sample.Done(store.RenameClass(Sample.ClassId, "9G", Sample.By, Cancel));
        ImportResult.Taken taken = Assert.IsType<ImportResult.Taken>(await LessonArchive.Read(store, new MemoryStream(zip), Sample.By, Cancel));
        Assert.Equal("class 9F of 2025/26 was not taken: another is kept under its id, and it stays as it is.", Assert.Single(taken.Refused));
        Assert.Equal("9G", (await store.FindClass(Sample.ClassId, Cancel))!.Name);
    }

    [Fact]
    public async Task A_lesson_changed_here_stays_so_and_still_gains_what_was_typed_elsewhere()
    {
        await using RecordStore first = await place.OpenFresh();
        await Sample.Fill(first);
        await using RecordStore second = await Other.OpenFresh();
        await Sample.Prepare(second);
        await Sample.Done(second.ChangeLesson(Sample.OfId(Sample.LessonId, room: "Lab 4"), Sample.By, Cancel));
        ImportResult.Taken taken = Assert.IsType<ImportResult.Taken>(await LessonArchive.Read(second, new MemoryStream(await All(first)), Sample.By, Cancel));
        Assert.Equal($"lesson {Sample.LessonId} of 2026-03-04 was not taken: another is kept under its id, and it stays as it is.", Assert.Single(taken.Refused));
        Assert.Equal("Lab 4", (await second.FindLesson(Sample.LessonId, Cancel))!.Room);
        Assert.Equal((await first.Entries(Sample.LessonId, 0, Cancel)).Select(e => e.Entry), (await second.Entries(Sample.LessonId, 0, Cancel)).Select(e => e.Entry));
    }

    [Fact]
    public async Task The_table_of_readings_calls_groups_what_whoever_knows_the_lesson_calls_them()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        await store.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "30.10"), Cancel);
        using var zip = new MemoryStream();
        await LessonArchive.WriteLesson(store, Sample.LessonId, zip, journal => (group, trial) => $"{group} of {journal.Entries.Count}, start {trial}", Cancel);
        zip.Position = 0;
        using var archive = new ZipArchive(zip);
        Assert.Equal("group,trial,empty\r\n\"1 of 1, start 1\",1,30.10\r\n", Text(archive, $"readings-{Sample.LessonId}.csv"));
    }

    [Fact]
    public async Task Forgotten_names_do_not_come_back_with_an_older_export()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Fill(store);
        byte[] zip = await All(store);
        await Sample.Done(store.ForgetNames(Sample.ClassId, Sample.By, Cancel));
        ImportResult.Taken taken = Assert.IsType<ImportResult.Taken>(await LessonArchive.Read(store, new MemoryStream(zip), Sample.By, Cancel));
        Assert.Equal(3, taken.Refused.Count);
        Assert.Contains($"member 1 of class {Sample.ClassId} was not taken: this class's names were forgotten.", taken.Refused);
        Assert.All(await store.Members(Sample.ClassId, Cancel), m => Assert.Equal("", m.Name));
    }

    [Fact]
    public async Task A_lesson_deleted_while_people_type_in_it_is_gone_whole()
    {
        StoreSettings settings = await place.Fresh();
        await using RecordStore store = await place.Open(settings);
        await using RecordStore other = await place.Open(settings);
        await Sample.Prepare(store);
        Task<AppendResult>[] typed = [.. Enumerable.Range(1, 200).Select(i => Task.Run(() => (i % 2 == 0 ? store : other).Append(Sample.LessonId, Sample.Reading(i, 1, "empty", "30.10"), Cancel)))];
        await typed[20];
        await Sample.Done(store.DeleteLesson(Sample.LessonId, Sample.By, Cancel));
        AppendResult[] said = await Task.WhenAll(typed);
        Assert.All(said, s => Assert.True(s is AppendResult.Added or AppendResult.Refused));
        Assert.Empty(await store.Entries(Sample.LessonId, 0, Cancel));
        AuditLine line = Assert.Single(await store.Audit(1000, Cancel), l => l.What == "lesson-deleted");
        Assert.Equal($"magnesium-oxide of 2026-03-04, {said.OfType<AppendResult.Added>().Count()} entries", line.After);
    }

    [Fact]
    public async Task A_lesson_that_grew_elsewhere_gains_what_it_lacks()
    {
        await using RecordStore first = await place.OpenFresh();
        await Sample.Prepare(first);
        await first.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "30.10"), Cancel);
        await using RecordStore second = await Other.OpenFresh();
        await LessonArchive.Read(second, new MemoryStream(await All(first)), Sample.By, Cancel);
        await first.Append(Sample.LessonId, Sample.Reading(2, 1, "before", "30.34"), Cancel);
        await second.Append(Sample.LessonId, Sample.Reading(3, 2, "empty", "28.60"), Cancel);
        ImportResult.Taken taken = Assert.IsType<ImportResult.Taken>(await LessonArchive.Read(second, new MemoryStream(await All(first)), Sample.By, Cancel));
        Assert.Equal(1, taken.Added);
        Assert.Equal([1, 3, 2], (await second.Entries(Sample.LessonId, 0, Cancel)).Select(e => (int)UInt128.Parse(e.Entry.Id.ToString(), System.Globalization.NumberStyles.HexNumber, null)));
    }

    [Fact]
    public async Task One_lesson_takes_its_class_and_its_balances_with_it()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Fill(store);
        await Sample.Done(store.AddBalance(new KeptBalance(RecordId.Draw(), "Z", "unused", "0.001"), Sample.By, Cancel));
        using var zip = new MemoryStream();
        await LessonArchive.WriteLesson(store, Sample.LessonId, zip, null, Cancel);
        await using RecordStore other = await Other.OpenFresh();
        await LessonArchive.Read(other, zip, Sample.By, Cancel);
        Assert.Equal(["A"], (await other.Balances(Cancel)).Select(b => b.Letter));
        Assert.Equal(["Ada", "Bo"], (await other.Members(Sample.ClassId, Cancel)).Select(m => m.Name));
    }

    [Fact]
    public async Task No_cell_of_a_table_begins_a_formula_and_the_numbers_stay_numbers()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        await Sample.Done(store.PutMember(new Member(Sample.ClassId, 1, "=HYPERLINK(\"x\")"), Sample.By, Cancel));
        await store.Append(Sample.LessonId, Sample.Entry(1, new JournalCell(1, 1, "note"), new EntryContent.Note("@SUM(1,2)")), Cancel);
        await store.Append(Sample.LessonId, Sample.Entry(3, new JournalCell(1, 1, "note"), new EntryContent.Note(" =1+1")), Cancel);
        await store.Append(Sample.LessonId, Sample.Reading(2, 1, "zero", "-0.02"), Cancel);
        using var zip = new ZipArchive(new MemoryStream(await All(store)));
        Assert.Contains(",\"'=HYPERLINK(\"\"x\"\")\"", Text(zip, "members.csv"), StringComparison.Ordinal);
        Assert.Contains("\"'@SUM(1,2)\"", Text(zip, "journal.csv"), StringComparison.Ordinal);
        Assert.Contains(",' =1+1,", Text(zip, "journal.csv"), StringComparison.Ordinal);
        Assert.Contains(",-0.02,", Text(zip, "journal.csv"), StringComparison.Ordinal);
        Assert.Equal("\uFEFFgroup,trial,zero\r\n1,1,-0.02\r\n", "\uFEFF" + Text(zip, $"readings-{Sample.LessonId}.csv"));
    }

    [Fact]
    public async Task When_something_was_typed_is_left_empty_where_nobody_knows()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        var note = new JournalEntry(Sample.Id(1), new JournalCell(1, 1, "note"), new EntryContent.Note("a lid was missing"), "teacher", DateTimeOffset.UnixEpoch);
        await store.Append(Sample.LessonId, note, Cancel);
        await store.Append(Sample.LessonId, Sample.Reading(2, 1, "empty", "28.10"), Cancel);
        using var zip = new ZipArchive(new MemoryStream(await All(store)));
        Assert.Contains("a lid was missing,,,,,,teacher,,", Text(zip, "journal.csv"), StringComparison.Ordinal);
        Assert.DoesNotContain("1970", Text(zip, "journal.csv"), StringComparison.Ordinal);
        Assert.Contains(",tablet 3,2026-03-04T", Text(zip, "journal.csv"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Forgotten_names_are_nowhere_any_more()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Fill(store);
        await Sample.Done(store.PutMember(new Member(Sample.ClassId, 1, "Adele"), Sample.By, Cancel));
        await Sample.Done(store.ForgetNames(Sample.ClassId, Sample.By, Cancel));
        Assert.All(await store.Members(Sample.ClassId, Cancel), m => Assert.Equal("", m.Name));
        Assert.True((await store.FindClass(Sample.ClassId, Cancel))!.NamesForgotten);
        Assert.DoesNotContain(await store.Audit(1000, Cancel), l => $"{l.Before}{l.After}".Contains("Ad", StringComparison.Ordinal) || $"{l.Before}{l.After}".Contains("Bo", StringComparison.Ordinal));
        Assert.Equal(Sample.OfEachKind().Length, (await store.Entries(Sample.LessonId, 0, Cancel)).Count);
    }

    [Fact]
    public async Task A_deleted_lesson_is_gone_and_the_audit_says_that_it_was_there()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Fill(store);
        await store.OpenDoor(Sample.LessonId, Sample.By, Cancel);
        await Sample.Done(store.DeleteLesson(Sample.LessonId, Sample.By, Cancel));
        Assert.Null(await store.FindLesson(Sample.LessonId, Cancel));
        Assert.Empty(await store.Entries(Sample.LessonId, 0, Cancel));
        AuditLine line = Assert.Single(await store.Audit(1000, Cancel), l => l.What == "lesson-deleted");
        Assert.Equal($"magnesium-oxide of 2026-03-04, {Sample.OfEachKind().Length} entries", line.After);
        Assert.IsType<AppendResult.Refused>(await store.Append(Sample.LessonId, Sample.Reading(99, 1, "empty", "30.10"), Cancel));
    }

    [Fact]
    public async Task A_backup_made_while_people_type_holds_a_whole_journal_and_opens_again()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        string path = Path.Combine(Directory.CreateTempSubdirectory("calx-backup-").FullName, "backup");
        Task[] typing = [.. Enumerable.Range(0, 30).Select(w => Task.Run(
            async () =>
            {
                for (int i = 1; i <= 20; i++)
                {
                    await store.Append(Sample.LessonId, Sample.Reading((w * 1000) + i, w + 1 > 12 ? 12 : w + 1, "empty", "30.10"), Cancel);
                }
            },
            Cancel))];
        await store.BackUp(path, null, Cancel);
        await Task.WhenAll(typing);
        IReadOnlyList<KeptEntry> all = await store.Entries(Sample.LessonId, 0, Cancel);
        Assert.Equal(600, all.Count);
        await using RecordStore restored = await Restored(path);
        IReadOnlyList<KeptEntry> saved = await restored.Entries(Sample.LessonId, 0, Cancel);
        Assert.Equal(all.Take(saved.Count), saved);
        await Assert.ThrowsAsync<IOException>(() => store.BackUp(path, null, Cancel));
    }

    /// <summary>Opens what <see cref="RecordStore.BackUp"/> wrote.</summary>
    protected abstract Task<RecordStore> Restored(string path);

    private static async Task<byte[]> All(RecordStore store)
    {
        using var zip = new MemoryStream();
        await LessonArchive.WriteAll(store, zip, null, Cancel);
        return zip.ToArray();
    }

    private static string Records(byte[] bytes)
    {
        using var zip = new ZipArchive(new MemoryStream(bytes));
        return Text(zip, "records.json");
    }

    private static string Text(ZipArchive zip, string name)
    {
        using var reader = new StreamReader(zip.GetEntry(name)!.Open(), Encoding.UTF8);
        return reader.ReadToEnd();
    }
}
