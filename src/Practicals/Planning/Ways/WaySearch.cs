using System.Collections.Concurrent;
using System.Globalization;
using Calx.Measurement.Distributions;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning.Amounts;

namespace Calx.Practicals.Planning.Ways;

/// <summary>
/// Searches for plans that fit: every set of up to six changes, in the order of what they ask of people, until enough fit well.
/// What takes longer than the lesson even without any queue is not simulated, and a plan that fits well is not made heavier. What
/// a way costs the conclusion counts against it like effort (docs/methods/planning.md).
/// </summary>
internal sealed class WaySearch(PlanSettings settings, PlanTables tables, AmountSearch amounts, ulong seed, ParallelOptions parallel)
{
    private const int MostChanges = 6;
    private const int MostWays = 6;

    /// <summary>Once so many fit well, heavier ones are looked for no more.</summary>
    private const int EnoughWays = 4;

    /// <summary>So many are simulated at length.</summary>
    private const int MostTried = 9;

    private const int QuickLessons = 80;
    private const int Lessons = 1000;

    /// <summary>At most so many ways that ask for the same heavy things, so that other ways are seen too.</summary>
    private const int MostAlike = 2;

    /// <summary>The same in the list that is handed over.</summary>
    private const int MostShownAlike = 3;

    /// <summary>A change of so much effort is heavy: another lesson.</summary>
    private const int Heavy = 5;

    /// <summary>What fits less often than this even without any queue is not simulated.</summary>
    private const double HardlyEver = 0.1;

    private readonly ConcurrentDictionary<string, Lazy<AmountPoint>> points = new(StringComparer.Ordinal);

    /// <summary>The ways, the best first: those that fit well before those that are tight, the lighter before the heavier.</summary>
    /// <param name="now">What the plan as it is comes to.</param>
    /// <param name="smallestInGrams">The smallest sample that will do, or null where none is known.</param>
    public IReadOnlyList<PlanWay> Ways(AmountPoint now, double? smallestInGrams)
    {
        IReadOnlyList<PlanChange> changes = PlanChanges.Of(settings, smallestInGrams);
        var found = new List<Candidate>();
        var all = Enumerable.Range(1, MostChanges).SelectMany(size => Choose(changes, size, 0)).GroupBy(c => c.Sum(x => x.Effort)).OrderBy(g => g.Key);
        foreach (IGrouping<int, PlanChange[]> level in all)
        {
            // Enough of all kinds, but none within the lesson yet: from then on only such are looked for.
            bool enough = Varied(found.Where(c => c.Quick >= LessonForecast.FitsWell)).Count() >= EnoughWays;
            if (enough && found.Any(c => c.HeavyOnes.Length == 0 && c.Quick >= LessonForecast.FitsNot))
            {
                break;
            }

            Candidate[] tried = [.. level
                .Where(c => !found.Any(f => f.Quick >= LessonForecast.FitsWell && f.IsPartOf(c)))
                .Select(c => new Candidate(c, settings))
                .Where(c => !enough || c.HeavyOnes.Length == 0)];
            Parallel.ForEach(tried, parallel, c => c.Quick = MayFit(c.Settings) ? Simulator(c.Settings).Fits(QuickLessons).Value : 0);
            found.AddRange(tried.Where(c => c.Quick >= LessonForecast.FitsNot - 0.1));
        }

        Candidate[] best = [.. Varied(found.OrderByDescending(c => c.Quick >= LessonForecast.FitsWell - 0.03).ThenBy(c => c.Effort).ThenByDescending(c => c.Quick), 3).Take(MostTried)];
        var ways = new PlanWay[best.Length];
        Parallel.For(0, best.Length, parallel, i => ways[i] = Way(best[i], now));
        PlanWay[] ranked = [.. ways.Where(w => w.Fits.Value >= LessonForecast.FitsNot)
            .OrderByDescending(w => w.Fits.Value >= LessonForecast.FitsWell)
            .ThenBy(w => w.Burden).ThenByDescending(w => w.Fits.Value)
            .ThenBy(w => string.Join(' ', w.Ids), StringComparer.Ordinal)];
        return [.. ranked.Where((way, i) => IsWorthShowing(way, ranked[..i])).Take(MostWays)];

        // A tight way is shown only where none of its kind fits.
        bool IsWorthShowing(PlanWay way, PlanWay[] better)
        {
            PlanWay[] alike = [.. better.Where(other => Heavies(other) == Heavies(way))];
            return alike.Length < MostShownAlike && (way.Fits.Value >= LessonForecast.FitsWell || alike.All(other => other.Fits.Value < LessonForecast.FitsWell));
        }

        string Heavies(PlanWay way) => string.Join(' ', changes.Where(c => c.Effort >= Heavy && way.Ids.Contains(c.Id)).Select(c => c.Subject));
    }

