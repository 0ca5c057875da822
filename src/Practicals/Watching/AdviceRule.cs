using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Watching;

/// <summary>
/// What a group is to do now: what keeps people safe first, then the decision of docs/methods/decision.md, kept within the
/// lesson's rules. 'Reheat' is never said after the last heating starts, beyond the most heatings, or where only the teacher
/// heats.
/// </summary>
internal sealed class AdviceRule(PlanSettings plan, LessonRoute route, Lazy<WatchModel> model)
{
    private readonly Practical practical = plan.Practical;
    private readonly AdviceWords words = new(plan.Language);

    /// <summary>Advises a group.</summary>
    public Advice Of(GroupAtWork group, GroupStanding at, LessonMoment moment, IReadOnlyList<GroupReadings>? classmates)
    {
        string[] seen = GroupProblem.SeenBy(practical, group.Readings);
        string[] stops = [.. practical.Observations.Where(o => o.Stop && seen.Contains(o.Id)).Select(o => o.Label)];
        if (stops.Length > 0)
        {
            return new Advice.StopTellYourTeacher(stops, words);
        }

        if (!group.Condition.Weighs)
        {
            return new Advice.NotYet(words, words.Texts.NoReadings);
        }

        if (group.Readings.Readings.Count == 0)
        {
            return new Advice.NotYet(words, words.Texts.NothingWeighed);
        }

        (GroupDiagnosis diagnosis, ConstantMass? rule) = model.Value.Of(group, MinutesCooled(group), classmates);
        return diagnosis.Decision is Decision.Taken taken
            ? Limited(taken, diagnosis, rule, at, moment)
            : new Advice.NotYet(words, diagnosis.Decision.Why);
    }

    private Advice Limited(Decision.Taken taken, GroupDiagnosis diagnosis, ConstantMass? rule, GroupStanding at, LessonMoment moment)
    {
        if (at.HasGoneOn && taken.Verdict != Verdict.CheckReading)
        {
            return new Advice.NotYet(words, words.Texts.HasGoneOn);
        }

        switch (taken.Verdict)
        {
            case Verdict.CheckReading:
                return new Advice.CheckReading(diagnosis, taken.Reading!, words);
            case Verdict.CannotTell:
                return new Advice.CannotTell(diagnosis, words);
            case Verdict.CoolAndReweigh:
                return new Advice.CoolAndReweigh(diagnosis, words);
            default:
                return Again(taken, at, moment) is NoMoreHeating why
                    ? new Advice.StopHere(diagnosis, why, words.StopHereForTeacher(why, moment.LastHeatingStartsBy, rule), words)
                    : taken.Verdict == Verdict.Reheat ? new Advice.Reheat(diagnosis, words) : new Advice.ConstantMass(diagnosis, words);
        }
    }

    /// <summary>What stands against another heating where it would be worth its minutes; null where nothing does, or it would
    /// not.</summary>
    private NoMoreHeating? Again(Decision.Taken taken, GroupStanding at, LessonMoment moment)
    {
        if (!DecisionRule.IsReheatWorthIt(practical, taken.ProbabilitySpoiled))
        {
            return null;
        }

        return at.Weighed >= PlanSettings.MostHeatings(practical) ? NoMoreHeating.MostHeatings
            : moment.Now > moment.LastHeatingStartsBy ? NoMoreHeating.NoTime
            : route.AgainRound.Any(s => s.Flame && s.Step.Kit.ContainsKey(LessonStep.Teacher)) ? NoMoreHeating.TeacherOnly
            : null;
    }

    /// <summary>Minutes between flame out and the last weighing after heating, where both are known.</summary>
    private double? MinutesCooled(GroupAtWork group)
    {
        string? reading = practical.Cooling?.Reading;
        TakenReading? last = reading is null ? null : group.Readings.LastOf(reading);
        return last is not null && group.Moments.FlameOut is double put
            && group.Moments.ReadAt.TryGetValue(last.Id, out double read) && read >= put
            ? read - put
            : null;
    }
}
