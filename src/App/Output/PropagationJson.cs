using System.Text.Json;
using Calx.App.Commands;
using Calx.Measurement.Uncertainty;

namespace Calx.App.Output;

/// <summary>A propagated model as JSON: docs/schemas/propagation.schema.json.</summary>
internal static class PropagationJson
{
    public static void Write(Utf8JsonWriter json, PropagationAnswer answer)
    {
        json.WriteStartObject();
        json.WriteString("result", answer.Model.ResultName);
        WriteFirstOrder(json, answer);
        json.WriteString("firstOrderReason", answer.FirstOrderReason);
        json.WriteStartObject("secondOrder");
        json.WriteFigure("standardUncertainty", answer.SecondOrderUncertainty);
        json.WriteString("reason", answer.SecondOrderReason);
        json.WriteEndObject();
        WriteDrawn(json, answer);
        json.WriteString("monteCarloReason", answer.DrawnReason);
        if (answer.Validation is null)
        {
            json.WriteNull("validated");
        }
        else
        {
            json.WriteBoolean("validated", answer.Validation is ValidationOutcome.Validated);
        }

        json.WriteString("validation", answer.ValidationInWords);
        json.WriteEndObject();
    }

    private static void WriteFirstOrder(Utf8JsonWriter json, PropagationAnswer answer)
    {
        if (answer.FirstOrder is not UncertainValue value)
        {
            json.WriteNull("firstOrder");
            return;
        }

        double coverage = answer.Settings.Coverage;
        CoverageInterval interval = value.Interval(coverage);
        json.WriteStartObject("firstOrder");
        json.WriteFigure("value", value.Value);
        json.WriteFigure("standardUncertainty", value.StandardUncertainty);
        json.WriteFigure("degreesOfFreedom", value.DegreesOfFreedom);
        json.WriteString("degreesOfFreedomReason", double.IsFinite(value.DegreesOfFreedom) ? null : "They are infinite.");
        json.WriteFigure("coverage", coverage);
        json.WriteFigure("coverageFactor", value.CoverageFactor(coverage));
        json.WriteInterval("interval", interval.Low, interval.High);
        json.WriteStartArray("budget");
        foreach (BudgetEntry entry in value.Budget)
        {
            json.WriteStartObject();
            json.WriteString("input", entry.Input.Name);
            json.WriteFigure("sensitivity", entry.Sensitivity);
            json.WriteFigure("contribution", entry.Contribution);
            json.WriteFigure("share", entry.Share);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteDrawn(Utf8JsonWriter json, PropagationAnswer answer)
    {
        if (answer.Drawn is not MonteCarloResult drawn)
        {
            json.WriteNull("monteCarlo");
            return;
        }

        json.WriteStartObject("monteCarlo");
        json.WriteFigure("value", drawn.Value);
        json.WriteFigure("standardUncertainty", drawn.StandardUncertainty);
        json.WriteInterval("shortest", drawn.Shortest.Low, drawn.Shortest.High);
        json.WriteInterval("symmetric", drawn.Symmetric.Low, drawn.Symmetric.High);
        json.WriteNumber("draws", drawn.Draws);
        json.WriteNumber("seed", answer.Settings.Seed);
        json.WriteEndObject();
    }
}
