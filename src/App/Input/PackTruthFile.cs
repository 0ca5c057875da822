using System.Globalization;
using System.Text.Json;
using Calx.App.Live;
using Calx.App.Output;
using Calx.Measurement.Numbers;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Readings;

namespace Calx.App.Input;

/// <summary>Reads what is true of a class's catch-up packs (docs/schemas/catch-up.schema.json): each student is marked by the readings that were handed out.</summary>
internal static class PackTruthFile
{
    private const string Expected = "the file of what is true of catch-up packs, which 'calx catch-up' writes";
    private const int Deepest = 16;

    /// <summary>The readings of each student, or null after telling the fault on standard error.</summary>
    public static OwnReadings? Read(string path, Practical practical, Surroundings surroundings)
    {
        switch (TextFile.Read(surroundings, path, Expected))
        {
            case FileText.Read read:
                return Of(read.Text, path, practical, surroundings);
            case FileText.Unreadable unreadable:
                surroundings.Error.WriteLine(unreadable.Line);
                return null;
            default:
                throw new InvalidOperationException("No other case of a text file exists.");
        }
    }

    private static OwnReadings? Of(string text, string path, Practical practical, Surroundings surroundings)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = Deepest });
            string id = document.RootElement.GetProperty("practical").GetString() ?? "";
            if (id != practical.Id)
            {
                surroundings.Error.WriteLine(Fault.Line(path, 1, 1, $"these packs are of the practical '{id}', and '{practical.Id}' is to be marked"));
                return null;
            }

            var byName = new Dictionary<string, OwnReadings.Source>(StringComparer.Ordinal);
            foreach (JsonElement pack in document.RootElement.GetProperty("packs").EnumerateArray())
            {
                byName[CatchUpStudent.Normal(pack.GetProperty("student").GetString() ?? "")] = Source(pack, Curve(pack, document.RootElement.GetProperty("balance"), practical));
            }

            return new OwnReadings(byName, "has no catch-up pack");
        }
        catch (JsonException fault)
        {
            surroundings.Error.WriteLine(Fault.Line(path, (int)(fault.LineNumber ?? 0) + 1, (int)(fault.BytePositionInLine ?? 0) + 1, $"this is not JSON; expected {Expected}"));
        }
        catch (Exception other) when (other is KeyNotFoundException or InvalidOperationException or FormatException)
        {
            surroundings.Error.WriteLine(Fault.Line(path, 1, 1, $"something is missing here or is of another kind; expected {Expected}"));
        }

        return null;
    }

    private static OwnReadings.Source Source(JsonElement pack, IReadOnlyDictionary<string, CurveReadOff> curve)
    {
        (string Reading, int Time, WrittenNumber Shown)[] readings = [.. pack.GetProperty("readings").EnumerateArray().Select(Reading)];
        PackRange[] ranges =
        [
            .. pack.GetProperty("answers").EnumerateArray().Where(a => a.GetProperty("accepted")[0].ValueKind == JsonValueKind.Number).Select(a => new PackRange(
                a.GetProperty("stoppedAfter").GetInt32(), a.GetProperty("id").GetString() ?? "", a.GetProperty("accepted")[0].GetDouble(), a.GetProperty("accepted")[1].GetDouble())),
        ];
        int sensible = pack.GetProperty("sensibleHeatings").GetInt32(), heatings = Math.Max(1, readings.Max(r => r.Time));
        return answers =>
        {
            int last = PackHeatings.Used(ranges, heatings, sensible, answers);
            return (readings.Where(r => r.Time <= last).GroupBy(r => r.Reading).ToDictionary(
                g => g.Key, IReadOnlyList<WrittenNumber> (g) => [.. g.OrderBy(r => r.Time).Select(r => r.Shown)], StringComparer.Ordinal), null, curve);
        };
    }

    /// <summary>What can be read off the curve that was handed out; nothing where the practical has none.</summary>
    private static IReadOnlyDictionary<string, CurveReadOff> Curve(JsonElement pack, JsonElement balance, Practical practical) =>
        practical.Series is null || !pack.TryGetProperty("series", out JsonElement series) || series.ValueKind != JsonValueKind.Object
            ? new Dictionary<string, CurveReadOff>()
            : CurveReadOff.Of(
                practical,
                new GroupSeries(
                    series.GetProperty("points").EnumerateArray().Select(p => new SeriesPoint(Number(p.GetProperty("time").GetRawText()), Number(p.GetProperty("reading").GetString()))),
                    isLoss: false),
                balance.GetProperty("resolution").GetDouble(),
                balance.GetProperty("repeatability").GetDouble());

    private static WrittenNumber Number(string? text) =>
        WrittenNumber.TryParse(text, out WrittenNumber number) ? number : throw new FormatException("This is no number.");

    /// <summary>'after2' is the second weighing of 'after'.</summary>
    private static (string Reading, int Time, WrittenNumber Shown) Reading(JsonElement json)
    {
        string id = json.GetProperty("id").GetString() ?? "", name = id.TrimEnd('0', '1', '2', '3', '4', '5', '6', '7', '8', '9');
        int time = name.Length == id.Length ? 1 : int.Parse(id.AsSpan(name.Length), NumberStyles.None, CultureInfo.InvariantCulture);
        return WrittenNumber.TryParse(json.GetProperty("shown").GetString(), out WrittenNumber shown) && name.Length > 0 && time is > 0 and < 100
            ? (name, time, shown)
            : throw new FormatException("This is no reading.");
    }
}
