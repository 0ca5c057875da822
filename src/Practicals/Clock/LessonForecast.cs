using Calx.Chemistry.Elements;
using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Clock;

/// <summary>How lessons of a plan go: from thousands of simulated ones (docs/methods/lesson-clock.md).</summary>
public sealed class LessonForecast
{
    /// <summary>Below this probability a plan does not fit the lesson.</summary>
    public const double FitsNot = 0.5;

    /// <summary>From this probability it fits; between the two it is tight.</summary>
    public const double FitsWell = 0.9;

    /// <summary>Minutes before the bell by which a class should have weighed, to pack up in peace.</summary>
    public const double PackingMinutes = 10;

    /// <summary>How lessons of a plan go, without all else that a plan works out.</summary>
    /// <param name="settings">What the teacher means to do.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="seed">Which of the possible lessons.</param>
    /// <param name="lessons">How many are simulated, from 1.</param>
    public static LessonForecast Of(PlanSettings settings, AtomicWeights weights, ulong seed, int lessons)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(weights);
        ArgumentOutOfRangeException.ThrowIfLessThan(lessons, 1);
        var tables = new PlanTables(weights);
        return new LessonSimulator(settings, tables.Durations, tables.DrawersOf(settings), seed, new ParallelOptions()).Forecast(lessons);
    }

    internal LessonForecast(
        PlanSettings settings,
        LessonOutcome[] outcomes,
        IReadOnlyList<ThingUse> uses,
        LastCalls calls,
        LessonTimeline typical,
        LessonTimeline bad)
    {
        Settings = settings;
        Lessons = outcomes.Length;
        double gasOff = settings.Minutes - settings.Practical.Classroom.GasOffInMinutes;
        Fits = Share.Of(outcomes.Count(o => o.End <= settings.Minutes && o.FlameOut <= gasOff), outcomes.Length);
        OnTime = Share.Of(outcomes.Count(o => o.End <= settings.Minutes), outcomes.Length);
        GasOffInTime = Share.Of(outcomes.Count(o => o.FlameOut <= gasOff), outcomes.Length);
        WeighedInTime = Share.Of(outcomes.Count(o => o.Weighed <= settings.Minutes - PackingMinutes), outcomes.Length);
        double[] ends = [.. outcomes.Select(o => o.End).Order()];
        (P10, P50, P90) = (Summary.QuantileOfSorted(ends, 0.1), Summary.QuantileOfSorted(ends, 0.5), Summary.QuantileOfSorted(ends, 0.9));
        double trials = (double)outcomes.Length * settings.Groups * settings.Trials;
        MeanHeatings = outcomes.Sum(o => (double)o.Heatings) / trials;
        JoinedShare = outcomes.Sum(o => (double)o.Joined) / ((double)outcomes.Length * settings.Groups);
        Uses = uses;
        Calls = calls;
        Typical = typical;
        Bad = bad;
    }

    /// <summary>The plan.</summary>
    public PlanSettings Settings { get; }

    /// <summary>How many lessons were simulated.</summary>
    public int Lessons { get; }

    /// <summary>Probability that everything is done by the bell and every flame was out in time before it.</summary>
    public Share Fits { get; }

    /// <summary>Probability that everything is done by the bell.</summary>
    public Share OnTime { get; }

    /// <summary>Probability that every flame is out as long before the bell as the practical asks.</summary>
    public Share GasOffInTime { get; }

    /// <summary>Probability that the last group has weighed <see cref="PackingMinutes"/> before the bell.</summary>
    public Share WeighedInTime { get; }

    /// <summary>One lesson in ten ends by this minute.</summary>
    public double P10 { get; }

    /// <summary>Half of the lessons end by this minute.</summary>
    public double P50 { get; }

    /// <summary>Nine lessons in ten end by this minute.</summary>
    public double P90 { get; }

    /// <summary>Heatings of a trial, on average.</summary>
    public double MeanHeatings { get; }

    /// <summary>Share of the groups whose vessel breaks too late, or when no spare is left.</summary>
    public double JoinedShare { get; }

    /// <summary>What is shared, and how it is used.</summary>
    public IReadOnlyList<ThingUse> Uses { get; }

    /// <summary>When to begin nothing more.</summary>
    public LastCalls Calls { get; }

    /// <summary>A lesson that ends when half of them do.</summary>
    public LessonTimeline Typical { get; }

    /// <summary>A lesson that only one in twenty is worse than.</summary>
    public LessonTimeline Bad { get; }

    /// <summary><c>fits</c>, <c>tight</c> or <c>does-not-fit</c>.</summary>
    public string Verdict => Fits.Value >= FitsWell ? "fits" : Fits.Value >= FitsNot ? "tight" : "does-not-fit";

    /// <summary>What keeps the lesson longest: the shared thing that groups wait for, or the step that takes most of the time that
    /// the end depends on.</summary>
    public Bottleneck Bottleneck => Bottleneck.Of(this);
}