    private static IEnumerable<Candidate> Varied(IEnumerable<Candidate> candidates, int times = 1) =>
        candidates.GroupBy(c => c.HeavyOnes).SelectMany(g => g.Take(MostAlike * times)).OrderBy(c => c.Effort);

    private static IEnumerable<PlanChange[]> Choose(IReadOnlyList<PlanChange> changes, int size, int from)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }

        for (int i = from; i < changes.Count; i++)
        {
            foreach (PlanChange[] rest in Choose(changes, size - 1, i + 1))
            {
                // Two heavy changes together are two other lessons: nobody asks for that.
                if (rest.All(r => r.Subject != changes[i].Subject && (r.Effort < Heavy || changes[i].Effort < Heavy)))
                {
                    yield return [changes[i], .. rest];
                }
            }
        }
    }

    private LessonSimulator Simulator(PlanSettings plan) =>
        new(plan, tables.Durations, tables.DrawersOf(plan), seed, new ParallelOptions { MaxDegreeOfParallelism = 1, CancellationToken = parallel.CancellationToken });

    private PlanWay Way(Candidate candidate, AmountPoint now) => new(
        [.. candidate.Changes.Select(c => c.Id)],
        [.. candidate.Changes.Select(c => c.Label)],
        [.. candidate.Changes.Select(c => c.Cost)],
        candidate.Effort,
        candidate.Settings,
        Simulator(candidate.Settings).Fits(Lessons),
        PointOf(candidate.Settings).ClassRight,
        now.ClassRight);

    /// <summary>What the class can conclude does not depend on the clock, so plans that differ only there share it. The whole class
    /// counts, also where it comes in halves.</summary>
    private AmountPoint PointOf(PlanSettings plan)
    {
        PlanSettings whole = plan.Students < settings.Students ? plan.WithClass(settings.Groups, settings.Students) : plan;
        string key = string.Create(
            CultureInfo.InvariantCulture, $"{whole.Groups} {whole.Trials} {whole.Heatings} {whole.SampleInGrams:R} {string.Join('/', whole.Balances.Select(b => b.ResolutionInGrams))} {string.Join(' ', whole.AllConditions)}");
        return points.GetOrAdd(key, _ => new Lazy<AmountPoint>(() => amounts.PointOf(whole))).Value;
    }

    /// <summary>Whether groups that wait for nothing could all be done in time: each step's mean and variance, summed along the
    /// route, taken as normal and independent between groups. No queue, no reheat beyond those planned, so it errs on the side of
    /// trying.</summary>
    private bool MayFit(PlanSettings plan)
    {
        var route = new LessonRoute(plan, tables.Durations);
        double mean = 0;
        double variance = 0;
        Add(route.Opening, 1);
        Add(route.Before, 1);
        Add(route.TrialBefore, plan.Trials);
        Add(route.FirstRound, plan.Trials);
        Add(route.AgainRound, plan.Trials * (plan.Heatings - 1));
        Add(route.TrialAfter, plan.Trials);
        Add(route.After, 1);
        return variance == 0
            ? mean <= plan.Minutes
            : Math.Pow(StandardNormal.Cumulative((plan.Minutes - mean) / Math.Sqrt(variance)), plan.Groups) >= HardlyEver;

        void Add(RouteStep[] steps, int times)
        {
            foreach (RouteStep step in steps)
            {
                double spread = step.Factor * step.Minutes.StandardDeviation;
                mean += times * step.Factor * step.Minutes.Mean;
                variance += times * spread * spread;
            }
        }
    }

    /// <summary>Some changes together.</summary>
    private sealed class Candidate(PlanChange[] changes, PlanSettings settings)
    {
        public PlanChange[] Changes { get; } = changes;

        public PlanSettings Settings { get; } = changes.Aggregate(settings, (plan, change) => change.Apply(plan));

        public int Effort { get; } = changes.Sum(c => c.Effort);

        /// <summary>Probability that it fits, from a few lessons.</summary>
        public double Quick { get; set; }

        /// <summary>Its heavy changes, by which candidates are alike.</summary>
        public string HeavyOnes { get; } = string.Join(' ', changes.Where(c => c.Effort >= Heavy).Select(c => c.Subject));

        public bool IsPartOf(PlanChange[] others) => Changes.All(others.Contains);
    }
}
