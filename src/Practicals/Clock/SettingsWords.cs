using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Clock;

/// <summary>What a plan rests on, in a few words each, so that nobody reads another one into it.</summary>
internal static class SettingsWords
{
    /// <summary>The words, the balances first.</summary>
    public static IReadOnlyList<string> Of(PlanSettings settings)
    {
        var texts = new SettingsTexts(settings.Language);
        return
        [
            .. settings.Balances.GroupBy(b => b.ResolutionInGrams).Select(alike => Balances(alike, texts)),
            .. settings.Practical.Amounts is null ? Array.Empty<string>() : [texts.Samples(settings.SampleInGrams.InFigures("0.######"))],
            settings.Trials == 1 ? texts.OneTrial : texts.SomeTrials(settings.Trials.InFigures()),
            .. PlanSettings.MostHeatings(settings.Practical) > 1 ? [Heatings(settings, texts)] : Array.Empty<string>(),
            .. settings.Prepared ? [texts.Prepared] : Array.Empty<string>(),
            .. settings.LeftOut.Select(texts.Without),
            .. settings.Moved.Select(id => texts.InAnotherLesson(Label(settings, id))),
            .. settings.Alongside.Select(id => texts.Meanwhile(Label(settings, id))),
            .. settings.Unread.Select(id => texts.WithoutReading(settings.Practical.Reading(id).Label)),
            .. settings.StaggerInMinutes > 0 ? [texts.Staggered(settings.StaggerInMinutes.InFigures("0.#"))] : Array.Empty<string>(),
            .. LearnedInPlanWords.Of(settings, texts),
            .. settings.Times.Where(time => settings.Learned?.Times.Contains(time.Key) != true).Select(time => texts.OwnTimes(
                Label(settings, time.Key), time.Value.Least.InFigures("0.##"), time.Value.Likely.InFigures("0.##"), time.Value.Most.InFigures("0.##"))),
            .. settings.Kit.Select(piece => texts.PiecesOf(piece.Value.InFigures(), settings.Practical.Kit.First(k => k.Id == piece.Key).Label)),
            .. settings.Practical.Conditions.Where(c => settings.AllConditions.Contains(c.Id)).Select(c => Condition(settings, c, texts)),
        ];
    }

    /// <summary>What a step of the plan brings about is not what somebody said of the class.</summary>
    private static string Condition(PlanSettings settings, ConditionDefinition condition, SettingsTexts texts) =>
        settings.StepThatGives(condition.Id) is LessonStep step ? texts.ByStep(condition.Label, step.Label) : condition.Label;

    private static string Label(PlanSettings settings, string step) => settings.Practical.Steps.First(s => s.Id == step).Label;

    private static string Balances(IGrouping<double, Balance> alike, SettingsTexts texts)
    {
        (string count, string grams) = (alike.Count().InFigures(), alike.Key.InFigures("0.########"));
        return alike.Count() == 1 ? texts.OneBalance(count, grams) : texts.SomeBalances(count, grams);
    }

    private static string Heatings(PlanSettings settings, SettingsTexts texts) =>
        settings.Heatings == 1 ? texts.HeatedOnce
        : settings.Heatings == PlanSettings.MostHeatings(settings.Practical) ? texts.HeatedTimes(settings.Heatings.InFigures())
        : texts.HeatedAndAgain(settings.Heatings.InFigures());
}
