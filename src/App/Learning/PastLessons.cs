using System.Runtime.CompilerServices;
using Calx.App.Live;
using Calx.Chemistry.Elements;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;
using Calx.Records;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Learning;

/// <summary>Gathers what the records' lessons of a practical say of its numbers. A lesson that has not moved on is not worked out again.</summary>
public sealed class PastLessons(RecordStore store, LessonRooms rooms, KnownBalances school, TimeProvider clock)
{
    /// <summary>Lessons that are looked at, the latest: some years of a department.</summary>
    private const int Most = 100;

    /// <summary>Nobody is at work in a lesson that began so long ago, whether or not somebody ended it.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromHours(24);

    private readonly ConditionalWeakTable<LessonView, LessonLearned> known = [];
    private readonly LearnedAnswers answers = new();

    /// <summary>What they say for a practical's next lesson.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="className">The class of the next lesson; empty for any of the school.</param>
    /// <param name="groups">How many groups there will be.</param>
    /// <param name="cancellation">Gives up.</param>
    public async Task<Learned> Of(Practical practical, string className, int groups, CancellationToken cancellation)
    {
        Dictionary<RecordId, SchoolClass> classes = (await store.Classes(cancellation)).ToDictionary(c => c.Id);
        IReadOnlySet<RecordId> covers = await store.CoverLessons(cancellation);
        LetteredBalances balances = await school.Now(cancellation);
        Lesson[] of = [.. (await store.Lessons(cancellation)).Where(l => l.PracticalId == practical.Id && classes.ContainsKey(l.ClassId))];
        var taken = new List<(Lesson Lesson, LessonLearned Learned)>();
        var left = new List<LeftOut>();
        FaultModels models = new();
        foreach (Lesson lesson in of)
        {
            LeftOut? why = taken.Count >= Most ? LeftOut.TooOld
                : lesson.Settings.Trial ? LeftOut.TrialRun
                : covers.Contains(lesson.Id) ? LeftOut.Cover
                : null;
            if (why is null && await Read(lesson, classes[lesson.ClassId], practical, balances, models, cancellation) is LessonLearned learned)
            {
                taken.Add((lesson, learned));
            }
            else
            {
                left.Add(why ?? await WhyNot(lesson, cancellation));
            }
        }

        var asked = new LearnedQuestion(practical, ClassNames.Key(className), groups, [.. taken.Select(t => t.Learned.Seen)], await Checks(balances, cancellation));
        LearnedPriors priors = await answers.Of(asked, cancellation);
        return new Learned(practical, className, priors, taken.Count, taken.Sum(t => t.Learned.Groups), left)
        {
            Classes = [.. classes.Values.Select(c => c.Name).DistinctBy(ClassNames.Key).Order(StringComparer.OrdinalIgnoreCase)],
            ClassesSeen = taken.Select(t => ClassNames.Key(classes[t.Lesson.ClassId].Name)).Distinct().Count(),
        };
    }

    /// <summary>What the lesson says, or null where it is not over or cannot be read.</summary>
    private async Task<LessonLearned?> Read(
        Lesson lesson, SchoolClass of, Practical practical, LetteredBalances balances, FaultModels models, CancellationToken cancellation)
    {
        try
        {
            if (await rooms.Find(lesson.Id, cancellation) is not LessonRoom room)
            {
                return null;
            }

            LessonView view = await room.Now(cancellation);
            if (!IsOver(view))
            {
                return null;
            }

            if (!known.TryGetValue(view, out LessonLearned? learned))
            {
                learned = await Task.Run(() => LessonLearned.Of(view, balances, of.Name, models.For), cancellation);
                known.AddOrUpdate(view, learned);
            }

            return learned with { Seen = DefinitionKept.Of(learned.Seen, room.Practical, practical) };
        }
        catch (InvalidDataException)
        {
            // Kept by a program that knew other practicals; its own page says what is wrong.
            return null;
        }
    }

    private async Task<LeftOut> WhyNot(Lesson lesson, CancellationToken cancellation)
    {
        try
        {
            return await rooms.Find(lesson.Id, cancellation) is LessonRoom room && !IsOver(await room.Now(cancellation)) ? LeftOut.NotOver : LeftOut.Unreadable;
        }
        catch (InvalidDataException)
        {
            return LeftOut.Unreadable;
        }
    }

    private bool IsOver(LessonView view) =>
        view.State.BeganAt is DateTimeOffset began && (view.State.IsOver || clock.GetUtcNow() - began > Longest);

    private async Task<IReadOnlyList<DatedCheck>> Checks(LetteredBalances balances, CancellationToken cancellation)
    {
        const double DaysInMonth = 365.25 / 12;
        var seen = new List<DatedCheck>();
        foreach (KeptBalance one in balances.Kept)
        {
            if (balances.Of(one.Letter) is not { } balance)
            {
                continue;
            }

            double divisions = balance.ResolutionInGrams;
            seen.AddRange((await store.Checks(one.Id, cancellation)).Select(c => new DatedCheck(
                one.Letter,
                (c.At - DateTimeOffset.UnixEpoch).TotalDays / DaysInMonth,
                (double)(c.Shown.Value - c.Weight.Value) / divisions,
                balance.ReadingStandardUncertainty() / divisions)));
        }

        return seen;
    }

    /// <summary>Models for counting faults, each made ready once: most lessons have the same practical and conditions.</summary>
    private sealed class FaultModels
    {
        private readonly Dictionary<string, FaultCounts> made = new(StringComparer.Ordinal);

        public FaultCounts For(PlanSettings plan)
        {
            string key = $"{string.Join(',', plan.AllConditions)}\n{plan.Practical.SourceText}";
            return made.TryGetValue(key, out FaultCounts? known) ? known : made[key] = new FaultCounts(plan.Practical, plan.AllConditions, AtomicWeights.Iupac2024);
        }
    }
}
