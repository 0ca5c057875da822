using Calx.Records.Journal;
using Calx.Records.Storage;
using Calx.Rehearsal;

namespace Calx.App.Tests.Proofs;

/// <summary>The program is ended without a warning, again and again, while a class types.</summary>
public sealed class SuddenEndTests
{
    private const int Seed = 4711;
    private const int Clients = 30;

    /// <summary>At so many moments it is ended; a sample of them in a usual run.</summary>
    private static int Moments => Environment.GetEnvironmentVariable("CALX_LONG") == "1" ? 200 : 10;

    [Fact]
    public async Task Every_acknowledged_entry_is_in_the_records_once_after_the_program_was_ended_at_random_moments()
    {
        using var folder = new ScratchFolder();
        RehearsedLesson lesson = await RehearsedLesson.Write(folder.FullName);
        await using RunningProgram program = await RunningProgram.Start(new ProgramStart(folder.FullName));
        var senders = new List<Sender>();
        for (int i = 0; i < Clients; i++)
        {
            senders.Add(new Sender(await Phone.Join(program.Client(), lesson.Code, (i % lesson.Groups) + 1), Seed + i));
        }

        using var stop = new CancellationTokenSource();
        Task[] sending = [.. senders.Select(s => Task.Run(() => s.Run(stop.Token), TestContext.Current.CancellationToken))];
        var random = new Random(Seed);
        for (int moment = 0; moment < Moments; moment++)
        {
            // A moment under load: entries are being taken again since it was started last.
            await SomethingTaken(senders);
            await Task.Delay(random.Next(0, 400), TestContext.Current.CancellationToken);
            await program.Kill();
            await program.StartAgain();
        }

        await stop.CancelAsync();
        await Task.WhenAll(sending).WaitAsync(TimeSpan.FromSeconds(60), TestContext.Current.CancellationToken);
        await program.Kill();
        senders.ForEach(s => Assert.Empty(s.Refusals));
        await Check(folder.FullName, lesson, senders);
        senders.ForEach(s => s.Dispose());
    }

    private static async Task SomethingTaken(List<Sender> senders)
    {
        int before = senders.Sum(s => s.Acknowledged.Count);
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        while (senders.Sum(s => s.Acknowledged.Count) == before)
        {
            await Task.Delay(5, patience.Token);
        }
    }

    private static async Task Check(string dataFolder, RehearsedLesson lesson, List<Sender> senders)
    {
        await using RecordStore store = await RehearsedLesson.Open(dataFolder);
        IReadOnlyList<KeptEntry> entries = await store.Entries(lesson.Id);
        Assert.Equal(Enumerable.Range(1, entries.Count).Select(n => (long)n), entries.Select(e => e.Number));
        ILookup<string, KeptEntry> kept = entries.ToLookup(e => e.Entry.Id.ToString());
        TypedEntry[] acknowledged = [.. senders.SelectMany(s => s.Acknowledged.Values)];
        Assert.True(acknowledged.Length > 20 * Moments, $"Only {acknowledged.Length} entries were acknowledged, which proves little.");
        foreach (TypedEntry entry in acknowledged)
        {
            var reading = Assert.IsType<EntryContent.Reading>(Assert.Single(kept[entry.Id]).Entry.Content);
            Assert.Equal(entry.Written, reading.Written.ToString());
        }

        // What the phones typed and nothing else: the other entries are the teacher's and of devices taking a group.
        Assert.Equal(acknowledged.Length, entries.Count(e => e.Entry.Content is EntryContent.Reading));
    }
}
