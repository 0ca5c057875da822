using Calx.Practicals.Texts;

namespace Calx.Practicals.Watching;

/// <summary>Compares what groups took with what the plan gives those that are as far in front, from one thing heard to the last.</summary>
internal sealed class PaceRule(TrialRoute trial, PlannedMinutes planned, EngineLanguage language)
{
    /// <summary>The class's pace: one ratio a group in its first trial, of the longest stretch of which both ends were heard. Where
    /// it is known when the work began, that is the first end.</summary>
    public TypicalPace Of(IReadOnlyList<GroupAtWork> groups, LessonMoment moment)
    {
        GroupAtWork[] working = [.. groups.Where(g => g.Trial == 1 && g.Condition is GroupCondition.AtWork)];
        Dictionary<int, double>[] heard = [.. working.Select(g => Heard(g, moment))];
        var ratios = new List<double>();
        foreach (Dictionary<int, double> own in heard)
        {
            // Where the work began or, where nobody said that, the first thing heard.
            (double from, double plannedFrom) = moment.WorkBegan is double began ? (began, 0) : Pair(own.Keys.DefaultIfEmpty(-1).Min());
            (double to, double plannedTo) = Pair(own.Keys.DefaultIfEmpty(-1).Max());
            if (plannedTo - plannedFrom >= TypicalPace.LeastMinutes)
            {
                ratios.Add(Math.Max(to - from, 0) / (plannedTo - plannedFrom));
            }

            (double, double) Pair(int place)
            {
                if (place < 0)
                {
                    return (double.NaN, double.NaN);
                }

                int rank = heard.Count(h => h.TryGetValue(place, out double other) && (other < own[place] || (other == own[place] && IsBefore(h, own))));
                return (own[place], planned.EndOf(trial.Places[place], rank) ?? double.NaN);
            }
        }

        return TypicalPace.Of(ratios, language);

        bool IsBefore(Dictionary<int, double> one, Dictionary<int, double> other) => Array.IndexOf(heard, one) < Array.IndexOf(heard, other);
    }

    /// <summary>When a group was heard to leave places behind, by place: with its readings, and with its flame.</summary>
    private Dictionary<int, double> Heard(GroupAtWork group, LessonMoment moment)
    {
        var heard = new Dictionary<int, double>();
        for (int i = 0; i < trial.Places.Count; i++)
        {
            if (trial.Places[i].WeighingId is string id && group.Moments.ReadAt.TryGetValue(id, out double read))
            {
                heard[i] = read;
            }
        }

        // The flame belongs to the reading that comes after it, or to the next one where none has come yet.
        if (group.Moments.FlameOut is double put && put <= moment.Now)
        {
            int before = heard.Where(h => h.Value < put).Select(h => h.Key).DefaultIfEmpty(-1).Max();
            int flame = trial.FlameFrom(before + 1);
            if (flame >= 0)
            {
                heard[trial.BehindFlame(flame) - 1] = put;
            }
        }

        return heard;
    }
}
