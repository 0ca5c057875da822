using Calx.Papers.Reports;
using System.Globalization;
using Calx.Papers.Documents;
using Calx.Papers.Texts;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Watching;

namespace Calx.Papers.Handouts;

/// <summary>What a group does, with the plan's amounts: the sentences of the practical's sheet, or where it has none the names of
/// the lesson's steps.</summary>
internal static class SheetSteps
{
    public static IReadOnlyList<Phrase> Of(PaperSetting setting) => [.. Told(setting).Select(t => t.Say)];

    /// <summary>The same, each with the ids of the lesson's steps that it tells of; empty for always.</summary>
    public static IReadOnlyList<(Phrase Say, IReadOnlyList<string> Steps)> Told(PaperSetting setting)
    {
        PlanSettings plan = setting.Plan.Settings;
        IReadOnlyList<SheetStep> own = setting.Practical.Sheet.Steps;
        return own.Count > 0
            ? [.. own.Where(s => IsDone(s, setting.Plan.Settings)).Select(s => (Phrase.Of(Put(s.Say, setting)), s.Steps))]
            : [.. setting.Practical.Steps.Where(s => plan.IsInLesson(s) && s.Place.Per != StepPer.Class).Select(s => (Phrase.Of(new SharedTexts(setting.Language).Sentence(Text.Capital(s.Label))), (IReadOnlyList<string>)[s.Id]))];
    }

    /// <summary>A sentence holds unless all the steps that it tells of are left out, done before, or come only with a heating that is not planned.</summary>
    public static bool IsDone(SheetStep step, PlanSettings plan) =>
        step.Steps.Count == 0 || plan.Practical.Steps.Any(s => step.Steps.Contains(s.Id) && IsDone(s, plan));

    private static bool IsDone(LessonStep step, PlanSettings plan) =>
        plan.IsInLesson(step)
        && (step.Reading is null || !plan.Unread.Contains(step.Reading))
        && (step.Place.Round != StepRound.Again || plan.Heatings > 1);

    private static string Put(string sentence, PaperSetting setting)
    {
        PlanSettings plan = setting.Plan.Settings;
        foreach (PredictedReading reading in setting.Plan.ExpectedReadings)
        {
            sentence = sentence.Replace($"{{{reading.Weighing.Reading}}}", Rough(reading), StringComparison.Ordinal);
        }

        return sentence
            .Replace(SheetStep.Sample, Sentences.Mass(plan.SampleInGrams, Decimals(plan)), StringComparison.Ordinal)
            .Replace(SheetStep.Cooling, Minutes(CoolEnough.MinutesFor(plan), setting.Language), StringComparison.Ordinal);
    }

    /// <summary>What a reading is to come to, in two figures: 1200 s, 0.40 A.</summary>
    private static string Rough(PredictedReading reading)
    {
        double value = reading.Written.Median;
        double size = value == 0 ? 1 : Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - 1);
        int decimals = Math.Max(0, -(int)Math.Round(Math.Log10(size)));
        return (Math.Round(value / size) * size).ToString($"F{Math.Min(decimals, reading.Decimals ?? decimals)}", CultureInfo.InvariantCulture) + "\u00a0" + reading.Unit;
    }

    /// <summary>As many as the coarsest balance shows: nobody can weigh out more finely.</summary>
    private static int Decimals(PlanSettings plan) => plan.Balances.Min(b => b.Decimals);

    /// <summary>Rounded up: what is weighed too early reads too low.</summary>
    private static string Minutes(double? minutes, PaperLanguage language) => minutes is double some
        ? Math.Ceiling(some).ToString("F0", CultureInfo.InvariantCulture) : new StudentSheetTexts(language).NoMinutes;
}
