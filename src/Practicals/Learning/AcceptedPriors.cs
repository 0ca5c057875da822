using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>Numbers of a practical that a teacher took over from past lessons.</summary>
public sealed class AcceptedPriors
{
    internal AcceptedPriors(Practical practical, IReadOnlyList<LearnedChange> accepted)
    {
        Times = accepted.OfType<LearnedChange.Time>().ToDictionary(c => c.Step, c => c.After);
        Rates = accepted.OfType<LearnedChange.Rate>().Where(c => !c.IsBreakage).ToDictionary(c => c.Of, c => c.After);
        Breaks = accepted.OfType<LearnedChange.Rate>().Where(c => c.IsBreakage).ToDictionary(c => c.Of, c => c.After);
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

    /// <summary>A plan with these times; times that it has of its own stay.</summary>
    public PlanSettings ApplyTo(PlanSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return Times.Where(t => !settings.Times.ContainsKey(t.Key)).Aggregate(settings, (plan, time) => plan.WithTime(time.Key, time.Value));
    }
}
