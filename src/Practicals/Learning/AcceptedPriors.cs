using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>Numbers of a practical that a teacher took over from past lessons.</summary>
public sealed class AcceptedPriors
{
    private AcceptedPriors(
        Practical practical,
        IReadOnlyDictionary<string, StepMinutes> times,
        IReadOnlyDictionary<string, double> rates,
        IReadOnlyDictionary<string, double> breaks)
    {
        (Times, Rates, Breaks) = (times, rates, breaks);
        Practical = Rates.Count + Breaks.Count == 0 ? practical : practical.With(Rates, Breaks, new Provenance(Standing.Computed, null));
    }

    /// <summary>Times in min, by step: what <see cref="PlanSettings.WithTime"/> takes.</summary>
    public IReadOnlyDictionary<string, StepMinutes> Times { get; }

    /// <summary>Shares of groups, 0 to 1, by cause. What is said of a class ('crucibles fired') still replaces them.</summary>
    public IReadOnlyDictionary<string, double> Rates { get; }

    /// <summary>Shares of pieces that break in a lesson, 0 to 1, by kit.</summary>
    public IReadOnlyDictionary<string, double> Breaks { get; }

    /// <summary>The practical with these rates and breakages in place of the file's; the very same where none was accepted.</summary>
    public Practical Practical { get; }

    /// <summary>Numbers that were accepted earlier and kept. What the practical does not have is passed over, and so is a share that is
    /// none.</summary>
    /// <param name="practical">The practical as its file has it.</param>
    /// <param name="times">Times in min, by step. Of a hot vessel that cools, never shorter than the file's.</param>
    /// <param name="rates">Shares of groups, by cause.</param>
    /// <param name="breaks">Shares of pieces, by kit.</param>
    public static AcceptedPriors Of(
        Practical practical,
        IReadOnlyDictionary<string, StepMinutes> times,
        IReadOnlyDictionary<string, double> rates,
        IReadOnlyDictionary<string, double> breaks)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(times);
        ArgumentNullException.ThrowIfNull(rates);
        ArgumentNullException.ThrowIfNull(breaks);
        return new AcceptedPriors(
            practical,
            practical.Steps.Where(s => times.ContainsKey(s.Id)).ToDictionary(s => s.Id, s => LearnedCooling.Kept(practical, s, times[s.Id])),
            practical.Faults.Where(f => rates.TryGetValue(f.Cause, out double rate) && rate is >= 0 and <= 1).ToDictionary(f => f.Cause, f => rates[f.Cause]),
            practical.Kit.Where(k => breaks.TryGetValue(k.Id, out double share) && share is >= 0 and <= 1).ToDictionary(k => k.Id, k => breaks[k.Id]));
    }

    /// <summary>A plan with these times; times that it has of its own stay.</summary>
    public PlanSettings ApplyTo(PlanSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return Times.Where(t => !settings.Times.ContainsKey(t.Key)).Aggregate(settings, (plan, time) => plan.WithTime(time.Key, time.Value));
    }

    internal static AcceptedPriors Of(Practical practical, IReadOnlyList<LearnedChange> accepted) => Of(
        practical,
        accepted.OfType<LearnedChange.Time>().ToDictionary(c => c.Step, c => c.After),
        accepted.OfType<LearnedChange.Rate>().Where(c => !c.IsBreakage).ToDictionary(c => c.Of, c => c.After),
        accepted.OfType<LearnedChange.Rate>().Where(c => c.IsBreakage).ToDictionary(c => c.Of, c => c.After));
}
