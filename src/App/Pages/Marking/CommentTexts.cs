using System.Text;
using System.Text.Json;
using Calx.Records.Storage;

namespace Calx.App.Pages.Marking;

/// <summary>The school's own comments on answers in words, each put in by one key. Kept in the school's settings.</summary>
public sealed class CommentTexts(RecordStore store)
{
    /// <summary>Most of them.</summary>
    public const int Most = 10;

    /// <summary>Longest of them in characters: a sentence or two.</summary>
    public const int Longest = 200;

    private const string Setting = "marking-comments";

    /// <summary>The key of each, by its place from 0.</summary>
    public static char KeyOf(int place) => (char)('a' + place);

    /// <summary>All ten places, empty ones too: a text keeps its key.</summary>
    public async Task<IReadOnlyList<string>> Now(CancellationToken cancellation)
    {
        string[] kept = await store.Setting(Setting, cancellation) is string text ? Read(text) : [];
        return [.. Enumerable.Range(0, Most).Select(i => i < kept.Length ? kept[i] : "")];
    }

    /// <summary>Keeps them.</summary>
    /// <returns>What is wrong, or null.</returns>
    public async Task<string?> Keep(IReadOnlyList<string> texts, string by, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(texts);
        string[] each = [.. texts.Take(Most).Select(t => string.Join(' ', t.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)))];
        return Array.FindIndex(each, t => t.Length > Longest) is >= 0 and int place
            ? FormattableString.Invariant($"The text of {KeyOf(place)} has {each[place].Length} characters: at most {Longest} are kept.")
            : (await store.PutSetting(Setting, Text(each), isSecret: false, by, cancellation)).Fault();
    }

    private static string Text(string[] texts)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartArray();
            Array.ForEach(texts, t => json.WriteStringValue(t));
            json.WriteEndArray();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    /// <summary>What cannot be read, as from another program, is none.</summary>
    private static string[] Read(string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
            return document.RootElement.ValueKind == JsonValueKind.Array
                ? [.. document.RootElement.EnumerateArray().Take(Most).Select(t => t.ValueKind == JsonValueKind.String ? t.GetString()! : "")] : [];
        }
        catch (JsonException)
        {
            return [];
        }
    }
}
