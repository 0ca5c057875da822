using Calx.Practicals.Definition;

namespace Calx.Practicals.Clock;

/// <summary>
/// Why a lesson ended when it did: from the end backwards, each step began because the group's own step before it ended,
/// or, where it had to wait, because whoever held what it needed gave it back, or because the last group came.
/// </summary>
internal static class CriticalPathSearch
{
    /// <summary>Times that differ by less are the same: sums of minutes, rounded as binary fractions.</summary>
    private const double SameMinute = 1e-6;

    /// <summary>The chain from the first bell to the end.</summary>
    public static IReadOnlyList<CriticalStep> Of(
        Practical practical, IEnumerable<TimelineBar> opening, List<WorkSpan> trace, IReadOnlyList<IReadOnlyList<Need>> needs)
    {
        var path = new List<CriticalStep>();
        int at = Last(trace, _ => true);
        while (at >= 0)
        {
            WorkSpan span = trace[at];
            if (span.Tag >= 0)
            {
                LessonStep step = practical.Steps[span.Tag];
                int group = step.Place.Per == StepPer.Class ? 0 : span.Person + 1;
                path.Add(new CriticalStep(group, step.Id, step.Label, span.Began, span.Ended));
            }

            at = Before(trace, span, needs);
        }

        path.Reverse();
        return [.. opening.Select(b => new CriticalStep(0, b.StepId, b.Label, b.FromMinute, b.ToMinute)), .. path];
    }

    private static int Before(List<WorkSpan> trace, WorkSpan span, IReadOnlyList<IReadOnlyList<Need>> needs)
    {
        bool waited = span.Began - span.Asked > SameMinute;
        if (!waited)
        {
            return Last(trace, other => other.Person == span.Person && Ended(other, span.Asked));
        }

        return span.Need < 0
            ? Last(trace, other => Ended(other, span.Began) && other.Tag != span.Tag)
            : Last(trace, other => Ended(other, span.Began) && Shares(other, span, needs));
    }

    private static bool Ended(WorkSpan span, double minute) => Math.Abs(span.Ended - minute) < SameMinute;

    private static bool Shares(WorkSpan other, WorkSpan span, IReadOnlyList<IReadOnlyList<Need>> needs) =>
        other.Need >= 0 && needs[other.Need].Any(n => needs[span.Need].Any(m => m.Resource == n.Resource));

    private static int Last(List<WorkSpan> trace, Func<WorkSpan, bool> wanted)
    {
        int found = -1;
        for (int i = 0; i < trace.Count; i++)
        {
            if (wanted(trace[i]) && (found < 0 || trace[i].Ended >= trace[found].Ended))
            {
                found = i;
            }
        }

        return found;
    }
}
