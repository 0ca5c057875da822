using System.Globalization;
using Calx.App.Learning;
using Calx.App.Live;
using Calx.Measurement.Statistics;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;

namespace Calx.App.Pages.Practicals;

/// <summary>How long the longer steps took, lesson by lesson, beside what the plans expected.</summary>
/// <param name="Steps">The steps that were timed in one lesson at least, in the order of the practical.</param>
/// <param name="Lessons">The lessons, the latest first.</param>
public sealed record HistoryTimes(IReadOnlyList<LessonStep> Steps, IReadOnlyList<HistoryTimes.OfLesson> Lessons)
{
    /// <summary>A shorter step changes no plan.</summary>
    private const double LeastMinutes = 3;

    /// <summary>Fewer groups say little of a class.</summary>
    private const int FewestGroups = 3;

    /// <summary>Lessons beside each other that a screen takes.</summary>
    private const int Most = 6;

    /// <summary>One lesson.</summary>
    /// <param name="Row">The lesson.</param>
    /// <param name="Plan">Its plan.</param>
    /// <param name="Medians">Median minutes of the groups that finished a step, by step.</param>
    public sealed record OfLesson(HistoryRow Row, PlanSettings Plan, IReadOnlyDictionary<string, double> Medians)
    {
        /// <summary>What a step took, and what the plan expected where that was not the file's time.</summary>
        public string Took(LessonStep step) => !Medians.TryGetValue(step.Id, out double median) ? "–"
            : Plan.Times.TryGetValue(step.Id, out StepMinutes? planned) ? $"{Minutes(median)} (planned {Minutes(planned.Likely)})" : Minutes(median);
    }

    /// <summary>Minutes, whole from ten on.</summary>
    public static string Minutes(double minutes) => minutes.ToString(minutes < 10 ? "0.#" : "0", CultureInfo.InvariantCulture);

    /// <summary>Puts them together; null where nothing was timed.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="lessons">The lessons with their views, the latest first.</param>
    public static HistoryTimes? Of(Practical practical, IEnumerable<(HistoryRow Row, LessonView View)> lessons)
    {
        OfLesson[] timed = [.. lessons.Select(l => Of(l.Row, l.View)).Where(l => l.Medians.Count > 0).Take(Most)];
        LessonStep[] steps = [.. practical.Steps.Where(s => s.Minutes.Mean >= LeastMinutes && timed.Any(l => l.Medians.ContainsKey(s.Id)))];
        return steps.Length == 0 ? null : new HistoryTimes(steps, timed);
    }

    private static OfLesson Of(HistoryRow row, LessonView view) => new(
        row,
        view.Room.Plan,
        HeardSteps.Of(view.Room.PlanOfFile, HeardLesson.WorkBegan(view), HeardLesson.TrialsOf(view)).Where(s => !s.IsAtLeast).GroupBy(s => s.Step)
            .Where(s => s.Count() >= FewestGroups).ToDictionary(s => s.Key, s => Summary.Median([.. s.Select(t => t.Minutes)])));
}
