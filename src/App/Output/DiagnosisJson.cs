using System.Text.Json;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Inference.Posterior;

namespace Calx.App.Output;

/// <summary>The part of the findings' JSON document that tells what probably happened and what to do.</summary>
internal static class DiagnosisJson
{
    private const string NotAsked = "Causes were not asked for.";

    private static readonly string[] Keys =
        ["causes", "pairs", "tied", "next", "decision", "forTeacher", "forStudent"];

    /// <summary>A group's keys; all null with a reason where causes were not asked for.</summary>
    public static void Write(Utf8JsonWriter json, GroupDiagnosis? diagnosis)
    {
        if (diagnosis is null)
        {
            foreach (string key in Keys)
            {
                json.WriteNull(key);
            }

            json.WriteString("causesReason", NotAsked);
            return;
        }

        WriteCauses(json, diagnosis);
        WriteTied(json, diagnosis.Tied);
        WriteNext(json, diagnosis.Next);
        WriteDecision(json, diagnosis.Decision);
        json.WriteString("forTeacher", diagnosis.ForTeacher);
        json.WriteString("forStudent", diagnosis.ForStudent);
        json.WriteNull("causesReason");
    }

    /// <summary>The class's shared causes.</summary>
    public static void Write(Utf8JsonWriter json, IReadOnlyList<SharedCause> shared)
    {
        json.WriteStartArray("sharedCauses");
        foreach (SharedCause cause in shared)
        {
            json.WriteStartObject();
            json.WriteString("cause", cause.Cause);
            json.WriteString("label", cause.Label);
            json.WriteFigure("probability", cause.Probability);
            json.WriteString("balance", cause.Balance);
            json.WriteNumber("groups", cause.Groups);
            json.WriteString("sentence", cause.Sentence);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteCauses(Utf8JsonWriter json, GroupDiagnosis diagnosis)
    {
        json.WriteStartArray("causes");
        foreach (CauseProbability cause in diagnosis.Causes)
        {
            json.WriteStartObject();
            json.WriteString("cause", cause.Cause);
            json.WriteString("label", cause.Label);
            json.WriteFigure("probability", cause.Probability);
            json.WriteFigure("present", cause.Present);
            json.WriteString("reading", cause.Reading);
            json.WriteString("detail", cause.Detail);
            json.WriteString("probableDigits", cause.ProbableDigits);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("pairs");
        foreach (CausePair pair in diagnosis.Pairs)
        {
            json.WriteStartObject();
            json.WriteString("first", pair.First);
            json.WriteString("second", pair.Second);
            json.WriteFigure("probability", pair.Probability);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteTied(Utf8JsonWriter json, IReadOnlyList<TiedCauses> tied)
    {
        json.WriteStartArray("tied");
        foreach (TiedCauses set in tied)
        {
            json.WriteStartObject();
            json.WriteTexts("causes", set.Causes);
            json.WriteFigure("probability", set.Probability);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteNext(Utf8JsonWriter json, NextStep next)
    {
        var step = next as NextStep.Do;
        json.WriteStartObject("next");
        json.WriteString("action", step?.Action);
        json.WriteString("label", step?.Label);
        json.WriteFigure("minutes", step?.Minutes);
        json.WriteFigure("informationBits", step?.InformationBits);
        json.WriteString("why", next.Why);
        json.WriteEndObject();
    }

    private static void WriteDecision(Utf8JsonWriter json, Decision decision)
    {
        var taken = decision as Decision.Taken;
        json.WriteStartObject("decision");
        json.WriteString("verdict", taken?.Word);
        json.WriteFigure("probabilitySpoiled", taken?.ProbabilitySpoiled);
        json.WriteString("rule", taken?.Rule?.Word);
        json.WriteString("reading", taken?.Reading);
        json.WriteString("probableDigits", taken?.ProbableDigits);
        json.WriteString("why", decision.Why);
        json.WriteEndObject();
    }
}
