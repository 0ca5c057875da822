using System.Globalization;
using System.Text.Json;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>
/// Reads an entry as a page sends it: one JSON object. Nothing that is sent can make it throw; what it does not understand it
/// says in a sentence, and the page keeps the entry for the person to see.
/// </summary>
/// <param name="view">The lesson.</param>
/// <param name="writer">Who sends, and what they may write.</param>
/// <param name="now">The time: when an entry was typed that does not say so itself.</param>
public sealed class EntryReader(LessonView view, EntryWriter writer, DateTimeOffset now)
{
    /// <summary>Most trials of a group: more new starts than any lesson has time for.</summary>
    private const int MostTrials = 20;

    private readonly AnswerEntryReader answers = new(view, writer, now);

    /// <summary>Reads one.</summary>
    public EntryReading Read(JsonElement json)
    {
        string? idText = Text(json, "id");
        if (!EntryId.TryParse(idText, out EntryId id))
        {
            return new EntryReading(idText, null, "An entry needs an id of 32 hexadecimal digits.");
        }

        if (Text(json, "kind") == AnswerEntryReader.Kind)
        {
            return answers.Read(json, id);
        }

        // A device that has changed its group still holds what it typed for the other: that is refused, not written to this one.
        int group = Whole(json, "group") ?? writer.Group ?? -1;
        int trial = Whole(json, "trial") ?? 1;
        int member = Whole(json, "member") ?? 0;
        string? what = Text(json, "what");
        if (group < 0 || group > view.GroupCount || trial < 1 || trial > MostTrials || member < 0 || what is null or { Length: 0 or > JournalCell.LongestWhat })
        {
            return new EntryReading(idText, null, $"It does not say where it belongs: a group up to {view.GroupCount}, a trial and what it is.");
        }

        string? kind = Text(json, "kind");
        if (writer.Refusal(group, member, kind, what) is string refusal)
        {
            return new EntryReading(idText, null, refusal);
        }

        (EntryContent? content, string? fault) = Content(json, kind, what);
        return content is null
            ? new EntryReading(idText, null, fault)
            : Entry(json, id, new JournalCell(group, trial, what, member), content);
    }

    private EntryReading Entry(JsonElement json, EntryId id, JournalCell cell, EntryContent content)
    {
        string? replacesText = Text(json, "replaces");
        EntryId? replaces = EntryId.TryParse(replacesText, out EntryId other) ? other : null;
        string? reason = Text(json, "reason")?.Trim();
        if (replacesText is not null && (replaces is null || replaces == id || string.IsNullOrEmpty(reason)))
        {
            return new EntryReading(id.ToString(), null, "A correction names the entry that it replaces and says why.");
        }

        DateTimeOffset typedAt = TypedAt(json) ?? now;
        if (!writer.IsTeacher && AfterTheEnd.Refusal(view.State, typedAt) is string late)
        {
            return new EntryReading(id.ToString(), null, late);
        }

        try
        {
            // Any device of a group corrects what was typed for it, also at a balance station: the group sits at one table, the phone
            // that typed may be flat or have joined anew, and what is replaced stays to be seen. The teacher's word is the teacher's.
            if (replaces is EntryId old && !writer.IsTeacher && view.Find(old) is KeptEntry kept && kept.Entry.Cell == cell)
            {
                if (kept.Entry.Content is EntryContent.Reading && content is not EntryContent.Reading)
                {
                    return new EntryReading(id.ToString(), null, "A reading is corrected by another reading.");
                }

                if (CorrectionWish.IsDecided(view, cell) && view.Find(id) is null)
                {
                    return new EntryReading(id.ToString(), null, CorrectionWish.PassedOn)
                    {
                        Wish = CorrectionWish.Of(view, kept, id, content, writer.Device, typedAt, reason!),
                    };
                }
            }

            return new EntryReading(
                id.ToString(), new JournalEntry(id, cell, content, writer.Device, typedAt, replaces, replaces is null ? null : reason), null);
        }
        catch (ArgumentException)
        {
            return new EntryReading(id.ToString(), null, $"A text is too long: at most {JournalEntry.LongestText} characters are kept.");
        }
    }

    private (EntryContent? Content, string? Fault) Content(JsonElement json, string? kind, string what)
    {
        string text = Text(json, "text")?.Trim() ?? "";
        switch (kind)
        {
            case "reading":
                return Reading(json, what);
            case "observation" when view.Practical.Observations.Any(o => o.Id == what):
                return (new EntryContent.Observation(json.TryGetProperty("seen", out JsonElement seen) && seen.ValueKind == JsonValueKind.True), null);
            case "observation":
                return (null, $"This practical has no observation '{what}'.");
            case "note" when text.Length > 0:
                return (new EntryContent.Note(text), null);
            case "note":
                return (null, "A note without a word is nothing to keep.");
            case "happening" when what == Acts.Condition && !writer.IsTeacher && !Acts.ConditionsOfGroups.Contains(text):
                return (null, "That is the teacher's to decide.");
            case "happening":
                return (new EntryContent.Happening(text), null);
            default:
                return (null, "Its kind is not known: a reading, an observation, a note or a happening is expected.");
        }
    }

    private (EntryContent? Content, string? Fault) Reading(JsonElement json, string what)
    {
        (ReadingDefinition Reading, int, string)? weighing = view.Weighings.Select(w => ((ReadingDefinition, int, string)?)w).FirstOrDefault(w => w!.Value.Item3 == what);
        string? unit = weighing?.Reading.Unit ?? (view.Practical.Series?.IsPoint(what) == true ? "g" : null);
        if (unit is null)
        {
            return (null, $"The sheet of this lesson has no reading '{what}'.");
        }

        // A comma does for the point where the keyboard has one; what is kept is the number that was read.
        string written = (Text(json, "written") ?? "").Trim().Replace(',', '.');
        return WrittenNumber.TryParse(written, out WrittenNumber number)
            ? (new EntryContent.Reading(number, unit, Word(json, "balance"), Word(json, "vessel")), null)
            : (null, $"'{Shorten(written)}' is not a number as a balance shows it, such as 24.31.");
    }

    private static string? Word(JsonElement json, string name) => Text(json, name)?.Trim() is { Length: > 0 } word ? word : null;

    private static string Shorten(string text) => text.Length <= 20 ? text : text[..20] + "...";

    /// <summary>When it was typed, as far as it says so.</summary>
    internal static DateTimeOffset? TypedAt(JsonElement json) => DateTimeOffset.TryParse(
        Text(json, "typedAt"), CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out DateTimeOffset typed) ? typed : null;

    internal static string? Text(JsonElement json, string name) =>
        json.ValueKind == JsonValueKind.Object && json.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.String
            ? value.GetString() : null;

    internal static int? Whole(JsonElement json, string name) =>
        json.ValueKind == JsonValueKind.Object && json.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.Number
            && value.TryGetInt32(out int number) ? number : null;
}
