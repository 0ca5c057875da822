using System.Text.Json;
using Calx.App.Checking;
using Calx.Practicals.Checking;

namespace Calx.App.Output;

/// <summary>A check of a practical's file as a JSON document (docs/schemas/practical-check.schema.json).</summary>
internal static class CheckJson
{
    public static void Write(Utf8JsonWriter json, FullCheck check)
    {
        json.WriteStartObject();
        json.WriteString("file", check.File);
        json.WriteString("practical", check.Checked.Practical?.Id);
        json.WriteString("title", check.Checked.Practical?.Title);
        json.WriteBoolean("inOrder", check.IsInOrder);
        json.WriteBoolean("everythingChecked", check.Checked.IsWhole);
        json.WriteStartArray("findings");
        foreach (CheckFinding finding in check.Checked.Findings)
        {
            Write(json, finding);
        }

        json.WriteEndArray();
        json.WriteStartArray("theory");
        foreach (IdealValue ideal in check.Checked.Ideals)
        {
            json.WriteStartObject();
            json.WriteString("id", ideal.Quantity.Id);
            json.WriteString("label", ideal.Quantity.Label);
            json.WriteString("unit", ideal.Quantity.Unit);
            json.WriteFigure("value", ideal.Value);
            json.WriteString("reason", ideal.Value is null ? "its formula has no value on perfect readings" : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("trial");
        foreach (TrialStep step in check.Trial)
        {
            json.WriteStartObject();
            json.WriteString("what", step.What);
            json.WriteBoolean("works", step.Failure is null);
            json.WriteString("reason", step.Failure);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, CheckFinding finding)
    {
        json.WriteStartObject();
        json.WriteString("kind", finding.Kind switch
        {
            CheckKind.Fault => "fault",
            CheckKind.DoesNotHold => "does-not-hold",
            _ => "look-up",
        });
        json.WriteNumber("line", finding.Line);
        json.WriteNumber("column", finding.Column);
        json.WriteString("problem", finding.Problem);
        json.WriteString("cure", finding.Cure);
        json.WriteEndObject();
    }
}
