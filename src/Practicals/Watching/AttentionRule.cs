using Calx.Practicals.Clock;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Watching;

/// <summary>Finds what needs the teacher in a group: the most urgent thing alone, so that a tile says one thing.</summary>
internal sealed class AttentionRule(StandingRule rule, EngineLanguage language)
{
    /// <summary>So many minutes beyond the longest usual time before a group counts as waiting long (judgement).</summary>
    private const double Patience = 3;

    private readonly AttentionTexts texts = new(language);

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
            return Say(AttentionKind.BrokenVessel, texts.Broken, broke);
        }

        if (calls.Help is double help)
        {
            return Say(AttentionKind.HelpAsked, Ago(moment.Now - help, texts.HelpJustNow, texts.HelpAgo), help);
        }

        if (at.Heat == HeatState.Burning && moment.Now > moment.LastHeatingStartsBy)
        {
            return Say(AttentionKind.StillHeating, texts.StillHeating(moment.LastHeatingStartsBy.Value.InFigures("F0")), at.Since);
        }

        if (advice is Advice.CheckReading { CannotBe: true })
        {
            // The class sees the tile: which reading, and what it more probably was, is opened on demand.
            return Say(AttentionKind.ImpossibleReading, texts.ImpossibleReading, at.ReadAt);
        }

        if (calls.Correction is double correction)
        {
            return Say(AttentionKind.CorrectionAsked, Ago(moment.Now - correction, texts.CorrectionJustNow, texts.CorrectionAgo), correction);
        }

        if (calls.Queries >= 2)
        {
            return Say(AttentionKind.QueriedTwice, texts.QueriedTwice, at.ReadAt);
        }

        if (at.AwaitsDecision && advice is not Advice.NotYet)
        {
            return Say(AttentionKind.DecisionWaiting, advice.ForTeacher, at.ReadAt);
        }

        return WaitedLong(group, at, moment) is double minutes
            ? Say(AttentionKind.WaitingLong, texts.NothingHeard(minutes.InFigures("F0"), at.Step!.Label), at.Since)
            : Say(AttentionKind.Nothing, string.Empty, null);

        Attention Say(AttentionKind kind, string sentence, double? since) => new(group.Number, kind, sentence, since);
    }

    private static string Ago(double minutes, string justNow, Func<string, string> ago) => minutes < 1 ? justNow : ago(minutes.InFigures("F0"));

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
