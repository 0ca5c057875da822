using System.Text.Json;
using Calx.App.Commands;
using Calx.App.Learning;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Inference;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Planning;

namespace Calx.App.Output;

/// <summary>A plan as one JSON document: docs/schemas/plan.schema.json.</summary>
internal static class PlanJson
{
    public static void Write(Utf8JsonWriter json, PlanAnswer answer)
    {
        PlanSettings settings = answer.Choice.Settings;
        json.WriteStartObject();
        json.WriteString("practical", settings.Practical.Id);
        json.WriteNumber("version", settings.Practical.Version);
        json.WriteString("reason", answer.Reason);
        json.WriteNumber("seed", answer.Seed);
        WriteSettings(json, settings, answer.Choice.Learned);
        json.WriteTexts("sentences", answer.Plan?.Sentences ?? []);
        PlanAmountJson.WriteAmount(json, answer);
        WriteReadings(json, answer.Plan);
        PlanAmountJson.Write(json, answer.Plan);
        WriteTable(json, answer.Plan);
        SeriesJson.Write(json, answer.Plan?.Curve);
        PlanLessonJson.Write(json, answer.Plan);
        WriteKit(json, answer);
        json.WriteFigure("cost", answer.Plan is null ? null : answer.Choice.Stock.CostOf(answer.Plan.Kit));
        json.WriteEndObject();
    }

    private static void WriteSettings(Utf8JsonWriter json, PlanSettings settings, AcceptedNumbers? learned)
    {
        json.WriteStartObject("plan");
        json.WriteNumber("groups", settings.Groups);
        json.WriteNumber("students", settings.Students);
        json.WriteFigure("minutes", settings.Minutes);
        json.WriteFigure("mass", settings.Practical.Amounts is null ? null : settings.SampleInGrams);
        json.WriteNumber("trials", settings.Trials);
        json.WriteNumber("heatings", settings.Heatings);
        json.WriteBoolean("technicianPrepares", settings.Prepared);
        json.WriteFigure("stagger", settings.StaggerInMinutes);
        json.WriteTexts("without", settings.LeftOut);
        json.WriteTexts("moved", settings.Moved);
        json.WriteTexts("alongside", settings.Alongside);
        json.WriteTexts("notRead", settings.Unread);
        json.WriteTexts("conditions", settings.AllConditions);
        json.WriteStartArray("balances");
        foreach (Balance balance in settings.Balances)
        {
            json.WriteStartObject();
            json.WriteFigure("resolution", balance.ResolutionInGrams);
            json.WriteFigure("repeatability", balance.RepeatabilityInGrams);
            json.WriteString("unit", "g");
            json.WriteEndObject();
        }

        json.WriteEndArray();
        LearnedJson.Write(json, learned);
        json.WriteEndObject();
    }

    private static void WriteReadings(Utf8JsonWriter json, Plan? plan)
    {
        json.WriteStartArray("expectedReadings");
        foreach (PredictedReading reading in plan?.ExpectedReadings ?? [])
        {
            json.WriteStartObject();
            json.WriteString("reading", reading.Weighing.Id);
            json.WriteString("label", reading.Label);
            json.WriteString("unit", reading.Unit);
            json.WriteFigure("typical", reading.Typical);
            json.WriteFigure("median", reading.Written.Median);
            json.WriteInterval("interval", reading.Written.Most.Low, reading.Written.Most.High);
            json.WriteFigure("share", reading.Written.Share);
            json.WriteFigure("medianWithoutParts", reading.WithoutParts?.Median);
            if (reading.WithoutParts is PredictedValue rest)
            {
                json.WriteInterval("intervalWithoutParts", rest.Most.Low, rest.Most.High);
            }
            else
            {
                json.WriteNull("intervalWithoutParts");
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteTable(Utf8JsonWriter json, Plan? plan)
    {
        IdentifiabilityJson.Write(json, plan?.Identifiability);
        if (plan is null)
        {
            json.WriteNull("canConclude");
        }
        else
        {
            json.WriteBoolean("canConclude", plan.CanConclude);
        }
    }

    private static void WriteKit(Utf8JsonWriter json, PlanAnswer answer)
    {
        json.WriteStartArray("kit");
        foreach (KitCount kit in answer.Plan?.Kit ?? [])
        {
            json.WriteStartObject();
            json.WriteString("id", kit.Item.Id);
            json.WriteString("item", kit.Item.Label);
            bool counted = kit.Item.Need.Unit is null;
            json.WriteFigure("count", counted ? kit.Amount : null);
            json.WriteFigure("spare", counted ? kit.SpareAmount : null);
            json.WriteFigure("amount", counted ? null : kit.Total);
            json.WriteString("unit", kit.Item.Need.Unit);
            json.WriteFigure("lengthInMetres", answer.Choice.Stock.LengthInMetres(kit));
            json.WriteFigure("cost", answer.Choice.Stock.CostOf(kit));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
