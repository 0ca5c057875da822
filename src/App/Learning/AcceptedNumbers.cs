using Calx.App.Pages;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;
using Calx.Records.Lessons;

namespace Calx.App.Learning;

/// <summary>
/// The accepted numbers that hold for a plan: those of the school and, where its class has its own, the class's in their place. A plan
/// is kept with them, so that what is decided later does not reach a lesson that was held.
/// </summary>
public sealed record AcceptedNumbers
{
    /// <summary>The class whose own numbers are among them; empty where none are.</summary>
    public required string Class { get; init; }

    /// <summary>When the last of them was accepted.</summary>
    public required DateOnly AcceptedOn { get; init; }

    /// <summary>How many lessons the best known of them rests on.</summary>
    public required int Lessons { get; init; }

    /// <summary>Least, likely and most minutes by step.</summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<double>> Times { get; init; }

    /// <summary>Shares of groups by cause.</summary>
    public required IReadOnlyDictionary<string, double> Rates { get; init; }

    /// <summary>Shares of pieces that break, by kit.</summary>
    public required IReadOnlyDictionary<string, double> Breaks { get; init; }

    /// <summary>What holds of a practical's version; null where nothing does.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="decisions">All decisions on its numbers.</param>
    /// <param name="className">The class; empty for any of the school.</param>
    public static AcceptedNumbers? InForce(Practical practical, IReadOnlyList<NumberDecision> decisions, string className)
    {
        NumberDecision[] holding = [.. Standing(decisions, practical.Version).Where(d => !d.IsTakenBack)];
        NumberDecision[] chosen =
        [
            .. holding.Where(d => d.ClassName.Length == 0 || ClassNames.Same(d.ClassName, className))
                .GroupBy(d => d.Number).Select(g => g.MaxBy(d => d.ClassName.Length > 0)!).Where(d => IsKnown(practical, d)),
        ];
        return chosen.Length == 0 ? null : new AcceptedNumbers
        {
            Class = chosen.FirstOrDefault(d => d.ClassName.Length > 0)?.ClassName ?? "",
            AcceptedOn = DateOnly.FromDateTime(chosen.Max(d => d.At).LocalDateTime),
            Lessons = chosen.Max(d => d.Lessons),
            Times = chosen.Where(d => Id(d, NumberText.Time) is not null).ToDictionary(d => Id(d, NumberText.Time)!, IReadOnlyList<double> (d) => Minutes(d.Became)),
            Rates = chosen.Where(d => Id(d, NumberText.Fault) is not null).ToDictionary(d => Id(d, NumberText.Fault)!, d => NumberText.ShareOf(d.Became)!.Value),
            Breaks = chosen.Where(d => Id(d, NumberText.Kit) is not null).ToDictionary(d => Id(d, NumberText.Kit)!, d => NumberText.ShareOf(d.Became)!.Value),
        };
    }

    /// <summary>The last decision on each number of a version, by class and number.</summary>
    public static IEnumerable<NumberDecision> Standing(IReadOnlyList<NumberDecision> decisions, int version) => decisions
        .Where(d => d.PracticalVersion == version).GroupBy(d => (ClassNames.Key(d.ClassName), d.Number)).Select(g => g.MaxBy(d => d.At)!);

    /// <summary>As the engine takes them. A kept plan may name what another program knew: that is passed over.</summary>
    public AcceptedPriors Of(Practical practical) => AcceptedPriors.Of(
        practical,
        Times.Where(t => t.Value is [>= 0, _, > 0 and <= PlanSettings.LongestLesson] && t.Value[0] <= t.Value[1] && t.Value[1] <= t.Value[2])
            .ToDictionary(t => t.Key, t => new StepMinutes(t.Value[0], t.Value[1], t.Value[2])),
        Rates,
        Breaks);

    /// <summary>A plan with them, which says so; times of its own stay.</summary>
    public PlanSettings ApplyTo(PlanSettings settings, AcceptedPriors priors)
    {
        string[] times = [.. priors.Times.Keys.Where(s => !settings.Times.ContainsKey(s))];
        int shares = priors.Rates.Count + priors.Breaks.Count;
        return times.Length + shares == 0 ? settings : priors.ApplyTo(settings).WithLearned(new LearnedFrom(Lessons, Dates.Day(AcceptedOn), Class, times, shares));
    }

    private static string? Id(NumberDecision decision, string kind) =>
        decision.Number.StartsWith(kind, StringComparison.Ordinal) ? decision.Number[kind.Length..] : null;

    private static double[] Minutes(string text) => NumberText.MinutesOf(text) is StepMinutes minutes ? [minutes.Least, minutes.Likely, minutes.Most] : [];

    /// <summary>Whether the practical has the number, and the text is one: an export may have been changed by hand.</summary>
    private static bool IsKnown(Practical practical, NumberDecision decision) =>
        Id(decision, NumberText.Time) is string step ? practical.Steps.Any(s => s.Id == step) && NumberText.MinutesOf(decision.Became) is not null
        : Id(decision, NumberText.Fault) is string cause ? practical.Faults.Any(f => f.Cause == cause) && NumberText.ShareOf(decision.Became) is not null
        : Id(decision, NumberText.Kit) is string piece && practical.Kit.Any(k => k.Id == piece) && NumberText.ShareOf(decision.Became) is not null;
}
