using System.Text.Json;
using Calx.App.Input;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Ways;

namespace Calx.App.Output;

/// <summary>The part of a plan's document that is about time.</summary>
internal static class PlanLessonJson
{
    public static void Write(Utf8JsonWriter json, Plan? plan)
    {
        WriteLesson(json, plan?.Lesson);
        if (plan?.Ways is not IReadOnlyList<PlanWay> ways)
        {
            json.WriteNull("ways");
            return;
        }

        json.WriteStartArray("ways");
        foreach (PlanWay way in ways)
        {
            json.WriteStartObject();
            json.WriteString("change", string.Join("; ", way.Changes));
            json.WriteTexts("changes", way.Ids);
            json.WriteString("options", WayOptions.Of(plan.Settings, way.Settings));
            json.WriteFigure("fits", way.Fits.Value);
            json.WriteFigure("standardError", way.Fits.StandardError);
            json.WriteFigure("conclusion", way.ClassRight);
            json.WriteFigure("conclusionNow", way.ClassRightNow);
            json.WriteString("cost", string.Join("; ", way.Costs));
            json.WriteNumber("effort", way.Effort);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteLesson(Utf8JsonWriter json, LessonForecast? lesson)
    {
        if (lesson is null)
        {
            json.WriteNull("lesson");
            return;
        }

        json.WriteStartObject("lesson");
        json.WriteString("verdict", lesson.Verdict);
        json.WriteFigure("fits", lesson.Fits.Value);
        json.WriteFigure("standardError", lesson.Fits.StandardError);
        json.WriteFigure("onTime", lesson.OnTime.Value);
        json.WriteFigure("gasOffInTime", lesson.GasOffInTime.Value);
        json.WriteFigure("weighedTenMinutesBefore", lesson.WeighedInTime.Value);
        json.WriteFigure("p10", lesson.P10);
        json.WriteFigure("p50", lesson.P50);
        json.WriteFigure("p90", lesson.P90);
        json.WriteNumber("lessons", lesson.Lessons);
        json.WriteFigure("heatings", lesson.MeanHeatings);
        json.WriteFigure("joined", lesson.JoinedShare);
        json.WriteString("bottleneck", lesson.Bottleneck.Id);
        json.WriteString("bottleneckWhy", lesson.Bottleneck.Sentence);
        WriteWaiting(json, lesson);
        json.WriteFigure("lastCall", lesson.Calls.Heating);
        json.WriteFigure("lastFirstHeating", lesson.Calls.FirstHeating);
        json.WriteFigure("lastReheat", lesson.Calls.Reheat);
        json.WriteFigure("lastNewTrial", lesson.Calls.NewTrial);
        WriteTimeline(json, "typical", lesson.Typical);
        WriteTimeline(json, "bad", lesson.Bad);
        json.WriteEndObject();
    }

    private static void WriteWaiting(Utf8JsonWriter json, LessonForecast lesson)
    {
        json.WriteStartObject("waiting");
        foreach (ThingUse use in lesson.Uses)
        {
            json.WriteStartObject(use.Thing.Id);
            json.WriteString("label", use.Thing.Label);
            json.WriteNumber("units", use.Thing.Units);
            json.WriteFigure("mean", use.MeanWait);
            json.WriteFigure("longest", use.LongestWait);
            json.WriteFigure("use", use.Use);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteTimeline(Utf8JsonWriter json, string key, LessonTimeline timeline)
    {
        json.WriteStartObject(key);
        json.WriteFigure("end", timeline.EndMinute);
        json.WriteStartArray("bars");
        foreach (TimelineBar bar in timeline.Bars)
        {
            WriteStretch(json, bar.Group, bar.StepId, bar.Kind.ToString().ToLowerInvariant(), bar.FromMinute, bar.ToMinute);
        }

        json.WriteEndArray();
        json.WriteStartArray("criticalPath");
        foreach (CriticalStep step in timeline.CriticalPath)
        {
            WriteStretch(json, step.Group, step.StepId, null, step.FromMinute, step.ToMinute);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteStretch(Utf8JsonWriter json, int group, string step, string? kind, double from, double to)
    {
        json.WriteStartObject();
        json.WriteNumber("group", group);
        json.WriteString("step", step);
        if (kind is not null)
        {
            json.WriteString("kind", kind);
        }

        json.WriteFigure("from", from);
        json.WriteFigure("to", to);
        json.WriteEndObject();
    }
}
