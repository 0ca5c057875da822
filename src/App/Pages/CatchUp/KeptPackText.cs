using Calx.Measurement.Numbers;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Definition;
using Calx.Practicals.Model;
using Calx.Practicals.Readings;
using Calx.Records.Journal;
using System.Buffers;
using System.Text;
using System.Text.Json;

namespace Calx.App.Pages.CatchUp;

/// <summary>
/// A student's pack as the journal of a lesson keeps it: readings, what was planted, and the decisions with their reasons. From these the
/// same sheet, key and truth come out again in a later year, whatever the program has learnt since; answers follow from the readings.
/// </summary>
internal static class KeptPackText
{
    /// <summary>The pack as one line of JSON. Where it would be too long for the journal, the reasons of the decisions are left out.</summary>
    public static string Of(CatchUpPack pack)
    {
        string whole = Text(pack, withReasons: true);
        return whole.Length <= EntryContent.LongestText ? whole : Text(pack, withReasons: false);
    }

    /// <summary>The pack again, or null where the text is none.</summary>
    /// <param name="text">The text.</param>
    /// <param name="student">Whose it is.</param>
    /// <param name="practical">The lesson's practical.</param>
    /// <param name="working">What works out the rest.</param>
    public static CatchUpPack? Read(string text, CatchUpStudent student, Practical practical, PackWorking working)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
            JsonElement json = document.RootElement;
            PackReading[] readings = [.. json.GetProperty("readings").EnumerateArray().Select(Reading)];
            PlantedCause[] planted = [.. json.GetProperty("planted").EnumerateArray().Select(c => Planted(c, practical))];
            PackDecision[] decisions = [.. json.GetProperty("decisions").EnumerateArray().Select(Decision)];
            return readings.Length == 0 || readings.Any(r => practical.Readings.All(known => known.Id != r.Weighing.Reading))
                ? null : working.Of(student, readings, new PackTruth(planted, json.GetProperty("together").GetDouble()), decisions, Points(json));
        }
        catch (Exception other) when (other is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }

    /// <summary>The readings alone, which needs nothing to be worked out; empty where the text is no pack.</summary>
    public static IReadOnlyList<PackReading> Readings(string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
            return [.. document.RootElement.GetProperty("readings").EnumerateArray().Select(Reading)];
        }
        catch (Exception other) when (other is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return [];
        }
    }

    private static string Text(CatchUpPack pack, bool withReasons)
    {
        var bytes = new ArrayBufferWriter<byte>(2048);
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            json.WriteStartArray("readings");
            foreach (PackReading reading in pack.Readings)
            {
                json.WriteStartObject();
                json.WriteString("id", reading.Weighing.Reading);
                json.WriteNumber("time", reading.Weighing.Occurrence);
                json.WriteString("shown", reading.Displayed.ToString());
                json.WriteNumber("true", reading.TrueMassInGrams);
                json.WriteNumber("shift", reading.ShiftInGrams);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            WritePoints(json, pack.Series);
            json.WriteStartArray("planted");
            foreach (PlantedCause cause in pack.Truth.Planted)
            {
                json.WriteStartObject();
                json.WriteString("cause", cause.Cause);
                json.WriteNumber("moved", cause.MovedInGrams);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteNumber("together", pack.Truth.TogetherInGrams);
            json.WriteStartArray("decisions");
            foreach (PackDecision decision in pack.Decisions)
            {
                json.WriteStartObject();
                json.WriteNumber("heating", decision.Heating);
                json.WriteString("decision", decision.Verdict);
                json.WriteNumber("spoiled", decision.ProbabilitySpoiled);
                json.WriteString("why", withReasons ? decision.Why : "");
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }

    private static void WritePoints(Utf8JsonWriter json, GroupSeries? series)
    {
        if (series is null)
        {
            return;
        }

        json.WriteStartArray("points");
        foreach (SeriesPoint point in series.Points)
        {
            json.WriteStartArray();
            json.WriteStringValue(point.Time.ToString());
            json.WriteStringValue(point.Value.ToString());
            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    private static GroupSeries? Points(JsonElement json) => !json.TryGetProperty("points", out JsonElement points) ? null
        : new GroupSeries([.. points.EnumerateArray().Select(p => new SeriesPoint(Number(p[0]), Number(p[1])))], isLoss: false);

    private static WrittenNumber Number(JsonElement json) =>
        WrittenNumber.TryParse(json.GetString(), out WrittenNumber number) ? number : throw new FormatException("This is no number.");

    private static PackReading Reading(JsonElement json) =>
        WrittenNumber.TryParse(json.GetProperty("shown").GetString(), out WrittenNumber shown) && json.GetProperty("time").GetInt32() is > 0 and var time
            ? new PackReading(
                new Weighing(json.GetProperty("id").GetString() ?? "", time), shown, json.GetProperty("true").GetDouble(), json.GetProperty("shift").GetDouble())
            : throw new FormatException("This is no reading.");

    private static PlantedCause Planted(JsonElement json, Practical practical)
    {
        string cause = json.GetProperty("cause").GetString() ?? "";
        return new PlantedCause(cause, practical.Faults.FirstOrDefault(f => f.Cause == cause)?.Label ?? cause, json.GetProperty("moved").GetDouble());
    }

    private static PackDecision Decision(JsonElement json) => new(
        json.GetProperty("heating").GetInt32(),
        json.GetProperty("decision").GetString() ?? "",
        json.GetProperty("why").GetString() ?? "",
        json.GetProperty("spoiled").GetDouble());
}
