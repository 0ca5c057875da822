using System.Net;
using Calx.App.Serving;
using Calx.Records.Journal;
using Calx.Records.Storage;
using Calx.Rehearsal;

namespace Calx.App.Tests.Proofs;

/// <summary>The disk is full or another program holds the database: the class is told, nothing is lost, and it goes on by itself.</summary>
public sealed class StorageTroubleTests
{
    private static readonly TypedEntry[] Entries = [.. Enumerable.Range(0, 3).Select(i => TypedEntry.Drawn(new Random(i)))];

    [Fact]
    public async Task While_another_program_holds_the_database_an_entry_is_not_taken_and_afterwards_it_is()
    {
        using var folder = new ScratchFolder();
        RehearsedLesson lesson = await RehearsedLesson.Write(folder.FullName);
        await using RunningProgram program = await RunningProgram.Start(new ProgramStart(folder.FullName));
        using Phone phone = await Phone.Join(program.Client(), lesson.Code, group: 1);
        Assert.Equal("added", (await phone.Send(Entries[0]))[Entries[0].Id]);

        using (DatabaseHold.Of(new ServeOptions(folder.FullName).Connection))
        {
            await Refused(phone, Entries[1], "holds the records");
        }

        Assert.Equal("added", (await phone.Send(Entries[1]))[Entries[1].Id]);
        await Kept(program, folder.FullName, lesson, Entries[0], Entries[1]);
    }

    [Fact]
    public async Task While_the_disk_is_full_an_entry_is_not_taken_and_once_there_is_room_it_is()
    {
        using var disk = SmallDisk.Mount(megabytes: 6);
        Assert.SkipWhen(disk is null, "A small disk can only be mounted on Linux by root.");
        RehearsedLesson lesson = await RehearsedLesson.Write(disk.FullName);
        await using RunningProgram program = await RunningProgram.Start(new ProgramStart(disk.FullName));
        using Phone phone = await Phone.Join(program.Client(), lesson.Code, group: 1);
        Assert.Equal("added", (await phone.Send(Entries[0]))[Entries[0].Id]);

        disk.Fill();
        // The log of the database has some room of its own at first.
        TypedEntry[] typed = [.. Enumerable.Range(10, 400).Select(i => TypedEntry.Drawn(new Random(i)))];
        int taken = await TakenUntilRefused(phone, typed);
        Assert.True(taken < typed.Length, "The disk was never full.");
        await Refused(phone, typed[taken], "full");

        disk.Empty();
        Assert.Equal("added", (await phone.Send(typed[taken]))[typed[taken].Id]);
        await Kept(program, disk.FullName, lesson, [Entries[0], .. typed[..(taken + 1)]]);
    }

    private static async Task<int> TakenUntilRefused(Phone phone, TypedEntry[] typed)
    {
        for (int i = 0; i < typed.Length; i++)
        {
            using HttpResponseMessage answer = await phone.Post(typed[i]);
            if (answer.StatusCode == HttpStatusCode.ServiceUnavailable)
            {
                return i;
            }

            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        }

        return typed.Length;
    }

    private static async Task Refused(Phone phone, TypedEntry entry, string why)
    {
        using HttpResponseMessage answer = await phone.Post(entry);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, answer.StatusCode);
        string sentence = await answer.Content.ReadAsStringAsync();
        Assert.Contains(why, sentence, StringComparison.Ordinal);
        Assert.Contains("can be sent again", sentence, StringComparison.Ordinal);
    }

    private static async Task Kept(RunningProgram program, string dataFolder, RehearsedLesson lesson, params TypedEntry[] expected)
    {
        await program.Kill();
        await using RecordStore store = await RehearsedLesson.Open(dataFolder);
        IReadOnlyList<KeptEntry> entries = await store.Entries(lesson.Id);
        Assert.Equal(
            expected.Select(e => e.Id), entries.Where(e => e.Entry.Content is EntryContent.Reading).Select(e => e.Entry.Id.ToString()));
    }
}
