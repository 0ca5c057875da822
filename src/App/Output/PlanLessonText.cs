using System.Globalization;
using Calx.App.Input;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Ways;
using Calx.Practicals.Planning.Words;

namespace Calx.App.Output;

/// <summary>What a plan says of the lesson's time, in tables.</summary>
internal static class PlanLessonText
{
    private const int BarWidth = 72;

    public static void Write(TextWriter output, Plan plan)
    {
        LessonForecast lesson = plan.Lesson;
        WrappedText.Heading(output, "The lesson, times in 100");
        var columns = new Columns("lr");
        columns.Add("everything done by the bell", InHundred(lesson.OnTime.Value));
        if (plan.Settings.Practical.Classroom.GasOffInMinutes > 0)
        {
            columns.Add(Invariant($"every flame out {plan.Settings.Practical.Classroom.GasOffInMinutes:0.#} min before it"), InHundred(lesson.GasOffInTime.Value));
        }

        columns.Add(Invariant($"every group has weighed {LessonForecast.PackingMinutes:0} min before it"), InHundred(lesson.WeighedInTime.Value));
        columns.Write(output);
        WriteUses(output, lesson);
        WritePath(output, lesson.Typical);
        WriteWays(output, plan);
    }

    private static void WriteUses(TextWriter output, LessonForecast lesson)
    {
        if (lesson.Uses.Count == 0)
        {
            return;
        }

        WrappedText.Heading(output, "Waiting");
        var columns = new Columns("lrrr");
        columns.AddHeading(16, "", "a group waits / min", "the longest wait / min", "in use / %");
        foreach (ThingUse use in lesson.Uses)
        {
            columns.Add(
                Invariant($"{use.Thing.Label} ({use.Thing.Units})"), Invariant($"{use.MeanWait:F1}"), Invariant($"{use.LongestWait:F1}"), Invariant($"{100 * use.Use:F0}"));
        }

        columns.Write(output);
    }

    /// <summary>The steps on which the end of a typical lesson depends, as bars: what to shorten first.</summary>
    private static void WritePath(TextWriter output, LessonTimeline lesson)
    {
        WrappedText.Heading(output, Invariant($"A typical lesson: what its end depends on, to minute {lesson.EndMinute:F0}"));
        double scale = BarWidth / 2 / lesson.EndMinute;
        var columns = new Columns("rll");
        foreach (CriticalStep step in lesson.CriticalPath)
        {
            int from = (int)(step.FromMinute * scale);
            int length = Math.Max(1, (int)Math.Round((step.ToMinute - step.FromMinute) * scale));
            string who = step.Group == 0 ? "class" : Invariant($"group {step.Group}");
            columns.Add(Invariant($"{step.FromMinute:F0}"), new string(' ', from) + new string('#', length), $"{step.Label} ({who})");
        }

        columns.Write(output);
    }

    private static void WriteWays(TextWriter output, Plan plan)
    {
        if (plan.Ways is not { Count: > 0 } ways)
        {
            return;
        }

        WrappedText.Heading(output, "Ways out: those that fit first, then by what they ask of people and cost the conclusion");
        foreach (PlanWay way in ways)
        {
            WrappedText.Write(
                output,
                Invariant($"In time {InHundred(way.Fits.Value)}, concluded {Odds.InHundred(way.ClassRight)} (now {Odds.InHundred(way.ClassRightNow)}) times in 100: {string.Join("; ", way.Changes)}. Costs: {string.Join("; ", way.Costs)}."),
                first: "  - ",
                then: "    ");
            WrappedText.Write(output, $"Ask again with: {WayOptions.Of(plan.Settings, way.Settings)}", first: "    ", then: "      ");
        }

        string[] prepared = [.. plan.Settings.Practical.Steps.Where(s => plan.Settings.IsInLesson(s) && s.Place.Freedom.Prepared).Select(s => s.Label)];
        if (prepared.Length > 0 && ways.Any(w => w.Settings.Prepared))
        {
            WrappedText.Write(output, $"What a technician can prepare: {string.Join("; ", prepared)}. Several at once take less time.", first: "  ", then: "  ");
        }
    }

    private static string InHundred(double probability) => Odds.InHundred(probability, LessonForecast.FitsNot, LessonForecast.FitsWell);

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
