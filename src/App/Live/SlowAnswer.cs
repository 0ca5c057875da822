namespace Calx.App.Live;

/// <summary>
/// The last answer to a question that takes long to work out. A newer one is worked out aside, on a thread of its own and one at a time:
/// whoever asks waits for it only so long, and has the last one else. A busy machine then holds up no page.
/// </summary>
/// <typeparam name="T">The answer.</typeparam>
/// <param name="told">Is called when an answer is there for which somebody did not wait.</param>
internal sealed class SlowAnswer<T>(Action told)
    where T : class
{
    private readonly Lock gate = new();
    private (object Key, T? Value)? known;
    private Job? running;
    private Job? next;

    /// <summary>The last answer, or null.</summary>
    public T? Known
    {
        get
        {
            lock (gate)
            {
                return known?.Value;
            }
        }
    }

    /// <summary>Asks.</summary>
    /// <param name="key">What the answer rests on: it is worked out anew where that is another one.</param>
    /// <param name="work">Works it out.</param>
    /// <param name="patience">How long to wait.</param>
    /// <param name="cancellation">Ends the waiting, not the work.</param>
    /// <returns>The answer; and whether it is the one asked for, or one that was found before, null where there is none.</returns>
    public async Task<(T? Value, bool IsLatest)> Ask(object key, Func<T?> work, TimeSpan patience, CancellationToken cancellation)
    {
        Job job;
        lock (gate)
        {
            if (known is { } answer && answer.Key.Equals(key))
            {
                return (answer.Value, true);
            }

            job = JobFor(key, work);
        }

        await ((Task)job.Done.Task).WaitAsync(patience, cancellation).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        cancellation.ThrowIfCancellationRequested();
        lock (gate)
        {
            if (!job.Done.Task.IsCompleted)
            {
                job.IsLeft = true;
                return (known?.Value, false);
            }
        }

        return (await job.Done.Task, true);
    }

    /// <summary>What runs, or waits to run; whoever waits for that has what was asked last, which is newer.</summary>
    private Job JobFor(object key, Func<T?> work)
    {
        if (running is null)
        {
            running = new Job { Key = key, Work = work };
            Start(running);
            return running;
        }

        if (running.Key.Equals(key))
        {
            return running;
        }

        next ??= new Job { Key = key, Work = work };
        (next.Key, next.Work) = (key, work);
        return next;
    }

    private void Start(Job job) => _ = Task.Factory.StartNew(
        () => Run(job), CancellationToken.None, TaskCreationOptions.LongRunning | TaskCreationOptions.DenyChildAttach, TaskScheduler.Default);

    private void Run(Job job)
    {
        var done = new Task<T?>(job.Work);
        done.RunSynchronously(TaskScheduler.Default);
        bool isLeft;
        lock (gate)
        {
            if (done.IsCompletedSuccessfully)
            {
                known = (job.Key, done.Result);
            }

            isLeft = job.IsLeft;
            (running, next) = (next, null);
            job.Done.SetFromTask(done);
            if (running is not null)
            {
                Start(running);
            }
        }

        if (isLeft)
        {
            told();
        }
    }

    private sealed class Job
    {
        public required object Key { get; set; }

        public required Func<T?> Work { get; set; }

        public TaskCompletionSource<T?> Done { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

        public bool IsLeft { get; set; }
    }
}
