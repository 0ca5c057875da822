using System.Data.Common;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

/// <summary>What goes wrong with a database is said in a sentence, and passes when its cause does.</summary>
public abstract class TroubleTests(Place place)
{
    [Fact]
    public async Task While_another_program_holds_the_lock_nothing_is_kept_and_afterwards_everything_is()
    {
        StoreSettings settings = await place.Fresh();
        await using RecordStore store = await place.Open(settings);
        await Sample.Prepare(store);
        await using (DbConnection other = await place.Beside(settings))
        {
            await Place.Execute(other, place.TakeLock);
            StoreUnavailableException typed = await Assert.ThrowsAsync<StoreUnavailableException>(() => store.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "30.10"), Sample.Cancel));
            Assert.Equal((StoreTrouble.Locked, true), (typed.Trouble, typed.MayPass));
            Assert.Contains("Another program holds the records", typed.Reason, StringComparison.Ordinal);
            StoreUnavailableException changed = await Assert.ThrowsAsync<StoreUnavailableException>(() => store.PutMember(new Member(Sample.ClassId, 1, "Ode"), Sample.By, Sample.Cancel));
            Assert.Equal(StoreTrouble.Locked, changed.Trouble);
            await Place.Execute(other, "ROLLBACK");
        }

        Assert.IsType<AppendResult.Added>(await store.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "30.10"), Sample.Cancel));
        await Sample.Done(store.PutMember(new Member(Sample.ClassId, 1, "Ode"), Sample.By, Sample.Cancel));
        Assert.Equal(1, Assert.Single(await store.Entries(Sample.LessonId, 0, Sample.Cancel)).Number);
    }

    [Fact]
    public async Task A_lock_that_is_let_go_in_time_is_waited_for()
    {
        StoreSettings settings = await place.Fresh();
        settings = new StoreSettings(settings.Connection, settings.School, patienceInSeconds: 30);
        await using RecordStore store = await place.Open(settings);
        await Sample.Prepare(store);
        await using DbConnection other = await place.Beside(settings);
        await Place.Execute(other, place.TakeLock);
        Task<AppendResult> waiting = store.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "30.10"), Sample.Cancel);
        await Task.Delay(300, Sample.Cancel);
        Assert.False(waiting.IsCompleted);
        await Place.Execute(other, "ROLLBACK");
        Assert.IsType<AppendResult.Added>(await waiting);
    }

    [Fact]
    public async Task Records_of_a_newer_version_are_never_opened()
    {
        StoreSettings settings = await place.Fresh();
        await (await place.Open(settings)).DisposeAsync();
        await place.Execute(settings, "INSERT INTO migration VALUES (999, 'of-the-future', '2031-09-01T08:00:00.0000000+00:00')");
        StoreUnavailableException newer = await Assert.ThrowsAsync<StoreUnavailableException>(() => place.Open(settings));
        Assert.Equal(StoreTrouble.NewerVersion, newer.Trouble);
        Assert.Contains("made by a newer version of this program (records version 999", newer.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tables_of_another_program_are_left_alone()
    {
        StoreSettings settings = await place.Fresh();
        await place.Execute(settings, "CREATE TABLE school (pupils integer)");
        StoreUnavailableException others = await Assert.ThrowsAsync<StoreUnavailableException>(() => place.Open(settings));
        Assert.Equal(StoreTrouble.NotOurDatabase, others.Trouble);
        await place.Execute(settings, "INSERT INTO school VALUES (700)");
    }

    [Fact]
    public async Task Two_programs_that_start_at_once_on_an_empty_database_both_find_the_tables()
    {
        StoreSettings settings = await place.Fresh();
        RecordStore[] stores = await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => place.Open(settings))));
        await Sample.Done(stores[0].AddClass(Sample.Class, Sample.By, Sample.Cancel));
        Assert.Equal([Sample.Class], await stores[3].Classes(Sample.Cancel));
        foreach (RecordStore store in stores)
        {
            await store.DisposeAsync();
        }
    }

    [Fact]
    public async Task Schools_of_one_database_see_nothing_of_each_other()
    {
        StoreSettings settings = await place.Fresh();
        await using RecordStore one = await place.Open(settings);
        await using RecordStore other = await place.Open(new StoreSettings(settings.Connection, "Fennick Academy"));
        await Sample.Prepare(one);
        await one.Append(Sample.LessonId, Sample.Reading(1, 1, "empty", "30.10"), Sample.Cancel);
        Assert.Empty(await other.Classes(Sample.Cancel));
        Assert.Empty(await other.Audit(10, Sample.Cancel));
        Assert.IsType<AppendResult.Refused>(await other.Append(Sample.LessonId, Sample.Reading(2, 1, "empty", "30.10"), Sample.Cancel));
        await Sample.Prepare(other);
        Assert.IsType<AppendResult.Added>(await other.Append(Sample.LessonId, Sample.Reading(1, 4, "empty", "28.00"), Sample.Cancel));
        Assert.Equal(1, Assert.Single(await one.Entries(Sample.LessonId, 0, Sample.Cancel)).Entry.Cell.Group);
    }
}
