using Calx.Measurement.Numbers;
using Calx.Records.Journal;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

/// <summary>The journal in a database keeps what was typed, as it was typed.</summary>
public abstract class KeptJournalTests(Place place)
{
    [Fact]
    public async Task Entries_of_every_kind_come_back_as_they_were_typed_after_the_store_was_closed()
    {
        StoreSettings settings = await place.Fresh();
        JournalEntry[] sent = Sample.OfEachKind();
        await using (RecordStore store = await place.Open(settings))
        {
            await Sample.Prepare(store);
            foreach (JournalEntry entry in sent)
            {
                Assert.IsType<AppendResult.Added>(await store.Append(Sample.LessonId, entry, Sample.Cancel));
            }
        }

        await using RecordStore again = await place.Open(settings);
        IReadOnlyList<KeptEntry> kept = await again.Entries(Sample.LessonId, 0, Sample.Cancel);
        Assert.Equal(sent, kept.Select(k => k.Entry));
        Assert.Equal(Enumerable.Range(1, sent.Length).Select(n => (long)n), kept.Select(k => k.Number));
        Assert.Equal(["30.10", "30.43", "30.34", "31.0"], kept.Select(k => k.Entry.Content).OfType<EntryContent.Reading>().Select(r => r.Written.ToString()));
        Assert.Equal("1.50", kept.Select(k => k.Entry.Content).OfType<EntryContent.Mark>().First().Marks.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(TimeSpan.FromHours(1), kept[3].Entry.TypedAt.Offset);
        Assert.Equal(sent.Skip(8), (await again.Entries(Sample.LessonId, 8, Sample.Cancel)).Select(k => k.Entry));
        Assert.IsType<AppendResult.Known>(await again.Append(Sample.LessonId, sent[0], Sample.Cancel));
    }

    /// <summary>What is true of a student's catch-up data is such a text.</summary>
    [Fact]
    public async Task A_long_text_of_one_member_comes_back_whole_after_the_store_was_closed()
    {
        StoreSettings settings = await place.Fresh();
        string text = $$"""{"readings":[{"id":"after","shown":"33.70"}],"why":"{{new string('é', EntryContent.LongestText - 60)}}"}""";
        var sent = new JournalEntry(EntryId.Of(7), new JournalCell(0, 1, "catch-up", 7), new EntryContent.Happening(text), "teacher", DateTimeOffset.UnixEpoch);
        await using (RecordStore store = await place.Open(settings))
        {
            await Sample.Prepare(store);
            Assert.IsType<AppendResult.Added>(await store.Append(Sample.LessonId, sent, Sample.Cancel));
        }

        await using RecordStore again = await place.Open(settings);
        Assert.Equal(sent, Assert.Single(await again.Entries(Sample.LessonId, 0, Sample.Cancel)).Entry);
        Assert.IsType<AppendResult.Known>(await again.Append(Sample.LessonId, sent, Sample.Cancel));
    }

    [Fact]
    public async Task Sent_twice_is_one_entry_and_an_id_is_taken_once_in_the_whole_school()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        RecordId other = RecordId.Parse("9f0000000009");
        await Sample.Done(store.AddLesson(Sample.OfId(other), Sample.By, Sample.Cancel));
        var added = Assert.IsType<AppendResult.Added>(await store.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "15.10"), Sample.Cancel));
        var known = Assert.IsType<AppendResult.Known>(await store.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "15.10"), Sample.Cancel));
        Assert.Equal((added.Kept.Number, added.Kept.ReceivedAt), (known.Kept.Number, known.Kept.ReceivedAt));
        Assert.IsType<AppendResult.Refused>(await store.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "15.1"), Sample.Cancel));
        Assert.IsType<AppendResult.Refused>(await store.Append(other, Sample.Reading(1, 1, "empty", "15.10"), Sample.Cancel));
        Assert.Single(await store.Entries(Sample.LessonId, 0, Sample.Cancel));
        Assert.Empty(await store.Entries(other, 0, Sample.Cancel));
    }

    [Fact]
    public async Task An_entry_of_a_lesson_that_is_not_there_is_refused_and_its_neighbours_are_kept()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        Task<AppendResult>[] sent =
        [
            store.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "30.10"), Sample.Cancel),
            store.Append(RecordId.Draw(), Sample.Reading(2, 1, "empty", "30.10"), Sample.Cancel),
            store.Append(Sample.LessonId, Sample.Reading(3, 2, "empty", "30.20"), Sample.Cancel),
        ];
        AppendResult[] results = await Task.WhenAll(sent);
        Assert.IsType<AppendResult.Refused>(results[1]);
        Assert.Equal([1, 3], (await store.Entries(Sample.LessonId, 0, Sample.Cancel)).Select(k => (int)(k.Entry.Id == Sample.Id(1) ? 1 : 3)));
    }

    /// <summary>Thirty people, twenty entries each, every one sent twice: 600 entries, numbered 1 to 600, each there once.</summary>
    [Fact]
    public async Task Thirty_who_type_at_once_lose_nothing_and_double_nothing()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        await Task.WhenAll(Enumerable.Range(0, 30).Select(async person =>
        {
            for (int i = 1; i <= 20; i++)
            {
                JournalEntry entry = Sample.Reading((person * 20) + i, person + 1, "empty", "30.10", device: FormattableString.Invariant($"phone {person}"));
                AppendResult[] twice = await Task.WhenAll(store.Append(Sample.LessonId, entry, Sample.Cancel), store.Append(Sample.LessonId, entry, Sample.Cancel));
                Assert.Single(twice.OfType<AppendResult.Added>());
                Assert.Single(twice.OfType<AppendResult.Known>());
            }
        }));
        IReadOnlyList<KeptEntry> kept = await store.Entries(Sample.LessonId, 0, Sample.Cancel);
        Assert.Equal(Enumerable.Range(1, 600).Select(n => (long)n), kept.Select(k => k.Number));
        Assert.Equal(600, kept.Select(k => k.Entry.Id).Distinct().Count());
    }

    [Fact]
    public async Task Who_watches_hears_of_each_lesson_after_its_entries_are_there()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Prepare(store);
        var heard = new TaskCompletionSource<int>(TaskCreationOptions.RunContinuationsAsynchronously);
        using IDisposable broken = store.Watch(_ => throw new InvalidOperationException("a watcher's own fault"));
        using IDisposable watching = store.Watch(change =>
        {
            if (change == new RecordChange(Sample.LessonId, RecordChange.Entries))
            {
                heard.TrySetResult(store.Entries(Sample.LessonId).GetAwaiter().GetResult().Count);
            }
        });
        await store.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "30.10"), Sample.Cancel);
        Assert.Equal(1, await heard.Task.WaitAsync(TimeSpan.FromSeconds(20), Sample.Cancel));
    }
}
