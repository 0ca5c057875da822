namespace Calx.Practicals.Watching;

/// <summary>Compares what groups took with what the plan gives them, from one thing heard to the last.</summary>
internal sealed class PaceRule(StandingRule standing, PlannedMinutes planned)
{
    /// <summary>The class's pace: one ratio a group in its first trial, of the longest stretch of which both ends were heard. Where
    /// it is known when the work began, that is the first end.</summary>
    public TypicalPace Of(IReadOnlyList<GroupAtWork> groups, LessonMoment moment)
    {
        var ratios = new List<double>();
        foreach (GroupAtWork group in groups.Where(g => g.Trial == 1 && g.Condition is GroupCondition.AtWork))
        {
            (double Actual, double Planned)[] heard = [.. Heard(group, groups, moment).OrderBy(h => h.Planned)];
            if (heard.Length >= 2 && heard[^1].Planned - heard[0].Planned >= TypicalPace.LeastMinutes)
            {
                double actual = heard[^1].Actual - heard[0].Actual;
                ratios.Add(Math.Max(actual, 0) / (heard[^1].Planned - heard[0].Planned));
            }
        }

        return TypicalPace.Of(ratios);
    }

    private IEnumerable<(double Actual, double Planned)> Heard(GroupAtWork group, IReadOnlyList<GroupAtWork> groups, LessonMoment moment)
    {
        if (moment.WorkBegan is double began)
        {
            yield return (began, 0);
        }

        foreach (RoutePlace place in standing.RouteOf(1).Places)
        {
            if (place.WeighingId is string id && group.Moments.ReadAt.TryGetValue(id, out double read)
                && planned.EndOf(place, groups.Count(g => g.Moments.ReadAt.TryGetValue(id, out double other) && other < read)) is double end)
            {
                yield return (read, end);
            }
        }

        GroupStanding at = standing.Of(group, moment, classBegan: true);
        if (at.FlameOut is double put && at.Cooling > 0
            && planned.EndOf(standing.RouteOf(1).Places[at.Cooling - 1], FlamesBefore(at, put, groups)) is double flame)
        {
            yield return (put, flame);
        }
    }

    /// <summary>How many groups put out the flame of a heating before: those that put theirs out earlier, and those that have weighed
    /// after it.</summary>
    private int FlamesBefore(GroupStanding at, double put, IReadOnlyList<GroupAtWork> groups)
    {
        int weighed = standing.RouteOf(1).Find(at.Cooling, p => p.WeighingId is not null);
        string? id = weighed < 0 ? null : standing.RouteOf(1).Places[weighed].WeighingId;
        return groups.Count(g => g.Moments.FlameOut < put || (id is not null && g.Moments.ReadAt.ContainsKey(id)));
    }
}
