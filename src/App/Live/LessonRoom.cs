using System.Buffers.Binary;
using System.Security.Cryptography;
using System.Text;
using Calx.App.Pages.CatchUp;
using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Watching;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Live;

/// <summary>
/// A lesson in memory: its journal so far and what it adds up to. Reading it costs nothing; it takes new entries from the
/// records when told that there are some, whichever program on the same database wrote them.
/// </summary>
public sealed class LessonRoom : IDisposable
{
    private readonly RecordStore store;
    private readonly SemaphoreSlim reading = new(1);
    private readonly SemaphoreSlim answering = new(1);
    private readonly LessonJournal journal = new();
    private readonly Lock gate = new();
    private TaskCompletionSource changed = new(TaskCreationOptions.RunContinuationsAsynchronously);
    private readonly Lazy<Task> ready;
    private volatile bool isStale = true;
    private volatile LessonView? view;

    public LessonRoom(Lesson lesson, Practical practical, PlanSettings plan, RecordStore store)
    {
        Lesson = lesson;
        Practical = practical;
        Plan = plan;
        this.store = store;
        Watch = new LessonWatch(plan, AtomicWeights.Iupac2024, SeedOf(lesson.Id.ToString()));
        // On a thread of its own: it takes seconds on a busy machine, and the threads that answer pages are few.
        ready = new Lazy<Task>(() => Task.Factory.StartNew(
            Watch.WarmUp, CancellationToken.None, TaskCreationOptions.LongRunning | TaskCreationOptions.DenyChildAttach, TaskScheduler.Default));
        Packs = new PacksOfLesson(plan);
        Simulated = new SimulatedReadings(plan, group => SeedOf(FormattableString.Invariant($"{lesson.ClassId}/{group}")));
    }

    /// <summary>The lesson as it was planned.</summary>
    public Lesson Lesson { get; }

    /// <summary>Its practical, in the version that it runs with.</summary>
    public Practical Practical { get; }

    /// <summary>Its plan.</summary>
    public PlanSettings Plan { get; }

    /// <summary>Its plan with the practical's own numbers, where it has learned ones.</summary>
    public PlanSettings PlanOfFile => Plan.Learned is null ? Plan : LessonOpening.PlanOfFile(Lesson, Practical);

    /// <summary>The engine made ready for this lesson.</summary>
    public LessonWatch Watch { get; }

    /// <summary>Ends when the engine is ready for readings, which begins when it is first asked for.</summary>
    public Task Ready => ready.Value;

    /// <summary>Goes up when something is told that no entry brought: a forecast, or values that took long.</summary>
    public int Told { get; private set; }

    /// <summary>Readings for those who lost their sample.</summary>
    public SimulatedReadings Simulated { get; }

    /// <summary>Readings for those who were away, as they were handed out.</summary>
    public PacksOfLesson Packs { get; }

    /// <summary>Which of the possible classes stands on its papers where data are simulated: short enough to be written down and asked for again.</summary>
    public ulong PaperSeed => SeedOf($"papers of {Lesson.Id}") % 1_000_000;

    /// <summary>How often its groups are asked about a reading.</summary>
    public AskingPace Asking { get; } = new();

    /// <summary>The lesson as it was when somebody last looked: enough where no entry of the last moment matters.</summary>
    public Task<LessonView> Lately(CancellationToken cancellation) => view is LessonView known ? Task.FromResult(known) : Now(cancellation);

    /// <summary>The lesson now, with every entry that was kept before the call.</summary>
    public async Task<LessonView> Now(CancellationToken cancellation)
    {
        if (!isStale && view is LessonView known)
        {
            return known;
        }

        await reading.WaitAsync(cancellation);
        try
        {
            if (isStale || view is null)
            {
                // Cleared before reading: what comes meanwhile makes it stale again.
                isStale = false;
                await TakeNew(cancellation);
            }

            return view!;
        }
        catch
        {
            isStale = true;
            throw;
        }
        finally
        {
            reading.Release();
        }
    }

    /// <summary>Keeps an entry. It is safe on the disk when this returns.</summary>
    public async Task<AppendResult> Append(JournalEntry entry, CancellationToken cancellation)
    {
        AppendResult result = await store.Append(Lesson.Id, entry, cancellation);
        if (result is AppendResult.Added)
        {
            Stale();
            if (entry.Cell.What is Acts.Ended or Acts.Reopened)
            {
                // Devices are answered by the lesson as it was lately; from now on that has to know of its end.
                await Now(cancellation);
            }
        }

        // A form that is sent twice says both times what it says; only when it was typed is filled in here.
        return result is AppendResult.Refused && (await Now(cancellation)).Find(entry.Id) is KeptEntry known
            && known.Entry.IsSameButForTime(entry) ? new AppendResult.Known(known) : result;
    }

    /// <summary>Keeps entries that belong together, in their order.</summary>
    /// <returns>What became of the last.</returns>
    public async Task<AppendResult> Append(IEnumerable<JournalEntry> entries, CancellationToken cancellation)
    {
        // All are handed over before the first is waited for: they go into one commit.
        AppendResult[] results = await Task.WhenAll([.. entries.Select(e => Append(e, cancellation))]);
        return results.FirstOrDefault(r => r is AppendResult.Refused) ?? results[^1];
    }

    /// <summary>Whether the lesson has to be opened anew: streams end, and a browser comes back to the new room.</summary>
    public bool IsClosed { get; private set; }

    /// <summary>Says that the lesson was changed or deleted.</summary>
    public void Close()
    {
        IsClosed = true;
        Stale();
    }

    /// <summary>Says that there may be new entries.</summary>
    public void Stale()
    {
        isStale = true;
        Wake(0);
    }

    /// <summary>Says that an answer is there for which a page of the teacher's did not wait.</summary>
    public void Tell() => Wake(1);

    private void Wake(int more)
    {
        TaskCompletionSource told;
        lock (gate)
        {
            Told += more;
            told = changed;
            changed = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        }

        told.TrySetResult();
    }

    /// <summary>Ends when there may be something new; ask for it before looking, and nothing is missed.</summary>
    public Task Change()
    {
        lock (gate)
        {
            return changed.Task;
        }
    }

    /// <summary>The same for a lesson whichever program asks, so that the same entry is answered alike everywhere.</summary>
    private static ulong SeedOf(string name) => BinaryPrimitives.ReadUInt64BigEndian(SHA256.HashData(Encoding.ASCII.GetBytes(name)));

    /// <summary>Waits until no other answer of the lesson is being taken; the next one waits until what is returned is disposed.</summary>
    public async Task<IDisposable> AnswerTurn(CancellationToken cancellation)
    {
        await answering.WaitAsync(cancellation);
        return new Turn(answering);
    }

    /// <summary>Gives back what waiting for the journal needs.</summary>
    public void Dispose()
    {
        reading.Dispose();
        answering.Dispose();
    }

    private sealed class Turn(SemaphoreSlim gate) : IDisposable
    {
        public void Dispose() => gate.Release();
    }

    private async Task TakeNew(CancellationToken cancellation)
    {
        foreach (KeptEntry kept in await store.Entries(Lesson.Id, journal.Entries.Count, cancellation))
        {
            journal.Append(kept.Entry, kept.ReceivedAt);
        }

        view = new LessonView(this, journal.Table, journal.Entries.Count, LessonState.Of(journal), journal.Entries);
    }
}
