using System.Text.Json;
using Calx.Measurement.Statistics.Series;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference;
using Calx.Practicals.Planning.Curves;
using Calx.Practicals.Readings;

namespace Calx.App.Output;

/// <summary>Mass against time in the findings' JSON document, under <c>series</c>; absent where the practical takes none.</summary>
internal static class SeriesJson
{
    private static readonly string[] Orders = ["zeroth", "first", "second"];

    /// <summary>One group's.</summary>
    public static void Write(Utf8JsonWriter json, GroupFindings group, SeriesDefinition? series)
    {
        if (series is null || group.Curve is not GroupCurve curve)
        {
            return;
        }

        json.WriteStartObject("series");
        json.WriteString("timeUnit", series.TimeUnit);
        json.WriteBoolean("massLost", group.Readings.Series?.IsLoss ?? false);
        WritePoints(json, group.Readings.Series);
        json.WriteString("order", Orders[(int)series.Order]);
        json.WriteStartObject("quantities");
        foreach (CurveQuantity quantity in curve.Quantities)
        {
            json.WriteStartObject(quantity.Quantity.Id);
            json.WriteFigure("value", quantity.Value);
            json.WriteFigure("standardUncertainty", quantity.StandardUncertainty);
            json.WriteIntervalOrNull("interval", quantity.Interval);
            json.WriteString("unit", quantity.Quantity.Unit);
            json.WriteString("reason", quantity.Reason);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        WriteOrders(json, curve.Order);
        WriteDisturbances(json, curve);
        json.WriteEndObject();
    }

    /// <summary>The class's.</summary>
    public static void Write(Utf8JsonWriter json, ClassCurve? curve)
    {
        if (curve is null)
        {
            return;
        }

        json.WriteStartObject("series");
        json.WriteStartObject("quantities");
        foreach (CurveQuantityDefinition quantity in curve.Series.Quantities)
        {
            ClassCurveQuantity? found = curve.Find(quantity.Id);
            json.WriteStartObject(quantity.Id);
            json.WriteFigure("value", found?.Value);
            json.WriteFigure("standardUncertainty", found?.StandardUncertainty);
            json.WriteIntervalOrNull("interval", found?.Interval);
            json.WriteFigure("between", found?.Between);
            json.WriteNumber("n", found?.Count ?? 0);
            json.WriteString("unit", quantity.Unit);
            json.WriteString("reason", found is null ? $"No group that is pooled gives the {quantity.Label}." : null);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteStartObject("orders");
        json.WriteString("verdict", curve.Order is KineticOrder order ? Orders[(int)order] : "cannot-tell");
        WriteProbabilities(json, curve.Probabilities);
        json.WriteString("sentence", curve.OrderSentence);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>What a plan expects of it.</summary>
    public static void Write(Utf8JsonWriter json, CurveOutlook? outlook)
    {
        if (outlook is null)
        {
            return;
        }

        json.WriteStartObject("series");
        json.WriteString("timeUnit", outlook.Series.TimeUnit);
        json.WriteStartArray("expectedLoss");
        for (int i = 0; i < outlook.TypicalLossInGrams.Count; i++)
        {
            json.WriteStartObject();
            json.WriteFigure("time", outlook.Series.TimesInMinutes[i] / outlook.Series.MinutesInUnit);
            json.WriteFigure("lost", outlook.TypicalLossInGrams[i]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("quantities");
        foreach (CurveQuantityDefinition quantity in outlook.Series.Quantities)
        {
            CurveOutlookQuantity? found = outlook.Find(quantity.Id);
            json.WriteStartObject(quantity.Id);
            json.WriteFigure("median", found?.Median);
            json.WriteFigure("low", found?.Low);
            json.WriteFigure("high", found?.High);
            json.WriteFigure("standardUncertainty", found?.StandardUncertainty);
            json.WriteString("unit", quantity.Unit);
            json.WriteString("reason", found is null ? "No simulated group has points that determine it." : null);
            json.WriteEndObject();
        }

        json.WriteEndObject();
        json.WriteFigure("curveFound", outlook.CurveFound);
        json.WriteFigure("orderTold", outlook.OrderTold);
        json.WriteFigure("orderMisled", outlook.OrderMisled);
        json.WriteFigure("lossInSteps", outlook.LossInSteps);
        json.WriteEndObject();
    }

    /// <summary>The points alone.</summary>
    public static void Write(Utf8JsonWriter json, GroupSeries? points, SeriesDefinition? series)
    {
        if (points is null || series is null)
        {
            return;
        }

        json.WriteStartObject("series");
        json.WriteString("timeUnit", series.TimeUnit);
        WritePoints(json, points);
        json.WriteEndObject();
    }

    private static void WritePoints(Utf8JsonWriter json, GroupSeries? points)
    {
        json.WriteStartArray("points");
        foreach (SeriesPoint point in points?.Points ?? [])
        {
            json.WriteStartObject();
            json.WriteNumber("time", point.Time.Value);
            json.WriteString("reading", point.Value.ToString());
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteOrders(Utf8JsonWriter json, OrderVerdict verdict)
    {
        json.WriteStartObject("orders");
        json.WriteString("verdict", verdict switch
        {
            OrderVerdict.Prefers prefers => Orders[(int)prefers.Order],
            OrderVerdict.CannotTell => "cannot-tell",
            _ => "not-compared",
        });
        WriteProbabilities(json, verdict switch
        {
            OrderVerdict.Prefers prefers => prefers.Probabilities,
            OrderVerdict.CannotTell cannot => cannot.Probabilities,
            _ => null,
        });
        json.WriteString("reason", verdict switch
        {
            OrderVerdict.CannotTell cannot => cannot.Reason,
            OrderVerdict.NotCompared not => not.Reason,
            _ => null,
        });
        json.WriteEndObject();
    }

    private static void WriteProbabilities(Utf8JsonWriter json, IReadOnlyList<double>? probabilities)
    {
        json.WriteStartObject("probabilities");
        for (int i = 0; i < Orders.Length; i++)
        {
            json.WriteFigure(Orders[i], probabilities?[i]);
        }

        json.WriteEndObject();
    }

    private static void WriteDisturbances(Utf8JsonWriter json, GroupCurve curve)
    {
        json.WriteStartArray("disturbances");
        foreach (Disturbance one in curve.Disturbances)
        {
            json.WriteStartObject();
            json.WriteString("kind", one switch { Disturbance.Spike => "point", Disturbance.Run => "run", _ => "jump" });
            json.WriteNumber("from", curve.Series!.Readings[one.First].Time.Value);
            json.WriteNumber("to", curve.Series.Readings[one.Last].Time.Value);
            json.WriteFigure("size", one.Size);
            json.WriteFigure("probability", one.Probability);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
