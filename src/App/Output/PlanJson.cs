using System.Text.Json;
using Calx.App.Commands;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;

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
        WriteSettings(json, settings);
        json.WriteTexts("sentences", answer.Plan?.Sentences ?? []);
        WriteAmount(json, answer);
        WriteReadings(json, answer.Plan);
        WriteConclusions(json, answer.Plan);
        WriteCurve(json, answer.Plan);
        WriteChanges(json, answer.Plan);
        WriteTable(json, answer.Plan);
        PlanLessonJson.Write(json, answer.Plan);
        WriteKit(json, answer);
        json.WriteFigure("cost", answer.Plan is null ? null : answer.Choice.Stock.CostOf(answer.Plan.Kit));
        json.WriteEndObject();
    }

    private static void WriteSettings(Utf8JsonWriter json, PlanSettings settings)
    {
        json.WriteStartObject("plan");
        json.WriteNumber("groups", settings.Groups);
        json.WriteNumber("students", settings.Students);
        json.WriteFigure("minutes", settings.Minutes);
        json.WriteFigure("mass", settings.SampleInGrams);
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
        json.WriteEndObject();
    }

    private static void WriteAmount(Utf8JsonWriter json, PlanAnswer answer)
    {
        AmountAdvice? amounts = answer.Plan?.Amounts;
        json.WriteStartObject("amount");
        json.WriteFigure("smallest", amounts?.Smallest?.SampleInGrams);
        json.WriteFigure("best", amounts?.Best?.SampleInGrams);
        json.WriteFigure("largest", PlanSettings.LargestSample(answer.Choice.Settings.Practical));
        json.WriteString("unit", "g");
        json.WriteFigure("perGroup", answer.Choice.Settings.SampleInGrams * answer.Choice.Settings.Trials);
        json.WriteString("reason", Reason());
        json.WriteEndObject();

        string? Reason() =>
            amounts is null ? answer.Reason
            : amounts.Smallest is not null ? null
            : amounts.Curve.Count == 0 ? "the practical's file names no amounts"
            : amounts.Best is null ? "the table leads to none of the conclusions"
            : "no amount that a class may use makes it sure enough of every conclusion";
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

    private static void WriteConclusions(Utf8JsonWriter json, Plan? plan)
    {
        json.WriteStartArray("conclusions");
        foreach (ConclusionDefinition conclusion in plan?.Wanted ?? [])
        {
            ConclusionChance? chance = plan!.Amounts.Planned.Chances.FirstOrDefault(c => c.Conclusion.Id == conclusion.Id);
            json.WriteStartObject();
            json.WriteString("id", conclusion.Id);
            json.WriteString("label", conclusion.Label);
            WriteChance(json, chance);
            json.WriteFigure("standardError", chance is null ? null : Math.Max(chance.ClassRight.StandardError, chance.ClassWrong.StandardError));
            json.WriteString("reason", chance is null ? plan.Identifiability.Undetermined.First(m => m.Quantity.Id == conclusion.Test!.Quantity).Why : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteChance(Utf8JsonWriter json, ConclusionChance? chance)
    {
        json.WriteFigure("oneGroup", chance?.GroupRight.Value);
        json.WriteFigure("oneGroupWrong", chance?.GroupWrong.Value);
        json.WriteFigure("class", chance?.ClassRight.Value);
        json.WriteFigure("wrong", chance?.ClassWrong.Value);
    }

    private static void WriteCurve(Utf8JsonWriter json, Plan? plan)
    {
        json.WriteStartArray("curve");
        foreach (AmountPoint point in plan?.Amounts.Curve ?? [])
        {
            json.WriteStartObject();
            json.WriteFigure("mass", point.SampleInGrams);
            WritePoint(json, point);
            json.WriteStartArray("conclusions");
            foreach (ConclusionChance chance in point.Chances)
            {
                json.WriteStartObject();
                json.WriteString("id", chance.Conclusion.Id);
                WriteChance(json, chance);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteChanges(Utf8JsonWriter json, Plan? plan)
    {
        json.WriteStartArray("changes");
        foreach (AmountChange change in plan?.Amounts.Changes ?? [])
        {
            json.WriteStartObject();
            json.WriteString("change", change.Id);
            json.WriteString("label", change.Label);
            WritePoint(json, change.Then);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePoint(Utf8JsonWriter json, AmountPoint point)
    {
        json.WriteFigure("relativeUncertainty", point.GroupSpread);
        json.WriteFigure("classRelativeUncertainty", point.ClassSpread);
        json.WriteFigure("classBias", point.ClassBias);
        json.WriteFigure("oneGroup", point.GroupRight);
        json.WriteFigure("class", point.ClassRight);
        json.WriteFigure("wrong", point.ClassWrong);
        json.WriteNumber("classes", point.Classes);
    }

    private static void WriteTable(Utf8JsonWriter json, Plan? plan)
    {
        json.WriteTexts("identifiable", plan?.Identifiability.Determined.Select(q => q.Id) ?? []);
        json.WriteStartArray("notIdentifiable");
        foreach (MissingReadings missing in plan?.Identifiability.Undetermined ?? [])
        {
            json.WriteStartObject();
            json.WriteString("quantity", missing.Quantity.Id);
            json.WriteString("missing", string.Join(", ", missing.Readings.Select(r => r.Id)));
            json.WriteTexts("missingReadings", missing.Readings.Select(r => r.Id));
            json.WriteString("why", missing.Why);
            json.WriteEndObject();
        }

        json.WriteEndArray();
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
