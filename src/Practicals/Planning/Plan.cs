using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Planning.Amounts;
using Calx.Practicals.Planning.Curves;
using Calx.Practicals.Planning.Ways;
using Calx.Practicals.Planning.Words;

namespace Calx.Practicals.Planning;

/// <summary>What a teacher gets to know of a lesson before it is held: whether its amounts can work, what readings to expect, whether
/// it ends before the bell, what else could be done, and what to put out.</summary>
public sealed class Plan
{
    private readonly PlannedTable table;
    private readonly Lazy<CurveOutlook?> curve;

    private Plan(
        PlanSettings settings,
        PlannedTable table,
        AmountAdvice amounts,
        Prediction expected,
        LessonForecast lesson,
        IReadOnlyList<PlanWay>? ways,
        Lazy<CurveOutlook?> curve)
    {
        this.curve = curve;
        this.table = table;
        Settings = settings;
        Amounts = amounts;
        Expected = expected;
        Lesson = lesson;
        Ways = ways;
        Kit = [.. settings.Practical.Kit.Select(item => KitCount.Of(item, settings))];
    }

    /// <summary>The plan.</summary>
    public PlanSettings Settings { get; }

    /// <summary>Which amounts can work, and what the class can conclude.</summary>
    public AmountAdvice Amounts { get; }

    /// <summary>The readings and values to expect.</summary>
    public Prediction Expected { get; }

    /// <summary>Those of the expected readings that the plan takes.</summary>
    public IReadOnlyList<PredictedReading> ExpectedReadings => [.. Expected.Readings.Where(r => !Settings.Unread.Contains(r.Weighing.Reading))];

    /// <summary>How the lesson goes.</summary>
    public LessonForecast Lesson { get; }

    /// <summary>What mass against time will show; null where the practical takes none. Worked out when it is first asked for.</summary>
    public CurveOutlook? Curve => curve.Value;

    /// <summary>What a teacher is told of it, a sentence each; empty where the practical takes none.</summary>
    public IReadOnlyList<string> CurveSentences => Curve is CurveOutlook outlook ? CurveOutlookWords.Of(outlook, Settings.Language) : [];

    /// <summary>Ways out, the best first; empty where none was found, null where none was looked for.</summary>
    public IReadOnlyList<PlanWay>? Ways { get; }

    /// <summary>What to put out.</summary>
    public IReadOnlyList<KitCount> Kit { get; }

    /// <summary>Which quantities the planned table determines, and what the others lack.</summary>
    public Identifiability Identifiability => table.Identifiability;

    /// <summary>The conclusions asked for.</summary>
    public IReadOnlyList<ConclusionDefinition> Wanted => [.. table.Wanted.Select(r => r.Conclusion)];

    /// <summary>Those of them that the table cannot decide, whatever its numbers are.</summary>
    public IReadOnlyList<ConclusionDefinition> Undecidable => [.. table.Wanted.Except(table.Allowed).Select(r => r.Conclusion)];

    /// <summary>Whether the planned table allows every conclusion asked for.</summary>
    public bool CanConclude => table.Allowed.Count == table.Wanted.Count;

    /// <summary>Whether the lesson fits, or can with luck: the answer to 'can I do this?'.</summary>
    public bool Fits => Lesson.Fits.Value >= LessonForecast.FitsNot;

    /// <summary>What a teacher is to read first: the amounts, then the lesson, a sentence each.</summary>
    public IReadOnlyList<string> Sentences => [.. AmountWords.Of(this), .. CurveSentences, .. LessonSentences];

    /// <summary>Those of them that are about the lesson: whether it fits, what takes longest, when the last heating starts.</summary>
    public IReadOnlyList<string> LessonSentences => [.. LessonWords.Of(this)];

    /// <summary>Works a plan out.</summary>
    /// <param name="settings">What the teacher means to do.</param>
    /// <param name="weights">Atomic weights for the molar masses.</param>
    /// <param name="options">How; null for the usual.</param>
    /// <exception cref="ArgumentException">A conclusion asked for is none of the practical's, or readings cannot decide it; or the
    /// sample is more than a class may use.</exception>
    /// <exception cref="OperationCanceledException">The work was given up.</exception>
    public static Plan Of(PlanSettings settings, AtomicWeights weights, PlanOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(weights);
        PlanOptions how = options ?? PlanOptions.Usual;
        if (settings.SampleInGrams > PlanSettings.LargestSample(settings.Practical))
        {
            throw new ArgumentException("The sample is more than a class may use.", nameof(settings));
        }

        IReadOnlyList<ConclusionRule> rules = ConclusionRule.All(settings.Practical, weights);
        foreach (string wanted in how.Wanted.Where(w => rules.All(r => r.Conclusion.Id != w)))
        {
            throw new ArgumentException($"Readings decide no conclusion '{wanted}'.", nameof(options));
        }

        var tables = new PlanTables(weights);
        ParallelOptions parallel = how.Parallel;
        var search = new AmountSearch(settings, tables, rules, how.Wanted, how.Seed, parallel);
        how.Report("amounts");
        AmountAdvice amounts = search.Advice();
        how.Report("readings");
        Prediction expected = Prediction.Of(tables.DrawersOf(settings)[0], how.ExpectedDraws, how.Seed, parallel);
        how.Report("lesson");
        LessonForecast lesson = new LessonSimulator(settings, tables.Durations, tables.DrawersOf(settings), how.Seed, parallel).Forecast(how.Lessons);
        how.Report("ways");
        bool looks = how.LooksForWays && lesson.Fits.Value < LessonForecast.FitsWell;
        IReadOnlyList<PlanWay>? ways = looks ? new WaySearch(settings, tables, search, how.Seed, parallel).Ways(amounts.Planned, amounts.Smallest?.SampleInGrams) : how.LooksForWays ? [] : null;
        return new Plan(settings, new PlannedTable(settings, rules, how.Wanted), amounts, expected, lesson, ways,
            new Lazy<CurveOutlook?>(() => CurveOutlook.Of(settings, tables.DrawersOf(settings)[0], how.Seed, parallel.CancellationToken)));
    }
}
