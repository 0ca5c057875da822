using System.Text.Json;
using Calx.Measurement.Statistics;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.App.Output;

/// <summary>A class's findings as one JSON document: docs/schemas/analysis.schema.json.</summary>
internal static class FindingsJson
{
    public static void Write(Utf8JsonWriter json, ClassFindings findings)
    {
        json.WriteStartObject();
        json.WriteString("practical", findings.Practical.Id);
        json.WriteNumber("version", findings.Practical.Version);
        json.WriteBoolean("simulated", findings.Readings.IsSimulated);
        WriteBalance(json, findings.Readings.Balance);
        WriteTable(json, findings.Readings);
        IdentifiabilityJson.Write(json, findings.Identifiability);
        json.WriteStartArray("groups");
        foreach (GroupFindings group in findings.Groups)
        {
            WriteGroup(json, group, findings.Practical.Series);
        }

        json.WriteEndArray();
        json.WriteTexts("notCounted", UncountedWords.Of(findings.Readings.Uncounted));
        ClassFindingsJson.Write(json, findings);
        json.WriteEndObject();
    }

    private static void WriteBalance(Utf8JsonWriter json, BalanceReport balance)
    {
        json.WriteStartObject("balance");
        json.WriteNumber("resolution", balance.ResolutionInGrams);
        json.WriteString("resolutionFrom", OriginOf(balance.ResolutionOrigin));
        json.WriteFigure("repeatability", balance.RepeatabilityInGrams);
        json.WriteFigure("repeatabilityInDivisions", balance.RepeatabilityInDivisions);
        json.WriteString("repeatabilityFrom", OriginOf(balance.RepeatabilityOrigin));
        json.WriteString("unit", "g");
        json.WriteEndObject();
    }

    private static string OriginOf(BalanceOrigin origin) => origin switch
    {
        BalanceOrigin.Given => "given",
        BalanceOrigin.MostDecimals => "most decimals",
        _ => "judgement",
    };

    private static void WriteTable(Utf8JsonWriter json, ClassReadings readings)
    {
        json.WriteStartArray("columns");
        foreach (ColumnMatch column in readings.Columns)
        {
            json.WriteStartObject();
            json.WriteString("heading", column.Heading);
            json.WriteString("column", column.ColumnLetter);
            json.WriteString("reading", column.Meaning.Word);
            json.WriteString("reason", (column.Meaning as ColumnMeaning.Ignored)?.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("rejected");
        foreach (RejectedCell cell in readings.Rejected)
        {
            json.WriteStartObject();
            json.WriteString("sheet", cell.Cell.Sheet);
            json.WriteNumber("row", cell.Cell.Row);
            json.WriteString("column", cell.Cell.ColumnLetter);
            json.WriteString("heading", cell.Heading);
            json.WriteString("text", cell.Text);
            json.WriteString("reason", cell.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteTexts("notes", readings.Notes.Select(note => note.ToString()));
    }

    private static void WriteGroup(Utf8JsonWriter json, GroupFindings group, SeriesDefinition? series)
    {
        json.WriteStartObject();
        json.WriteString("group", group.Readings.Name);
        json.WriteString("trial", group.Readings.Trial);
        json.WriteString("arm", group.Readings.Remarks.Arm);
        json.WriteStartObject("readings");
        foreach (TakenReading reading in group.Readings.Readings.Concat(group.Readings.DerivedColumns))
        {
            json.WriteString(reading.Id, reading.Value.ToString());
        }

        json.WriteEndObject();
        json.WriteTexts("observations", group.Readings.Remarks.Observations);
        json.WriteStartObject("quantities");
        foreach (QuantityResult result in group.Quantities)
        {
            WriteQuantity(json, result);
        }

        json.WriteEndObject();
        SeriesJson.Write(json, group, series);
        WriteConstantMass(json, group.ConstantMass);
        json.WriteBoolean("anomalous", group.IsAnomalous);
        json.WriteTexts("oddIn", group.Oddity is Oddity.Odd odd ? odd.Quantities : []);
        json.WriteString("reason", group.Oddity.Reason);
        json.WriteTexts("notes", group.Contradictions);
        DiagnosisJson.Write(json, group.Diagnosis);
        json.WriteEndObject();
    }

    private static void WriteQuantity(Utf8JsonWriter json, QuantityResult result)
    {
        var found = result as QuantityEstimate;
        json.WriteStartObject(result.Quantity.Id);
        json.WriteFigure("value", found?.Value);
        json.WriteFigure("standardUncertainty", found?.StandardUncertainty);
        json.WriteIntervalOrNull("interval", found?.Interval);
        json.WriteString("unit", result.Quantity.Unit);
        json.WriteStartArray("budget");
        foreach (ReadingContribution line in found?.Budget ?? [])
        {
            json.WriteStartObject();
            json.WriteString("reading", line.Source);
            json.WriteFigure("sensitivity", line.Sensitivity);
            json.WriteFigure("contribution", line.Contribution);
            json.WriteFigure("share", line.Share);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("reason", ReasonOf(result));
        json.WriteEndObject();
    }

    /// <summary>Why something is null, or null where nothing is.</summary>
    private static string? ReasonOf(QuantityResult result) => result switch
    {
        QuantityNotFound missing => missing.Reason,
        QuantityEstimate { Interval: null } => QuantityEstimate.NoInterval(EngineLanguage.British),
        _ => null,
    };

    private static void WriteConstantMass(Utf8JsonWriter json, ConstantMass? constantMass)
    {
        json.WriteStartObject("constantMass");
        json.WriteString("verdict", constantMass?.Word);
        json.WriteFigure("lastChange", constantMass?.LastChangeInGrams);
        json.WriteFigure("unreactedAtMost", constantMass?.UnreactedAtMost);
        json.WriteString("reason", constantMass?.Reason ?? "Nothing is brought to constant mass in this practical.");
        json.WriteEndObject();
    }

    /// <summary><c>[low, high]</c>, or null.</summary>
    internal static void WriteIntervalOrNull(this Utf8JsonWriter json, string key, CoverageInterval? interval)
    {
        if (interval is CoverageInterval ends)
        {
            json.WriteInterval(key, ends.Low, ends.High);
        }
        else
        {
            json.WriteNull(key);
        }
    }
}
