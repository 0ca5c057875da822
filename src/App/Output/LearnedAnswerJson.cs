using System.Globalization;
using System.Text.Json;
using Calx.App.Learning;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;
using Calx.Records.Lessons;

namespace Calx.App.Output;

/// <summary>What past lessons teach, as one JSON document: docs/schemas/learned.schema.json.</summary>
internal static class LearnedAnswerJson
{
    public static void Write(Utf8JsonWriter json, Learned learned, IReadOnlyList<NumberDecision> decisions)
    {
        json.WriteStartObject();
        json.WriteString("practical", learned.Practical.Id);
        json.WriteNumber("version", learned.Practical.Version);
        json.WriteString("class", learned.ClassName.Length == 0 ? null : learned.ClassName);
        json.WriteNumber("lessons", learned.Lessons);
        json.WriteNumber("groups", learned.Groups);
        json.WriteString("leftOut", learned.LeftInWords);
        json.WriteTexts("sentences", learned.Priors.Sentences);
        json.WriteStartArray("numbers");
        foreach (LearnedChange change in learned.Priors.Changes)
        {
            Write(json, change);
        }

        json.WriteEndArray();
        json.WriteStartArray("drifts");
        foreach (LearnedDrift drift in learned.Priors.Drifts)
        {
            json.WriteStartObject();
            json.WriteString("balance", drift.Balance);
            json.WriteFigure("divisionsAMonth", drift.PerMonth);
            Write(json, "interval", drift.Interval);
            json.WriteNumber("checks", drift.Checks);
            json.WriteString("sentence", drift.Sentence);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        LearnedJson.Write(json, AcceptedNumbers.InForce(learned.Practical, decisions, learned.ClassName), "inForce");
        json.WriteStartArray("decisions");
        foreach (NumberDecision one in decisions)
        {
            Write(json, one);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, LearnedChange change)
    {
        json.WriteStartObject();
        json.WriteString("id", change.Id);
        json.WriteString("label", change.Label);
        switch (change)
        {
            case LearnedChange.Time time:
                Minutes(json, "before", time.Before);
                Minutes(json, "after", time.After);
                Write(json, "interval", time.MeanInMinutes);
                Write(json, "next", time.OneGroupInMinutes);
                json.WriteNumber("cases", time.Times);
                break;
            case LearnedChange.Rate rate:
                json.WriteFigure("before", rate.Before);
                json.WriteFigure("after", rate.After);
                Write(json, "interval", rate.Interval);
                Write(json, "next", rate.NextLesson);
                json.WriteNumber("cases", rate.Cases);
                break;
        }

        json.WriteNumber("lessons", change.Lessons);
        json.WriteString("restsOn", change.RestsOn);
        json.WriteString("sentence", change.Sentence);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, NumberDecision one)
    {
        json.WriteStartObject();
        json.WriteString("number", one.Number);
        json.WriteNumber("version", one.PracticalVersion);
        json.WriteString("class", one.ClassName.Length == 0 ? null : one.ClassName);
        json.WriteString("was", one.Was);
        json.WriteString("became", one.IsTakenBack ? null : one.Became);
        json.WriteNumber("lessons", one.Lessons);
        json.WriteString("initials", one.Initials);
        json.WriteString("at", one.At.ToString("O", CultureInfo.InvariantCulture));
        json.WriteEndObject();
    }

    private static void Minutes(Utf8JsonWriter json, string name, StepMinutes minutes)
    {
        json.WriteStartObject(name);
        json.WriteFigure("least", minutes.Least);
        json.WriteFigure("likely", minutes.Likely);
        json.WriteFigure("most", minutes.Most);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, CoverageInterval interval)
    {
        json.WriteStartObject(name);
        json.WriteFigure("low", interval.Low);
        json.WriteFigure("high", interval.High);
        json.WriteFigure("coverage", interval.Coverage);
        json.WriteEndObject();
    }
}
