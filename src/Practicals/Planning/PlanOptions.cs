using Calx.Practicals.Clock;
using Calx.Practicals.Model.Simulation;

namespace Calx.Practicals.Planning;

/// <summary>How a plan is worked out.</summary>
public sealed class PlanOptions
{
    private readonly Action<string>? progress;

    /// <summary>Chooses how.</summary>
    /// <param name="seed">Which of the possible simulations.</param>
    /// <param name="wanted">Ids of the conclusions that the class is to come to; null for all that the practical always asks.</param>
    /// <param name="looksForWays">Whether ways out are looked for where the lesson does not fit well.</param>
    /// <param name="lessons">Lessons to simulate, at least 100.</param>
    /// <param name="threads">Threads; 0 takes as many as there are processors. The plan does not depend on it.</param>
    /// <param name="progress">Told what is begun: <c>amounts</c>, <c>readings</c>, <c>lesson</c>, <c>ways</c>.</param>
    /// <param name="cancellation">Gives the work up.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are too few lessons, or fewer than no threads.</exception>
    public PlanOptions(
        ulong seed = 1,
        IReadOnlyCollection<string>? wanted = null,
        bool looksForWays = true,
        int lessons = UsualLessons,
        int threads = 0,
        Action<string>? progress = null,
        CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(lessons, 100);
        ArgumentOutOfRangeException.ThrowIfNegative(threads);
        Seed = seed;
        Wanted = wanted ?? [];
        LooksForWays = looksForWays;
        Lessons = lessons;
        Threads = threads;
        this.progress = progress;
        Cancellation = cancellation;
    }

    /// <summary>Lessons simulated unless another number is given: the standard error of a probability is then at most 0.008.</summary>
    public const int UsualLessons = 4000;

    /// <summary>Seed 1, all conclusions, ways looked for.</summary>
    public static PlanOptions Usual { get; } = new();

    /// <summary>Which of the possible simulations.</summary>
    public ulong Seed { get; }

    /// <summary>Ids of the conclusions asked for; empty for all that the practical always asks.</summary>
    public IReadOnlyCollection<string> Wanted { get; }

    /// <summary>Whether ways out are looked for.</summary>
    public bool LooksForWays { get; }

    /// <summary>Lessons to simulate.</summary>
    public int Lessons { get; }

    /// <summary>Threads; 0 for as many as there are processors.</summary>
    public int Threads { get; }

    /// <summary>Gives the work up.</summary>
    public CancellationToken Cancellation { get; }

    /// <summary>Groups drawn for the expected readings.</summary>
    internal int ExpectedDraws => Math.Min(Prediction.UsualDraws, Lessons);

    internal ParallelOptions Parallel =>
        new() { MaxDegreeOfParallelism = Threads == 0 ? -1 : Threads, CancellationToken = Cancellation };

    internal void Report(string what) => progress?.Invoke(what);
}
