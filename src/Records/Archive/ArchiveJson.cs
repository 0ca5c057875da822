using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.Records.Archive;

/// <summary>Writes <c>records.json</c> (docs/schemas/archive.schema.json): the same bytes for the same records.</summary>
internal static class ArchiveJson
{
    public const string Format = "calx-records";
    public const int Version = 1;

    private static readonly JsonWriterOptions Layout = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static void Write(Stream stream, ArchiveContent content)
    {
        using var json = new Utf8JsonWriter(stream, Layout);
        json.WriteStartObject();
        json.WriteString("format", Format);
        json.WriteNumber("version", Version);
        Write(json, "classes", content.Classes.Select(RecordJson.Of));
        Write(json, "members", content.Members.Select(RecordJson.Of));
        Write(json, "balances", content.Balances.Select(RecordJson.Of));
        Write(json, "checks", content.Checks.Select(RecordJson.Of));
        Write(json, "signatures", content.Signatures.Select(RecordJson.Of));
        if (content.Decisions.Count > 0)
        {
            // Only where there are some: records in which nothing was learned are written as they always were.
            Write(json, "numbers", content.Decisions.Select(RecordJson.Of));
        }

        Write(json, "lessons", content.Lessons.Select(Of));
        json.WriteEndObject();
    }

    /// <summary>An entry with all that it was kept with.</summary>
    public static JsonObject Of(KeptEntry kept)
    {
        JournalEntry entry = kept.Entry;
        ContentParts parts = ContentParts.Of(entry.Content);
        return new JsonObject
        {
            ["number"] = kept.Number,
            ["id"] = entry.Id.ToString(),
            ["group"] = entry.Cell.Group,
            ["trial"] = entry.Cell.Trial,
            ["member"] = entry.Cell.Member,
            ["what"] = entry.Cell.What,
            ["kind"] = parts.Kind,
            ["value"] = parts.Value,
            ["unit"] = parts.Unit,
            ["balance"] = parts.Balance,
            ["vessel"] = parts.Vessel,
            ["outOf"] = parts.OutOf,
            ["comment"] = parts.Comment,
            ["device"] = entry.Device,
            ["typedAt"] = Written.Time(entry.TypedAt),
            ["replaces"] = entry.Replaces?.ToString(),
            ["reason"] = entry.Reason,
            ["receivedAt"] = Written.Time(kept.ReceivedAt),
        };
    }

    private static JsonObject Of(ArchivedLesson lesson)
    {
        JsonObject json = RecordJson.Of(lesson.Lesson);
        json["journal"] = new JsonArray([.. lesson.Journal.Select(Of)]);
        return json;
    }

    private static void Write(Utf8JsonWriter json, string name, IEnumerable<JsonObject> records)
    {
        json.WriteStartArray(name);
        foreach (JsonObject record in records)
        {
            record.WriteTo(json);
        }

        json.WriteEndArray();
    }
}
