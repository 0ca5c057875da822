using System.Globalization;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

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
        foreach (LessonStep step in settings.Practical.Steps.Where(settings.IsInLesson))
        {
            StepFreedom freedom = step.Place.Freedom;
            if (freedom.Alongside is string during && !settings.Alongside.Contains(step.Id))
            {
                string meanwhile = settings.Practical.Steps.First(s => s.Id == during).Label;
                yield return new($"alongside:{step.Id}", $"'{step.Label}' during '{meanwhile}'", "nothing but attention", step.Id, 1, s => s.WithAlongside(step.Id));
            }

            if (freedom.Elsewhere != OtherLesson.None)
            {
                string lesson = freedom.Elsewhere == OtherLesson.Before ? "the lesson before" : "the next lesson";
                yield return new(
                    $"moved:{step.Id}", $"'{step.Label}' in {lesson}", Minutes(step, settings, $"of {lesson}"), step.Id, 1, s => s.WithMoved(step.Id));
            }
        }

        foreach (IGrouping<string, LessonStep> block in settings.Practical.Steps.Where(settings.IsInLesson)
            .Where(s => s.Place.Freedom.Optional is not null).GroupBy(s => s.Place.Freedom.Optional!))
        {
            string steps = string.Join(" and ", block.Select(s => $"'{s.Label}'"));
            yield return new($"without:{block.Key}", $"without {steps}", "see the conclusion", block.Key, 2, s => s.WithLeftOut(block.Key));
        }

        foreach (double minutes in settings.StaggerInMinutes == 0 && settings.Groups > 1 ? (double[])[4, 8] : [])
        {
            yield return new(
                string.Create(CultureInfo.InvariantCulture, $"stagger:{minutes}"),
                string.Create(CultureInfo.InvariantCulture, $"every second group starts {minutes} min later, with the heading of the table first"),
                "nothing but order", "stagger", 1, s => s.WithStagger(minutes));
        }
    }

    /// <summary>Less of the sample, where steps then take less time.</summary>
    private static IEnumerable<PlanChange> Smaller(PlanSettings settings, double? smallestInGrams)
    {
        if (smallestInGrams is double grams && grams < 0.95 * settings.SampleInGrams && settings.Practical.Steps.Any(s => settings.IsInLesson(s) && s.Place.Grows > 0))
        {
            yield return new(
                "smaller-sample", string.Create(CultureInfo.InvariantCulture, $"{grams:0.######} g instead of {settings.SampleInGrams:0.######} g"),
                "see the conclusion", "sample", 1, s => s.WithSample(grams));
        }
    }

    private static IEnumerable<PlanChange> Prepared(PlanSettings settings)
    {
        LessonStep[] steps = [.. settings.Practical.Steps.Where(s => settings.IsInLesson(s) && s.Place.Freedom.Prepared)];
        if (steps.Length > 0)
        {
            // What needs no hand, such as cooling, costs the technician none.
            double minutes = steps.Where(s => s.Kit.Count > 0 || s.Place.Freedom.Gives is not null).Sum(s => s.Minutes.Mean) * settings.Groups * settings.Trials;
            yield return new(
                "prepared",
                "prepared by a technician",
                string.Create(CultureInfo.InvariantCulture, $"up to {minutes:F0} min of the technician's time"),
                "prepared", 2, s => s.WithPrepared(true));
        }
    }

    private static IEnumerable<PlanChange> Fewer(PlanSettings settings)
    {
        if (settings.Heatings > 1)
        {
            yield return new("one-heating", "one heating, no reheat", "no group can show constant mass", "heatings", 2, s => s.WithHeatings(1));
        }

        if (settings.Trials > 1)
        {
            yield return new("one-trial", "one trial of each group, and all share their results", "no group sees its own scatter", "trials", 2, s => s.WithTrials(1));
        }

        int ofThree = (settings.Students + 2) / 3;
        if (settings.Groups > 1 && ofThree < settings.Groups)
        {
            yield return new(
                "threes",
                string.Create(CultureInfo.InvariantCulture, $"groups of three: {ofThree} groups instead of {settings.Groups}"),
                "less to do for each student", "groups", 2, s => s.WithClass(ofThree, s.Students));
        }
    }

    private static IEnumerable<PlanChange> Balances(PlanSettings settings)
    {
        double finest = settings.Balances.Min(b => b.ResolutionInGrams);
        if (settings.Balances.Any(b => b.ResolutionInGrams > finest))
        {
            yield return new(
                "finest-only", string.Create(CultureInfo.InvariantCulture, $"only the balances of {finest} g"), "a longer queue",
                "balances", 1, s => s.WithBalances([.. s.Balances.Where(b => b.ResolutionInGrams == finest)]));
        }

        for (int more = 1; more <= 2 && settings.Balances.Count + more <= Math.Min(MostBalances, settings.Groups); more++)
        {
            int number = more;
            yield return new(
                string.Create(CultureInfo.InvariantCulture, $"balances+{more}"),
                more == 1 ? "one more balance" : "two more balances",
                more == 1 ? "a balance to borrow" : "two balances to borrow",
                "balances", 2 * more, s => s.WithBalances([.. s.Balances, .. Enumerable.Repeat(s.Balances[0], number)]));
        }
    }

    private static IEnumerable<PlanChange> OtherLessons(PlanSettings settings)
    {
        if (settings.Groups > 3)
        {
            int half = (settings.Groups + 1) / 2;
            yield return new(
                "halves",
                string.Create(CultureInfo.InvariantCulture, $"half of the groups at a time ({half}), the others at something else, then in another lesson"),
                "another lesson, and other work for half of the class", "groups", 5, s => s.WithClass(half, (s.Students + 1) / 2));
        }

        if (2 * settings.Minutes <= PlanSettings.LongestLesson)
        {
            string twice = settings.Minutes < LongestSingle ? "a double lesson of" : "twice the time,";
            yield return new("double-lesson", string.Create(
                CultureInfo.InvariantCulture, $"{twice} {2 * settings.Minutes:0.#} min"), "another lesson", "minutes", 5, s => s.WithMinutes(2 * s.Minutes));
        }
    }

    private static string Minutes(LessonStep step, PlanSettings settings, string where) => string.Create(
        CultureInfo.InvariantCulture, $"about {settings.Times.GetValueOrDefault(step.Id, step.Minutes).Mean:F0} min {where}");
}
