using Calx.Practicals.Clock;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Learning;

/// <summary>
/// How long groups took for the steps of a lesson, from what was heard of them: when they came to a step, lit a flame, put it out, took
/// a reading. Between two things heard lies one step, or one that takes nearly all of the time; anything else says nothing of single
/// steps and is passed over, and so is a time in which a group may have waited for shared kit (docs/methods/learning.md).
/// </summary>
public static class HeardSteps
{
    /// <summary>A step that takes so much of the file's time between two things heard is learned from them; the others are taken to have
    /// lasted as the file says. Judgement.</summary>
    private const double MainShare = 0.75;

    /// <summary>The times of a lesson.</summary>
    /// <param name="plan">Its plan, with the times of the file.</param>
    /// <param name="workBegan">The minute at which the groups' own work began, or null where nobody said so.</param>
    /// <param name="trials">What was heard, one for each group and trial.</param>
    public static IReadOnlyList<StepSeen> Of(PlanSettings plan, double? workBegan, IReadOnlyList<HeardTrial> trials)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(trials);
        var route = new LessonRoute(plan, new DurationTable());
        var queue = new HeardQueue(trials);
        var seen = new List<StepSeen>();
        if (workBegan is double began && Main(route.Opening, began) is StepSeen opening)
        {
            seen.Add(opening);
        }

        HeardRoute first = new(plan, route, isFirst: true), later = new(plan, route, isFirst: false);
        foreach (HeardTrial trial in trials)
        {
            seen.AddRange(OfTrial(trial, trial.IsFirst ? first : later, trial.IsFirst ? workBegan : null, queue));
        }

        return seen;
    }

    private static IEnumerable<StepSeen> OfTrial(HeardTrial trial, HeardRoute route, double? workBegan, HeardQueue queue)
    {
        (int At, double From, bool FlameLit)? known = workBegan is double began && began >= 0 ? (0, began, false) : null;
        foreach (HeardMark mark in trial.Marks)
        {
            int from = known?.At ?? 0;
            if (route.BoundaryOf(mark, from) is not int at || at < from)
            {
                continue;
            }

            if (known is (int before, double since, bool lit) && at > before && !MayHaveWaited(route, before, at, lit, mark, trial.Group, queue)
                && Main([.. Enumerable.Range(before, at - before).Select(i => route[i])], mark.Minute - since) is StepSeen step)
            {
                yield return step;
            }

            // A hot vessel cools from the moment the flame is out, whatever is tapped later; any other step begins with the last thing heard.
            bool cools = known?.At == at && at > 0 && route[at - 1].Flame && at < route.Count && route[at].Cools && mark is not HeardMark.FlameOut;
            known = cools ? known : (at, mark.Minute, mark is HeardMark.FlameLit);
        }

        if (trial.EndedAt is double ended && known is (int place, double start, _) && Unfinished(route, place, ended - start, trial.Marks) is StepSeen unfinished)
        {
            yield return unfinished;
        }
    }

    /// <summary>The step that takes all of the time between two things heard, or nearly all; null where there is none.</summary>
    private static StepSeen? Main(RouteStep[] steps, double minutes)
    {
        double[] means = [.. steps.Select(s => s.Step.Minutes.Mean * s.Factor)];
        double all = means.Sum();
        int main = Array.IndexOf(means, means.DefaultIfEmpty(0).Max());
        if (main < 0 || (steps.Length > 1 && means[main] < MainShare * all))
        {
            return null;
        }

        double own = (minutes - (all - means[main])) / steps[main].Factor;
        return own > 0 ? new StepSeen(steps[main].Step.Id, own) : null;
    }

    /// <summary>Who taps 'done' and then waits for a burner, a balance or the teacher has not begun.</summary>
    private static bool MayHaveWaited(HeardRoute route, int before, int at, bool flameLit, HeardMark mark, int group, HeardQueue queue)
    {
        for (int i = before; i < at; i++)
        {
            IReadOnlyDictionary<string, int> kit = route[i].Step.Kit;
            bool burns = flameLit && i == before;
            bool weighs = i == at - 1 && mark is HeardMark.Read && kit.Keys.All(id => id == LessonStep.Balance);
            if (route[i].Need >= 0 && !burns && !(weighs && !queue.MayHaveWaited((HeardMark.Read)mark, group, route[i].Step.Minutes.Most)))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A group that the bell found at a step: of somebody who took longer than the file's longest, nothing was heard since. What
    /// follows at the balance may have begun.</summary>
    private static StepSeen? Unfinished(HeardRoute route, int place, double minutes, IReadOnlyList<HeardMark> marks)
    {
        if (place >= route.Count || marks is not [.., HeardMark last])
        {
            return null;
        }

        RouteStep step = route[place];
        bool isAlone = last is HeardMark.CameTo
            || (last is HeardMark.FlameLit && (place + 1 == route.Count || !route[place + 1].Flame))
            || (last is HeardMark.FlameOut && step.Cools);
        double weighs = last is HeardMark.FlameOut && place + 1 < route.Count ? route[place + 1].Step.Minutes.Most : 0;
        double own = (minutes - weighs) / step.Factor;
        return isAlone && step.Need < 0 && own > 0 && own < step.Step.Minutes.Most ? new StepSeen(step.Step.Id, own, isAtLeast: true) : null;
    }
}
