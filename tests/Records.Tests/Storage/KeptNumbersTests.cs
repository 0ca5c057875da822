using System.IO.Compression;
using Calx.Records.Archive;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

/// <summary>Numbers that teachers took over from past lessons: kept, taken back, written out and taken in.</summary>
public abstract class KeptNumbersTests(Place place)
{
    /// <summary>Where the records go that were written out of <paramref name="place"/>: a database of the other kind.</summary>
    protected abstract Place Other { get; }

    [Fact]
    public async Task Every_decision_stays_and_the_latest_comes_first()
    {
        await using RecordStore store = await place.OpenFresh();
        NumberDecision cool = Cool("10 14 23", Sample.Noon);
        await Sample.Done(store.Decide([cool, Cool("11 15 24", Sample.Noon, "9F")], Sample.By, Sample.Cancel));
        await Sample.Done(store.Decide([Cool("", Sample.Noon.AddDays(1))], Sample.By, Sample.Cancel));
        IReadOnlyList<NumberDecision> kept = await store.Decisions("magnesium-oxide", Sample.Cancel);
        Assert.Equal([Cool("", Sample.Noon.AddDays(1)), cool, Cool("11 15 24", Sample.Noon, "9F")], kept);
        Assert.True(kept[0].IsTakenBack);
        Assert.Empty(await store.Decisions("copper-sulfate-hydrate", Sample.Cancel));
        Assert.Equal("time:cool: 10 14 23; time:cool of 9F: 11 15 24", (await store.Audit(2, Sample.Cancel))[1].After);
    }

    [Fact]
    public async Task A_decision_that_changes_nothing_is_not_kept_twice()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Done(store.Decide([Cool("10 14 23", Sample.Noon)], Sample.By, Sample.Cancel));
        await Sample.Done(store.Decide([Cool("10 14 23", Sample.Noon.AddDays(1))], Sample.By, Sample.Cancel));
        await Sample.Done(store.Decide([Cool("", Sample.Noon, "9F")], Sample.By, Sample.Cancel));
        Assert.Single(await store.Decisions("magnesium-oxide", Sample.Cancel));
        Assert.Single(await store.Audit(10, Sample.Cancel));
    }

    [Fact]
    public async Task A_clock_that_was_put_back_does_not_turn_the_order_round()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Done(store.Decide([Cool("10 14 23", Sample.Noon)], Sample.By, Sample.Cancel));
        await Sample.Done(store.Decide([Cool("", Sample.Noon.AddHours(-3))], Sample.By, Sample.Cancel));
        Assert.True((await store.Decisions("magnesium-oxide", Sample.Cancel))[0].IsTakenBack);
    }

    [Fact]
    public async Task Decisions_go_with_the_records_to_a_database_of_the_other_kind()
    {
        await using RecordStore first = await place.OpenFresh();
        await Sample.Done(first.Decide([Cool("10 14 23", Sample.Noon), Cool("", Sample.Noon.AddHours(1), "9F")], Sample.By, Sample.Cancel));
        await Sample.Done(first.Decide([Cool("", Sample.Noon.AddHours(2))], Sample.By, Sample.Cancel));
        using var zip = new MemoryStream();
        await LessonArchive.WriteAll(first, zip, null, Sample.Cancel);
        await using RecordStore second = await Other.OpenFresh();
        Assert.Empty(Assert.IsType<ImportResult.Taken>(await LessonArchive.Read(second, zip, Sample.By, Sample.Cancel)).Refused);
        IReadOnlyList<NumberDecision> kept = await first.Decisions("magnesium-oxide", Sample.Cancel);
        Assert.Equal(2, kept.Count);
        Assert.Equal(kept, await second.Decisions("magnesium-oxide", Sample.Cancel));
        Assert.Equal(2, Assert.IsType<ImportResult.Taken>(await LessonArchive.Read(second, zip, Sample.By, Sample.Cancel)).Known);
    }

    [Fact]
    public async Task Records_without_decisions_are_written_as_they_always_were()
    {
        await using RecordStore store = await place.OpenFresh();
        await Sample.Fill(store);
        using var bytes = new MemoryStream();
        await LessonArchive.WriteAll(store, bytes, null, Sample.Cancel);
        using var zip = new ZipArchive(bytes);
        using var reader = new StreamReader(await zip.GetEntry("records.json")!.OpenAsync(Sample.Cancel));
        Assert.DoesNotContain("\"numbers\"", await reader.ReadToEndAsync(Sample.Cancel), StringComparison.Ordinal);
        Assert.Null(zip.GetEntry("numbers.csv"));
    }

    private static NumberDecision Cool(string became, DateTimeOffset at, string className = "") =>
        new("magnesium-oxide", 2, className, "time:cool", "10 12 20", became, "timed 70 times in six lessons", 6, "LM", at);
}
