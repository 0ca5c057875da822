using Calx.Records.Journal;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

/// <summary>Two programs on one PostgreSQL database.</summary>
public sealed class SharedDatabaseTests(PostgresPlace place) : IClassFixture<PostgresPlace>
{
    [Fact]
    public async Task Each_sees_the_others_entries_within_a_second()
    {
        // A school of its own: programs hear of all changes of their school in the database, those of other tests' schemas too.
        StoreSettings settings = await place.Fresh("two programs");
        await using RecordStore here = await place.Open(settings);
        await using RecordStore there = await place.Open(settings);
        await Sample.Prepare(here);
        for (int i = 1; i <= 4; i++)
        {
            (RecordStore sender, RecordStore reader) = i % 2 == 0 ? (here, there) : (there, here);
            Task<RecordChange> heard = Heard(reader, RecordChange.Entries);
            await sender.Append(Sample.LessonId, Sample.Reading(i, i, "empty", "30.10"), Sample.Cancel);
            Assert.Equal(Sample.LessonId, (await heard.WaitAsync(TimeSpan.FromSeconds(1), Sample.Cancel)).Lesson);
            Assert.Equal(i, (await reader.Entries(Sample.LessonId, 0, Sample.Cancel)).Count);
        }
    }

    /// <summary>Ten phones that send everything to both programs at once, while a page asks one of them for what is new.</summary>
    [Fact]
    public async Task What_is_sent_to_both_at_once_is_there_once_and_a_reader_misses_none()
    {
        StoreSettings settings = await place.Fresh();
        await using RecordStore here = await place.Open(settings);
        await using RecordStore there = await place.Open(settings);
        await Sample.Prepare(here);
        Task sending = Task.WhenAll(Enumerable.Range(0, 10).Select(async phone =>
        {
            for (int i = 1; i <= 30; i++)
            {
                JournalEntry entry = Sample.Reading((phone * 30) + i, phone + 1, "empty", "30.10");
                AppendResult[] results = await Task.WhenAll(here.Append(Sample.LessonId, entry, Sample.Cancel), there.Append(Sample.LessonId, entry, Sample.Cancel));
                Assert.Single(results.OfType<AppendResult.Added>());
                Assert.Single(results.OfType<AppendResult.Known>());
            }
        }));
        var seen = new List<KeptEntry>();
        for (bool last = false; !last;)
        {
            last = sending.IsCompleted;
            seen.AddRange(await there.Entries(Sample.LessonId, seen.Count == 0 ? 0 : seen[^1].Number, Sample.Cancel));
        }

        await sending;
        Assert.Equal(Enumerable.Range(1, 300).Select(n => (long)n), seen.Select(e => e.Number));
        Assert.Equal(300, seen.Select(e => e.Entry.Id).Distinct().Count());
    }

    [Fact]
    public async Task After_a_cut_line_it_is_told_that_everything_may_have_changed_and_hears_again()
    {
        StoreSettings settings = await place.Fresh("cut line");
        await using RecordStore here = await place.Open(settings);
        var cut = new StoreSettings(settings.Connection + ";Application Name=cut-line", settings.School);
        await using RecordStore there = await place.Open(cut);
        await Sample.Prepare(here);
        Task<RecordChange> everything = Heard(there, RecordChange.Everything);
        await place.Cut(cut, "cut-line");
        Assert.Null((await everything.WaitAsync(TimeSpan.FromSeconds(20), Sample.Cancel)).Lesson);
        Task<RecordChange> heard = Heard(there, RecordChange.Entries);
        await here.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "30.10"), Sample.Cancel);
        Assert.Equal(Sample.LessonId, (await heard.WaitAsync(TimeSpan.FromSeconds(1), Sample.Cancel)).Lesson);
    }

    /// <summary>The first change of that kind. The subscription lives as long as the store.</summary>
    private static Task<RecordChange> Heard(RecordStore store, string what)
    {
        var heard = new TaskCompletionSource<RecordChange>(TaskCreationOptions.RunContinuationsAsynchronously);
        store.Watch(change =>
        {
            if (change.What == what)
            {
                heard.TrySetResult(change);
            }
        });
        return heard.Task;
    }
}
