using System.Text.Json;
using Calx.App.Commands;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Output;

/// <summary>A prediction as one JSON document: docs/schemas/simulation.schema.json.</summary>
internal static class SimulationJson
{
    public static void Write(Utf8JsonWriter json, SimulationAnswer answer, SimulationFiles files)
    {
        SimulationPlan plan = answer.Choice.Plan;
        json.WriteStartObject();
        json.WriteString("practical", answer.Choice.Practical.Id);
        json.WriteNumber("version", answer.Choice.Practical.Version);
        json.WriteBoolean("simulated", answer.Prediction is not null);
        json.WriteString("reason", answer.Reason);
        json.WriteNumber("seed", answer.Seed);
        json.WriteNumber("groups", plan.Groups);
        WriteNumber(json, "rounds", plan.Rounds == 0 ? null : plan.Rounds);
        json.WriteString("cause", plan.Cause);
        json.WriteTexts("conditions", answer.Choice.Conditions);
        LearnedJson.Write(json, answer.Choice.Learned);
        json.WriteFigure("sample", plan.SampleInGrams);
        json.WriteStartObject("balance");
        json.WriteFigure("resolution", plan.Balance.ResolutionInGrams);
        json.WriteFigure("repeatability", plan.Balance.RepeatabilityInGrams);
        json.WriteString("unit", "g");
        json.WriteEndObject();
        WriteNumber(json, "draws", answer.Prediction?.Draws);
        WriteReadings(json, answer.Prediction);
        WriteQuantities(json, answer.Prediction);
        WriteArms(json, answer.Arms);
        json.WriteStartObject("files");
        json.WriteString("csv", answer.Drawn is null ? null : files.Csv);
        json.WriteString("truth", answer.Drawn is null ? null : files.Truth);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteReadings(Utf8JsonWriter json, Prediction? prediction)
    {
        json.WriteStartArray("readings");
        foreach (PredictedReading reading in prediction?.Readings ?? [])
        {
            json.WriteStartObject();
            json.WriteString("id", reading.Weighing.Id);
            json.WriteString("label", reading.Label);
            json.WriteString("unit", reading.Unit);
            WriteValue(json, "written", reading.Written);
            WriteValue(json, "withoutParts", reading.WithoutParts);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteArms(Utf8JsonWriter json, IReadOnlyList<ArmOutlook> arms)
    {
        json.WriteStartArray("arms");
        foreach (ArmOutlook arm in arms)
        {
            json.WriteStartObject();
            json.WriteString("id", arm.Id);
            json.WriteString("label", arm.Label);
            json.WriteNumber("groups", arm.Groups);
            WriteReadings(json, arm.Prediction);
            WriteQuantities(json, arm.Prediction);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteQuantities(Utf8JsonWriter json, Prediction? prediction)
    {
        json.WriteStartArray("quantities");
        foreach (PredictedQuantity quantity in prediction?.Quantities ?? [])
        {
            json.WriteStartObject();
            json.WriteString("id", quantity.Quantity.Id);
            json.WriteString("label", quantity.Quantity.Label);
            json.WriteString("unit", quantity.Quantity.Unit);
            WriteValue(json, "value", quantity.Value);
            json.WriteString("reason", quantity.Value is null ? "these readings do not give it" : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteValue(Utf8JsonWriter json, string key, PredictedValue? value)
    {
        if (value is null)
        {
            json.WriteNull(key);
            return;
        }

        json.WriteStartObject(key);
        json.WriteFigure("median", value.Median);
        json.WriteInterval("interval50", value.Half.Low, value.Half.High);
        json.WriteInterval("interval95", value.Most.Low, value.Most.High);
        json.WriteFigure("share", value.Share);
        json.WriteEndObject();
    }

    private static void WriteNumber(Utf8JsonWriter json, string key, int? number)
    {
        if (number is int value)
        {
            json.WriteNumber(key, value);
        }
        else
        {
            json.WriteNull(key);
        }
    }
}
