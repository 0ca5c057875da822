using System.Globalization;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Planning.Ways;

/// <summary>Everything that a teacher could do otherwise with a plan, from the practical's own steps.</summary>
internal static class PlanChanges
{
    private const int MostBalances = 4;

    /// <summary>From so many minutes on a lesson is a double one already.</summary>
    private const double LongestSingle = 75;

    /// <summary>The changes that the plan has not made yet.</summary>
    /// <param name="settings">The plan.</param>
    /// <param name="smallestInGrams">The smallest sample that will do, or null where none is known.</param>
    public static IReadOnlyList<PlanChange> Of(PlanSettings settings, double? smallestInGrams = null) =>
    [
        .. Steps(settings), .. Smaller(settings, smallestInGrams), .. Prepared(settings), .. Fewer(settings), .. Balances(settings), .. OtherLessons(settings),
    ];

    private static IEnumerable<PlanChange> Steps(PlanSettings settings)
    {
        var texts = new PlanChangeTexts(settings.Language);
        var wording = new Wording(settings.Language);
        foreach (LessonStep step in settings.Practical.Steps.Where(settings.IsInLesson))
        {
            StepFreedom freedom = step.Place.Freedom;
            if (freedom.Alongside is string during && !settings.Alongside.Contains(step.Id))
            {
                string meanwhile = settings.Practical.Steps.First(s => s.Id == during).Label;
                yield return new($"alongside:{step.Id}", texts.During(step.Label, meanwhile), texts.OnlyAttention, step.Id, 1, s => s.WithAlongside(step.Id));
            }

            if (freedom.Elsewhere != OtherLesson.None)
            {
                string minutes = settings.Times.GetValueOrDefault(step.Id, step.Minutes).Mean.InFigures("F0");
                (string label, string cost) = freedom.Elsewhere == OtherLesson.Before
                    ? (texts.LessonBefore(step.Label), texts.LessonBeforeMinutes(minutes)) : (texts.NextLesson(step.Label), texts.NextLessonMinutes(minutes));
                yield return new($"moved:{step.Id}", label, cost, step.Id, 1, s => s.WithMoved(step.Id));
            }
        }

        foreach (IGrouping<string, LessonStep> block in settings.Practical.Steps.Where(settings.IsInLesson)
            .Where(s => s.Place.Freedom.Optional is not null).GroupBy(s => s.Place.Freedom.Optional!))
        {
            string steps = wording.AllAnd([.. block.Select(s => wording.Quoted(s.Label))]);
            yield return new($"without:{block.Key}", texts.Without(steps), texts.SeeConclusion, block.Key, 2, s => s.WithLeftOut(block.Key));
        }

        foreach (double minutes in settings.StaggerInMinutes == 0 && settings.Groups > 1 ? (double[])[4, 8] : [])
        {
            yield return new(
                string.Create(CultureInfo.InvariantCulture, $"stagger:{minutes}"),
                texts.Staggered(minutes.InFigures()),
                texts.OnlyOrder, "stagger", 1, s => s.WithStagger(minutes));
        }
    }

    /// <summary>Less of the sample, where steps then take less time.</summary>
    private static IEnumerable<PlanChange> Smaller(PlanSettings settings, double? smallestInGrams)
    {
        if (smallestInGrams is double grams && grams < 0.95 * settings.SampleInGrams && settings.Practical.Steps.Any(s => settings.IsInLesson(s) && s.Place.Grows > 0))
        {
            var texts = new PlanChangeTexts(settings.Language);
            yield return new(
                "smaller-sample", texts.SmallerSample(grams.InFigures("0.######"), settings.SampleInGrams.InFigures("0.######")),
                texts.SeeConclusion, "sample", 1, s => s.WithSample(grams));
        }
    }

    private static IEnumerable<PlanChange> Prepared(PlanSettings settings)
    {
        LessonStep[] steps = [.. settings.Practical.Steps.Where(s => settings.IsInLesson(s) && s.Place.Freedom.Prepared)];
        if (steps.Length > 0)
        {
            // What needs no hand, such as cooling, costs the technician none.
            double minutes = steps.Where(s => s.Kit.Count > 0 || s.Place.Freedom.Gives is not null).Sum(s => s.Minutes.Mean) * settings.Groups * settings.Trials;
            var texts = new PlanChangeTexts(settings.Language);
            yield return new("prepared", texts.Prepared, texts.TechnicianMinutes(minutes.InFigures("F0")), "prepared", 2, s => s.WithPrepared(true));
        }
    }

    private static IEnumerable<PlanChange> Fewer(PlanSettings settings)
    {
        var texts = new PlanChangeTexts(settings.Language);
        if (settings.Heatings > 1)
        {
            yield return new("one-heating", texts.OneHeating, texts.NoConstantMass, "heatings", 2, s => s.WithHeatings(1));
        }

        if (settings.Trials > 1)
        {
            yield return new("one-trial", texts.OneTrial, texts.NoScatter, "trials", 2, s => s.WithTrials(1));
        }

        int ofThree = (settings.Students + 2) / 3;
        if (settings.Groups > 1 && ofThree < settings.Groups)
        {
            yield return new(
                "threes",
                texts.Threes(ofThree.InFigures(), settings.Groups.InFigures()),
                texts.LessToDo, "groups", 2, s => s.WithClass(ofThree, s.Students));
        }
    }

    private static IEnumerable<PlanChange> Balances(PlanSettings settings)
    {
        var texts = new PlanChangeTexts(settings.Language);
        double finest = settings.Balances.Min(b => b.ResolutionInGrams);
        if (settings.Balances.Any(b => b.ResolutionInGrams > finest))
        {
            yield return new(
                "finest-only", texts.OnlyFinest(finest.InFigures()), texts.LongerQueue,
                "balances", 1, s => s.WithBalances([.. s.Balances.Where(b => b.ResolutionInGrams == finest)]));
        }

        for (int more = 1; more <= 2 && settings.Balances.Count + more <= Math.Min(MostBalances, settings.Groups); more++)
        {
            int number = more;
            yield return new(
                string.Create(CultureInfo.InvariantCulture, $"balances+{more}"),
                more == 1 ? texts.OneMoreBalance : texts.TwoMoreBalances,
                more == 1 ? texts.OneToBorrow : texts.TwoToBorrow,
                "balances", 2 * more, s => s.WithBalances([.. s.Balances, .. Enumerable.Repeat(s.Balances[0], number)]));
        }
    }

    private static IEnumerable<PlanChange> OtherLessons(PlanSettings settings)
    {
        var texts = new PlanChangeTexts(settings.Language);
        if (settings.Groups > 3)
        {
            int half = (settings.Groups + 1) / 2;
            yield return new("halves", texts.Halves(half.InFigures()), texts.OtherWork, "groups", 5, s => s.WithClass(half, (s.Students + 1) / 2));
        }

        if (2 * settings.Minutes <= PlanSettings.LongestLesson)
        {
            string minutes = (2 * settings.Minutes).InFigures("0.#");
            string label = settings.Minutes < LongestSingle ? texts.DoubleLesson(minutes) : texts.TwiceTheTime(minutes);
            yield return new("double-lesson", label, texts.AnotherLesson, "minutes", 5, s => s.WithMinutes(2 * s.Minutes));
        }
    }
}
