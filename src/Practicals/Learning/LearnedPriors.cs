using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>
/// What past lessons say of the numbers of a practical: step times, rates of faults, breakages, and how balances drift. Nothing is
/// changed: what a teacher accepts goes into the next plan by <see cref="Accept"/> (docs/methods/learning.md).
/// </summary>
public sealed class LearnedPriors
{
    private readonly Practical practical;

    private LearnedPriors(Practical practical, IReadOnlyList<PastLesson> lessons, IReadOnlyList<BalanceCheckSeen> checks, NextLesson next)
    {
        this.practical = practical;
        var words = new LearningWords(next.Language);
        Changes =
        [
            // Steps do not depend on each other, so any number of threads gives the same.
            .. practical.Steps.AsParallel().AsOrdered().Select(s => Time(practical, s, lessons, next, words)).OfType<LearnedChange>(),
            .. practical.Faults.Select(f => Fault(f, lessons, next, words)).OfType<LearnedChange>(),
            .. practical.Kit.Select(k => Breakage(k, lessons, next, words)).OfType<LearnedChange>(),
        ];
        Drifts =
        [
            .. checks.GroupBy(c => c.Balance).OrderBy(b => b.Key, StringComparer.Ordinal)
                .Select(b => LearnedDrift.Of(b.Key, [.. b], next.Language)).OfType<LearnedDrift>(),
        ];
    }

    /// <summary>Every number of which a past lesson says something, in the order of the practical: times, faults, kit.</summary>
    public IReadOnlyList<LearnedChange> Changes { get; }

    /// <summary>Every balance with checks at three times or more, by name.</summary>
    public IReadOnlyList<LearnedDrift> Drifts { get; }

    /// <summary>What a teacher is told before the next lesson: differences beyond chance only.</summary>
    public IReadOnlyList<string> Sentences => [.. Changes.Select(c => c.Sentence).Concat(Drifts.Select(d => d.Sentence)).OfType<string>()];

    /// <summary>Learns from past lessons of a practical. What they name that the practical does not have is passed over.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="lessons">Its lessons, in any order.</param>
    /// <param name="checks">Checks of balances, in any order.</param>
    /// <param name="next">The lesson that it is for.</param>
    public static LearnedPriors Of(
        Practical practical, IReadOnlyList<PastLesson> lessons, IReadOnlyList<BalanceCheckSeen> checks, NextLesson next)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(lessons);
        ArgumentNullException.ThrowIfNull(checks);
        ArgumentNullException.ThrowIfNull(next);
        return new LearnedPriors(practical, lessons, checks, next);
    }

    /// <summary>The changes that a teacher accepts.</summary>
    /// <param name="ids">Ids of <see cref="Changes"/>.</param>
    /// <exception cref="ArgumentException">There is no such change.</exception>
    public AcceptedPriors Accept(IReadOnlyCollection<string> ids)
    {
        ArgumentNullException.ThrowIfNull(ids);
        LearnedChange[] accepted = [.. Changes.Where(c => ids.Contains(c.Id))];
        string? unknown = ids.FirstOrDefault(id => accepted.All(c => c.Id != id));
        return unknown is null ? AcceptedPriors.Of(practical, accepted) : throw new ArgumentException($"Nothing was learned of '{unknown}'.", nameof(ids));
    }

    private static LearnedChange.Time? Time(Practical practical, LessonStep step, IReadOnlyList<PastLesson> lessons, NextLesson next, LearningWords words)
    {
        if (step.Minutes.Most <= 0 || !lessons.Any(l => l.Steps.Any(s => s.Step == step.Id)))
        {
            return null;
        }

        Timed timed = TimeRule.Of(step.Minutes, step.Id, lessons, next);
        StepMinutes kept = LearnedCooling.Kept(practical, step, timed.Minutes);
        bool isHeld = kept.Likely > timed.Minutes.Likely;
        string? sentence = isHeld ? words.CoolsNoFaster(step, timed) : words.Took(step, timed);
        return new LearnedChange.Time(step, timed, kept, words.Times(timed.Times, timed.Lessons), sentence);
    }

    private static LearnedChange.Rate? Fault(FaultDefinition fault, IReadOnlyList<PastLesson> lessons, NextLesson next, LearningWords words)
    {
        ClassCount[] seen = [.. lessons.SelectMany(l => l.Faults.Where(f => f.Cause == fault.Cause && f.Groups > 0)
            .Select(f => new ClassCount(l.School, l.ClassName, f.Groups, f.Expected)))];
        if (seen.Length == 0)
        {
            return null;
        }

        Rated rated = RateRule.Of(fault.Rate, ClassCount.Together(seen), next, next.Groups);
        return new LearnedChange.Rate(
            LearnedChange.Rate.IdOfFault(fault.Cause), fault.Label, fault.Cause, fault.Rate, rated,
            (Own(seen, next), words.Groups(rated.Tried, Own(seen, next))), words.Happened(fault.Label, fault.Rate, rated));
    }

    private static LearnedChange.Rate? Breakage(KitItem kit, IReadOnlyList<PastLesson> lessons, NextLesson next, LearningWords words)
    {
        ClassCount[] seen = [.. lessons.SelectMany(l => l.Kit.Where(k => k.Piece == kit.Id && k.Used > 0)
            .Select(k => new ClassCount(l.School, l.ClassName, k.Used, k.Broken)))];
        if (seen.Length == 0)
        {
            return null;
        }

        Rated rated = RateRule.Of(kit.Loss.Breaks, ClassCount.Together(seen), next, next.Groups);
        return new LearnedChange.Rate(
            LearnedChange.Rate.IdOfKit(kit.Id), kit.Label, kit.Id, kit.Loss.Breaks, rated,
            (Own(seen, next), words.Pieces(rated.Tried, Own(seen, next))), words.Broke(kit.Label, kit.Loss.Breaks, rated));
    }

    private static int Own(ClassCount[] seen, NextLesson next) => seen.Count(s => s.School == next.School);
}
