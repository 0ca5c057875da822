using System.Globalization;
using System.Text.Json.Nodes;
using Calx.App.Live;
using Calx.Records.Journal;

namespace Calx.App.Tests.Pages.Students;

/// <summary>Entries as a device's script sends them.</summary>
internal static class Entries
{
    /// <summary>An id as text.</summary>
    public static string Id() => NewEntryId.Draw().ToString();

    /// <summary>An id.</summary>
    public static EntryId NewId() => EntryId.TryParse(Id(), out EntryId id) ? id : throw new InvalidOperationException("The id drawn was 0.");

    /// <summary>A reading.</summary>
    public static JsonObject Reading(string what, string written, string? id = null, string? balance = "A") => new()
    {
        ["id"] = id ?? Id(), ["kind"] = "reading", ["what"] = what, ["trial"] = 1, ["written"] = written, ["balance"] = balance, ["typedAt"] = Now,
    };

    /// <summary>Something that happened.</summary>
    public static JsonObject Happening(string what, string text = "") => new()
    {
        ["id"] = Id(), ["kind"] = "happening", ["what"] = what, ["trial"] = 1, ["text"] = text, ["typedAt"] = Now,
    };

    /// <summary>An observation.</summary>
    public static JsonObject Observation(string what, bool seen = true) => new()
    {
        ["id"] = Id(), ["kind"] = "observation", ["what"] = what, ["trial"] = 1, ["seen"] = seen, ["typedAt"] = Now,
    };

    /// <summary>The same entry with a property set.</summary>
    public static JsonObject With(this JsonObject entry, string name, JsonNode? value)
    {
        entry[name] = value;
        return entry;
    }

    private static string Now => DateTimeOffset.UtcNow.ToString("O", CultureInfo.InvariantCulture);
}
