using System.Collections.Concurrent;
using System.Net;
using System.Text;
using Calx.Records.Journal;
using Calx.Records.Storage;
using Calx.Rehearsal;

namespace Calx.App.Tests.Proofs;

/// <summary>Ten thousand requests that no page sends, at every address, while a class types.</summary>
public sealed class MalformedRequestsTests
{
    private const int Seed = 20_261;
    private const int Requests = 10_000;
    private const int Senders = 8;

    /// <summary>HTTP's own answer to a version that is not spoken; the program never sees such a request.</summary>
    private const int VersionNotSpoken = 505;

    [Fact]
    public async Task None_is_answered_with_a_fault_of_the_program_and_no_entry_is_lost()
    {
        using var folder = new ScratchFolder();
        RehearsedLesson lesson = await RehearsedLesson.Write(folder.FullName);
        KnownAddresses addresses = await KnownAddresses.Of(lesson);
        await using RunningProgram program = await RunningProgram.Start(new ProgramStart(folder.FullName));
        var cookies = new CookieContainer();
        using Phone phone = await Phone.Join(RunningProgram.Client(program.Address, cookies), lesson.Code, group: 1);
        string cookie = cookies.GetCookieHeader(program.Address);

        var statuses = new ConcurrentBag<int?>();
        var faults = new ConcurrentQueue<string>();
        Task[] sending = [.. Enumerable.Range(0, Senders).Select(s => Task.Run(() => Send(new Random(Seed + s))))];
        List<TypedEntry> typed = await Type(phone, Task.WhenAll(sending));

        Assert.True(faults.IsEmpty, string.Join("\n\n", faults));
        Assert.True(program.IsRunning);
        // They are no use where they are all turned away at the door: the program was reached in many ways.
        Assert.True(statuses.Distinct().Count() > 8, "Only few kinds of answer: " + string.Join(' ', statuses.Distinct()));
        Assert.True(addresses.Count > 50, $"Only {addresses.Count} addresses were found.");
        await program.Kill();
        Assert.DoesNotContain("mistake", await program.Errors(), StringComparison.OrdinalIgnoreCase);
        await AllKept(folder.FullName, lesson, typed);

        async Task Send(Random random)
        {
            for (int i = 0; i < Requests / Senders; i++)
            {
                byte[] request = MalformedRequest.Draw(random, addresses, program.Address.Authority, cookie);
                int? status = await RawConnection.StatusOf(program.Address, request);
                statuses.Add(status);
                if (status is >= 500 and not VersionNotSpoken)
                {
                    faults.Enqueue($"{status}: {Encoding.UTF8.GetString(request.AsSpan(0, Math.Min(1_500, request.Length)))}");
                }
            }
        }
    }

    private static async Task<List<TypedEntry>> Type(Phone phone, Task others)
    {
        var random = new Random(Seed);
        var typed = new List<TypedEntry>();
        while (!others.IsCompleted)
        {
            TypedEntry entry = TypedEntry.Drawn(random);
            Assert.Equal("added", (await phone.Send(entry))[entry.Id]);
            typed.Add(entry);
            await Task.Delay(50, TestContext.Current.CancellationToken);
        }

        await others;
        return typed;
    }

    private static async Task AllKept(string dataFolder, RehearsedLesson lesson, List<TypedEntry> typed)
    {
        await using RecordStore store = await RehearsedLesson.Open(dataFolder);
        IReadOnlyList<KeptEntry> entries = await store.Entries(lesson.Id, cancel: TestContext.Current.CancellationToken);
        ILookup<string, KeptEntry> kept = entries.ToLookup(e => e.Entry.Id.ToString());
        Assert.NotEmpty(typed);
        foreach (TypedEntry entry in typed)
        {
            var reading = Assert.IsType<EntryContent.Reading>(Assert.Single(kept[entry.Id]).Entry.Content);
            Assert.Equal(entry.Written, reading.Written.ToString());
        }
    }
}
