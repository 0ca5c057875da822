using System.Globalization;
using System.Text.Json;
using Calx.Records.Journal;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.Records.Archive;

/// <summary>Records of JSON objects. What cannot be one throws <see cref="FormatException"/> or what the record's own construction
/// throws, with a sentence for the person.</summary>
internal static class ArchiveRecords
{
    public static SchoolClass Class(JsonElement json) => new(Id(json, "id"), Text(json, "year"), Text(json, "name"), Flag(json, "namesForgotten"));

    public static Member Member(JsonElement json) => new(Id(json, "classId"), Whole(json, "number"), Text(json, "name"));

    public static KeptBalance Balance(JsonElement json) => new(Id(json, "id"), Text(json, "letter"), Text(json, "label"), Text(json, "resolution"));

    public static BalanceCheck Check(JsonElement json) => new(
        Id(json, "id"), Id(json, "balanceId"), Time(json, "at"), Written.NumberOf(Text(json, "weight")), Written.NumberOf(Text(json, "shown")), Text(json, "by"), Text(json, "note"));

    public static Signature Signature(JsonElement json) =>
        new(Text(json, "practicalId"), Whole(json, "practicalVersion"), Text(json, "fingerprint"), Text(json, "initials"), Time(json, "at"));

    public static NumberDecision Decision(JsonElement json) => new(
        Text(json, "practicalId"),
        Whole(json, "practicalVersion"),
        Text(json, "class"),
        Text(json, "number"),
        Text(json, "was"),
        Text(json, "became"),
        Text(json, "restsOn"),
        Whole(json, "lessons"),
        Text(json, "initials"),
        Time(json, "at"));

    public static Lesson Lesson(JsonElement json) => new(
        Id(json, "id"),
        Id(json, "classId"),
        Text(json, "practicalId"),
        Whole(json, "practicalVersion"),
        Text(json, "practicalSource"),
        Text(json, "plan"),
        Day(json, "date"),
        Text(json, "room"),
        Whole(json, "groups"),
        Whole(json, "minutes"),
        new LessonSettings(Flag(json, "assessed"), Flag(json, "decideFirst"), Flag(json, "trial")),
        Since(json, "teacher"),
        Since(json, "period"));

    public static KeptEntry Entry(JsonElement json)
    {
        var parts = new ContentParts(
            Text(json, "kind"), Text(json, "value"), Maybe(json, "unit"), Maybe(json, "balance"), Maybe(json, "vessel"), Maybe(json, "outOf"), Maybe(json, "comment"));
        var entry = new JournalEntry(
            EntryIdOf(Text(json, "id")),
            new JournalCell(Whole(json, "group"), Whole(json, "trial"), Text(json, "what"), Whole(json, "member")),
            parts.Content(),
            Text(json, "device"),
            Time(json, "typedAt"),
            Maybe(json, "replaces") is string replaced ? EntryIdOf(replaced) : null,
            Maybe(json, "reason"));
        return new KeptEntry(entry, Whole(json, "number"), Time(json, "receivedAt"));
    }

    private static JsonElement Part(JsonElement json, string name) =>
        json.ValueKind == JsonValueKind.Object && json.TryGetProperty(name, out JsonElement value) ? value : throw new FormatException($"'{name}' is missing.");

    private static string Text(JsonElement json, string name) => Part(json, name) is { ValueKind: JsonValueKind.String } value
        ? value.GetString()! : throw new FormatException($"'{name}' is no text.");

    /// <summary>A text that older archives do not have.</summary>
    private static string Since(JsonElement json, string name) => json.TryGetProperty(name, out _) ? Text(json, name) : "";

    private static string? Maybe(JsonElement json, string name) => Part(json, name).ValueKind == JsonValueKind.Null ? null : Text(json, name);

    private static int Whole(JsonElement json, string name) => Part(json, name) is { ValueKind: JsonValueKind.Number } value && value.TryGetInt32(out int number)
        ? number : throw new FormatException($"'{name}' is no whole number.");

    private static bool Flag(JsonElement json, string name) => Part(json, name).ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => throw new FormatException($"'{name}' is neither true nor false."),
    };

    private static DateTimeOffset Time(JsonElement json, string name) =>
        DateTimeOffset.TryParseExact(Text(json, name), "O", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTimeOffset time)
            ? time : throw new FormatException($"'{name}' is no time such as 2026-03-04T13:04:05.0000000+00:00.");

    private static DateOnly Day(JsonElement json, string name) =>
        DateOnly.TryParseExact(Text(json, name), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? day : throw new FormatException($"'{name}' is no day such as 2026-03-04.");

    private static RecordId Id(JsonElement json, string name) => RecordId.Parse(Text(json, name));

    private static EntryId EntryIdOf(string text) => EntryId.TryParse(text, out EntryId id) ? id : throw new FormatException($"'{text}' is no id of an entry.");
}
