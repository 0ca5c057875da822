using System.Globalization;
using Calx.Practicals.Clock;

namespace Calx.Practicals.Watching;

/// <summary>Finds what needs the teacher in a group: the most urgent thing alone, so that a tile says one thing.</summary>
internal sealed class AttentionRule(StandingRule rule)
{
    /// <summary>So many minutes beyond the longest usual time before a group counts as waiting long (judgement).</summary>
    private const double Patience = 3;

    /// <summary>The most urgent thing.</summary>
    public Attention Of(GroupAtWork group, GroupStanding at, Advice advice, LessonMoment moment)
    {
        GroupCalls calls = group.Calls;
        if (advice is Advice.StopTellYourTeacher)
        {
            return Say(AttentionKind.Stop, advice.ForTeacher, at.Since);
        }

        if (calls.Broken is double broke)
        {
            return Say(AttentionKind.BrokenVessel, "The vessel is broken: gas off, leave it; start again, join another group's data, or go on with simulated data.", broke);
        }

        if (calls.Help is double help)
        {
            return Say(AttentionKind.HelpAsked, $"Asked for help {Ago(moment.Now - help)}.", help);
        }

        if (at.Heat == HeatState.Burning && moment.Now > moment.LastHeatingStartsBy)
        {
            return Say(AttentionKind.StillHeating, string.Create(
                CultureInfo.InvariantCulture,
                $"Still heating, and last heating starts by minute {moment.LastHeatingStartsBy:F0}: see when the flame can be out."), at.Since);
        }

        if (advice is Advice.CheckReading { CannotBe: true })
        {
            // The class sees the tile: which reading, and what it more probably was, is opened on demand.
            return Say(AttentionKind.ImpossibleReading, "A reading cannot be: look at the display or the paper record together.", at.ReadAt);
        }

        if (calls.Correction is double correction)
        {
            return Say(AttentionKind.CorrectionAsked, $"Asked for a correction {Ago(moment.Now - correction)}: compare the display or the paper record.", correction);
        }

        if (calls.Queries >= 2)
        {
            return Say(AttentionKind.QueriedTwice, "The last reading was asked about twice: read the display together.", at.ReadAt);
        }

        if (at.AwaitsDecision && advice is not Advice.NotYet)
        {
            return Say(AttentionKind.DecisionWaiting, advice.ForTeacher, at.ReadAt);
        }

        return WaitedLong(group, at, moment) is double minutes
            ? Say(AttentionKind.WaitingLong, string.Create(
                CultureInfo.InvariantCulture, $"Nothing heard for {minutes:F0} min at '{at.Step!.Label}': longer than usual."), at.Since)
            : Say(AttentionKind.Nothing, string.Empty, null);

        Attention Say(AttentionKind kind, string sentence, double? since) => new(group.Number, kind, sentence, since);
    }

    private static string Ago(double minutes) => minutes < 1
        ? "just now"
        : string.Create(CultureInfo.InvariantCulture, $"{minutes:F0} min ago");

    /// <summary>Minutes at the step, where they are more than all that may be done before the next reading can take.</summary>
    private double? WaitedLong(GroupAtWork group, GroupStanding at, LessonMoment moment)
    {
        if (at.IsDone || at.Step is null || at.Since is not double since || at.Place < 0)
        {
            return null;
        }

        TrialRoute trial = rule.RouteOf(group.Trial);
        double most = Patience;
        for (int i = at.Place; i < trial.Places.Count && !trial.Places[i].Step.Together; i++)
        {
            RouteStep step = trial.Places[i].Step;
            most += step.Minutes.Most * step.Factor;
            if (step.Step.Reading is not null)
            {
                break;
            }
        }

        return moment.Now - since > most && !trial.Places[Math.Min(at.Place, trial.Places.Count - 1)].Step.Together ? moment.Now - since : null;
    }
}
