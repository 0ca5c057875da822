using System.Text.Json;
using Calx.App.Commands;
using Calx.Measurement.Weighing;
using Calx.Papers.Handouts.CatchUp;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Simulation;

namespace Calx.App.Output;

/// <summary>What is true of a class's packs as one JSON document: docs/schemas/catch-up.schema.json.</summary>
internal static class CatchUpJson
{
    public static void Write(Utf8JsonWriter json, CatchUpAnswer answer)
    {
        Practical practical = answer.Plan.Practical;
        Balance balance = answer.Plan.Balances[0];
        json.WriteStartObject();
        json.WriteString("practical", practical.Id);
        json.WriteNumber("version", practical.Version);
        json.WriteBoolean("simulated", true);
        if (answer.Seed is ulong seed)
        {
            json.WriteNumber("seed", seed);
        }
        else
        {
            json.WriteNull("seed");
        }

        json.WriteFigure("oddShare", answer.OddShare);
        json.WriteString("level", answer.Level.ToString().ToLowerInvariant());
        json.WriteString("class", answer.Occasion.ClassName);
        json.WriteString("date", answer.Occasion.Date);
        json.WriteFigure("sample", answer.Plan.SampleInGrams);
        json.WriteTexts("conditions", answer.Plan.AllConditions);
        json.WriteStartObject("balance");
        json.WriteFigure("resolution", balance.ResolutionInGrams);
        json.WriteFigure("repeatability", balance.RepeatabilityInGrams);
        json.WriteString("unit", "g");
        json.WriteEndObject();
        IReadOnlyList<string> names = CatchUpNames.Of([.. answer.Packs.Select(p => p.Student)]);
        json.WriteStartArray("packs");
        for (int i = 0; i < names.Count; i++)
        {
            Write(json, practical, answer.Packs[i], names[i]);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Practical practical, CatchUpPack pack, string file)
    {
        json.WriteStartObject();
        json.WriteString("student", pack.Student.Name);
        json.WriteString("file", file);
        json.WriteBoolean("odd", pack.Truth.IsOdd);
        json.WriteString("cause", pack.Truth.Cause);
        json.WriteStartArray("planted");
        foreach (PlantedCause cause in pack.Truth.Planted)
        {
            json.WriteStartObject();
            json.WriteString("cause", cause.Cause);
            json.WriteString("label", cause.Label);
            json.WriteFigure("moved", cause.MovedInGrams);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteFigure("movedTogether", pack.Truth.TogetherInGrams);
        WriteReadings(json, practical, pack);
        SeriesJson.Write(json, pack.Series, practical.Series);
        WriteDecisions(json, pack);
        WriteAnswers(json, pack);
        WriteTrueValues(json, pack);
        json.WriteEndObject();
    }

    private static void WriteReadings(Utf8JsonWriter json, Practical practical, CatchUpPack pack)
    {
        json.WriteStartArray("readings");
        foreach (PackReading reading in pack.Readings)
        {
            json.WriteStartObject();
            json.WriteString("id", reading.Weighing.Id);
            json.WriteString("label", WeighingLabel.Of(practical, reading.Weighing));
            json.WriteString("unit", practical.Reading(reading.Weighing.Reading).Unit);
            json.WriteString("shown", reading.Displayed.ToString());
            json.WriteFigure("trueMass", reading.TrueMassInGrams);
            json.WriteFigure("shift", reading.ShiftInGrams);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteDecisions(Utf8JsonWriter json, CatchUpPack pack)
    {
        json.WriteStartArray("decisions");
        foreach (PackDecision decision in pack.Decisions)
        {
            json.WriteStartObject();
            json.WriteNumber("heating", decision.Heating);
            json.WriteString("decision", decision.Verdict);
            json.WriteString("why", decision.Why);
            json.WriteFigure("probabilitySpoiled", decision.ProbabilitySpoiled);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("sensibleHeatings", pack.SensibleHeatings);
    }

    private static void WriteAnswers(Utf8JsonWriter json, CatchUpPack pack)
    {
        json.WriteStartArray("answers");
        foreach (PackAnswer worked in pack.Answers)
        {
            json.WriteStartObject();
            json.WriteNumber("stoppedAfter", worked.Heating);
            json.WriteString("id", worked.Answer.Id);
            json.WriteString("label", worked.Answer.Label);
            json.WriteString("unit", worked.Answer.Unit);
            json.WriteFigure("value", worked.Value);
            json.WriteInterval("accepted", worked.Low, worked.High);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteTrueValues(Utf8JsonWriter json, CatchUpPack pack)
    {
        json.WriteStartArray("trueValues");
        foreach ((QuantityDefinition quantity, double? value) in pack.TrueValues)
        {
            json.WriteStartObject();
            json.WriteString("id", quantity.Id);
            json.WriteString("label", quantity.Label);
            json.WriteString("unit", quantity.Unit);
            json.WriteFigure("value", value);
            json.WriteString("reason", value is null ? "the plan's readings do not give it, or it divides by nothing" : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
