using System.Data.Common;
using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Records.Journal;

namespace Calx.Records.Storage;

/// <summary>An entry as a row of the table <c>entry</c>, and back.</summary>
internal static class EntryRow
{
    public static readonly string[] Columns =
    [
        "school", "lesson_id", "number", "id", "group_number", "trial", "member", "what", "kind", "value", "unit", "balance", "vessel",
        "out_of", "comment", "device", "typed_at", "replaces", "reason", "received_at",
    ];

    /// <summary>The columns in the order in which <see cref="Read"/> takes them.</summary>
    public static readonly string Selected = string.Join(", ", Columns.Skip(2));

    public static object?[] Of(string school, RecordId lesson, KeptEntry kept)
    {
        JournalEntry entry = kept.Entry;
        ContentParts parts = ContentParts.Of(entry.Content);
        return
        [
            school, lesson.ToString(), kept.Number, entry.Id.ToString(), (long)entry.Cell.Group, (long)entry.Cell.Trial, (long)entry.Cell.Member,
            entry.Cell.What, parts.Kind, parts.Value, parts.Unit, parts.Balance, parts.Vessel, parts.OutOf, parts.Comment, entry.Device,
            Written.Time(entry.TypedAt), entry.Replaces?.ToString(), entry.Reason, Written.Time(kept.ReceivedAt),
        ];
    }

    public static KeptEntry Read(DbDataReader row)
    {
        var parts = new ContentParts(
            row.GetString(6), row.GetString(7), row.TextOrNull(8), row.TextOrNull(9), row.TextOrNull(10), row.TextOrNull(11), row.TextOrNull(12));
        var entry = new JournalEntry(
            Id(row.GetString(1)),
            new JournalCell(row.Whole(2), row.Whole(3), row.GetString(5), row.Whole(4)),
            parts.Content(),
            row.GetString(13),
            row.Time(14),
            row.TextOrNull(15) is string replaced ? Id(replaced) : null,
            row.TextOrNull(16));
        return new KeptEntry(entry, row.GetInt64(0), row.Time(17));
    }

    private static EntryId Id(string text) => EntryId.TryParse(text, out EntryId id) ? id : throw new FormatException($"'{text}' is no id of an entry.");
}
