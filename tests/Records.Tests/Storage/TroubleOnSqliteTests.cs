using System.Diagnostics;
using Calx.Records.Journal;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class TroubleOnSqliteTests(SqlitePlace place) : TroubleTests(place), IClassFixture<SqlitePlace>
{
    private readonly SqlitePlace place = place;

    [Theory]
    [InlineData("Mass / g\n30.10\n")]
    [InlineData("Mass / g,reading\n30.10,30.43\n30.10,30.43\n30.10,30.43\n30.10,30.43\n30.10,30.43\n30.10,30.43\n30.10,30.43\n30.10,30.43\n")]
    public async Task A_file_that_is_no_database_stays_as_it_is(string text)
    {
        StoreSettings settings = await place.Fresh();
        await File.WriteAllTextAsync(settings.Connection, text, Sample.Cancel);
        StoreUnavailableException fault = await Assert.ThrowsAsync<StoreUnavailableException>(() => place.Open(settings));
        Assert.Equal(StoreTrouble.NotOurDatabase, fault.Trouble);
        Assert.Contains(settings.Connection, fault.Reason, StringComparison.Ordinal);
        Assert.Equal(text, await File.ReadAllTextAsync(settings.Connection, Sample.Cancel));
    }

    [Fact]
    public async Task A_folder_that_is_not_there_and_a_folder_in_place_of_a_file_are_said()
    {
        var missing = new StoreSettings(Path.Combine(place.Folder, "no-such-folder", "records.db"));
        Assert.Equal(StoreTrouble.CannotOpen, (await Assert.ThrowsAsync<StoreUnavailableException>(() => place.Open(missing))).Trouble);
        Assert.Equal(StoreTrouble.CannotOpen, (await Assert.ThrowsAsync<StoreUnavailableException>(() => place.Open(new StoreSettings(place.Folder)))).Trouble);
    }

    /// <summary>A disk of one megabyte, filled by another file till an entry is not taken, then freed.</summary>
    [Fact]
    public async Task A_full_disk_is_said_loses_nothing_that_was_kept_and_passes_when_there_is_room()
    {
        string disk = Directory.CreateTempSubdirectory("calx-small-disk-").FullName;
        Assert.SkipUnless(Run("mount", "-t", "tmpfs", "-o", "size=1m", "tmpfs", disk), "A small disk cannot be mounted here: that needs root.");
        try
        {
            await using RecordStore store = await place.Open(new StoreSettings(Path.Combine(disk, "records.db")));
            await Sample.Prepare(store);
            Assert.IsType<AppendResult.Added>(await store.Append(Sample.LessonId, Note(1), Sample.Cancel));
            Fill(Path.Combine(disk, "films"));
            int kept = 1;
            StoreUnavailableException? full = null;
            for (int i = 2; i <= 200 && full is null; i++)
            {
                try
                {
                    await store.Append(Sample.LessonId, Note(i), Sample.Cancel);
                    kept = i;
                }
                catch (StoreUnavailableException fault)
                {
                    full = fault;
                }
            }

            Assert.Equal((StoreTrouble.DiskFull, true), (full!.Trouble, full.MayPass));
            Assert.Contains("make room", full.Reason, StringComparison.Ordinal);
            // Again while it is full: still said, and reading goes on.
            await Assert.ThrowsAsync<StoreUnavailableException>(() => store.Append(Sample.LessonId, Note(kept + 1), Sample.Cancel));
            Assert.Equal(kept, (await store.Entries(Sample.LessonId, 0, Sample.Cancel)).Count);
            File.Delete(Path.Combine(disk, "films"));
            Assert.IsType<AppendResult.Added>(await store.Append(Sample.LessonId, Note(kept + 1), Sample.Cancel));
            Assert.Equal(Enumerable.Range(1, kept + 1).Select(Sample.Id), (await store.Entries(Sample.LessonId, 0, Sample.Cancel)).Select(e => e.Entry.Id));
        }
        finally
        {
            Run("umount", "-l", disk);
            Directory.Delete(disk);
        }
    }

    private static JournalEntry Note(int id) => Sample.Entry(id, new JournalCell(1, 1, "after"), new EntryContent.Note(new string('n', 4000)));

    private static void Fill(string path)
    {
        using FileStream file = File.Create(path);
        try
        {
            while (true)
            {
                file.Write(new byte[4096]);
                file.Flush();
            }
        }
        catch (IOException)
        {
            // Full, as was wanted.
        }
    }

    private static bool Run(string program, params string[] words)
    {
        using Process? process = Process.Start(new ProcessStartInfo(program, words) { RedirectStandardError = true });
        process!.WaitForExit();
        return process.ExitCode == 0;
    }
}
