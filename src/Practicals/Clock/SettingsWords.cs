using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Clock;

/// <summary>What a plan rests on, in a few words each, so that nobody reads another one into it.</summary>
internal static class SettingsWords
{
    /// <summary>The words, the balances first.</summary>
    public static IReadOnlyList<string> Of(PlanSettings settings) =>
    [
        .. settings.Balances.GroupBy(b => b.ResolutionInGrams).Select(Balances),
        Invariant($"samples of {settings.SampleInGrams:0.######} g"),
        settings.Trials == 1 ? "one trial a group" : Invariant($"{settings.Trials} trials a group"),
        Heatings(settings),
        .. settings.Prepared ? ["prepared by a technician"] : Array.Empty<string>(),
        .. settings.LeftOut.Select(word => $"without {word}"),
        .. settings.Moved.Select(id => $"'{Label(settings, id)}' in another lesson"),
        .. settings.Alongside.Select(id => $"'{Label(settings, id)}' meanwhile"),
        .. settings.Unread.Select(id => $"without the reading '{settings.Practical.Reading(id).Label}'"),
        .. settings.StaggerInMinutes > 0 ? [Invariant($"every second group {settings.StaggerInMinutes:0.#} min later")] : Array.Empty<string>(),
        .. settings.Times.Select(time => Invariant(
            $"'{Label(settings, time.Key)}' {time.Value.Least:0.##}, {time.Value.Likely:0.##}, {time.Value.Most:0.##} min")),
        .. settings.Kit.Select(piece => Invariant($"{piece.Value} of '{settings.Practical.Kit.First(k => k.Id == piece.Key).Label}'")),
        .. settings.Practical.Conditions.Where(c => settings.AllConditions.Contains(c.Id)).Select(c => Condition(settings, c)),
    ];

    /// <summary>What a step of the plan brings about is not what somebody said of the class.</summary>
    private static string Condition(PlanSettings settings, ConditionDefinition condition) =>
        settings.StepThatGives(condition.Id) is LessonStep step ? $"{condition.Label} (by the step '{step.Label}')" : condition.Label;

    private static string Label(PlanSettings settings, string step) => settings.Practical.Steps.First(s => s.Id == step).Label;

    private static string Balances(IGrouping<double, Balance> alike) =>
        Invariant($"{alike.Count()} {(alike.Count() == 1 ? "balance" : "balances")} of {alike.Key:0.########} g");

    private static string Heatings(PlanSettings settings) =>
        settings.Heatings == 1 ? "heated once"
        : settings.Heatings == PlanSettings.MostHeatings(settings.Practical) ? Invariant($"heated {settings.Heatings} times")
        : Invariant($"heated {settings.Heatings} times, and again while the mass changes");

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
