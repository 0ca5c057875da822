using System.Text.Json;
using Calx.App.Commands;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;

namespace Calx.App.Output;

/// <summary>The part of a plan's document that is about amounts and conclusions.</summary>
internal static class PlanAmountJson
{
    /// <summary>Conclusions, curve and changes; empty lists where nothing is planned.</summary>
    public static void Write(Utf8JsonWriter json, Plan? plan)
    {
        WriteConclusions(json, plan);
        WriteCurve(json, plan);
        WriteChanges(json, plan);
    }

    public static void WriteAmount(Utf8JsonWriter json, PlanAnswer answer)
    {
        AmountAdvice? amounts = answer.Plan?.Amounts;
        json.WriteStartObject("amount");
        json.WriteFigure("smallest", amounts?.Smallest?.SampleInGrams);
        json.WriteFigure("best", amounts?.Best?.SampleInGrams);
        json.WriteFigure("largest", PlanSettings.LargestSample(answer.Choice.Settings.Practical));
        json.WriteString("unit", "g");
        json.WriteFigure("perGroup", answer.Choice.Settings.Practical.Amounts is null ? null : answer.Choice.Settings.SampleInGrams * answer.Choice.Settings.Trials);
        json.WriteString("reason", Reason());
        json.WriteEndObject();

        string? Reason() =>
            amounts is null ? answer.Reason
            : amounts.Smallest is not null ? null
            : amounts.Curve.Count == 0 ? "the practical's file names no amounts"
            : amounts.Best is null ? "the table leads to none of the conclusions"
            : "no amount that a class may use makes it sure enough of every conclusion";
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
}
