using System.Text.Json;
using Calx.App.Pages.Answers;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>Reads a student's answer as a page sends it. A changed answer replaces the one before it, which stays to be seen.</summary>
/// <param name="view">The lesson.</param>
/// <param name="writer">Who sends.</param>
/// <param name="now">The time: when an answer was typed that does not say so itself.</param>
internal sealed class AnswerEntryReader(LessonView view, EntryWriter writer, DateTimeOffset now)
{
    /// <summary>How such an entry calls itself.</summary>
    public const string Kind = "answer";

    /// <summary>Why an answer replaces another: students are asked for no reason.</summary>
    public const string Reason = "changed by the student";

    private readonly Lazy<IReadOnlyList<AnswerQuestion>> questions = new(() => AnswerQuestions.Of(view));

    /// <summary>What this request has put into a cell: of two answers to one question the second replaces the first.</summary>
    private readonly Dictionary<JournalCell, JournalEntry> taken = [];

    /// <summary>Reads one.</summary>
    public EntryReading Read(JsonElement json, EntryId id)
    {
        int member = EntryReader.Whole(json, "member") ?? 0;
        string what = EntryReader.Text(json, "what") ?? "";
        AnswerQuestion? question = what.StartsWith(Acts.AnswerPrefix, StringComparison.Ordinal)
            ? questions.Value.FirstOrDefault(q => q.Id == what[Acts.AnswerPrefix.Length..]) : null;
        DateTimeOffset typedAt = EntryReader.TypedAt(json) ?? now;
        (string text, string? unit) = AnswerText(question, EntryReader.Text(json, "text"), EntryReader.Text(json, "unit"));
        string? fault = question is null ? "This lesson asks no such question."
            : member < 1 ? "It does not say whose answer it is."
            : Refusal(member, typedAt) ?? question.Fault(text, unit);
        if (fault is not null)
        {
            return new EntryReading(id.ToString(), null, fault);
        }

        var cell = new JournalCell(0, 1, what, member);
        var content = new EntryContent.Answer(text, unit);
        JournalEntry? before = taken.GetValueOrDefault(cell) ?? view.Table.FirstOrDefault(c => c.Cell == cell)?.Current.Entry;
        // Sent once more, or the same once more: it stands already.
        if (view.Find(id) is KeptEntry known ? known.Entry.Cell == cell && known.Entry.Content == content : before?.Content == content)
        {
            return new EntryReading(id.ToString(), null, null) { Known = true };
        }

        JournalEntry entry = before is null
            ? new JournalEntry(id, cell, content, writer.Device, typedAt)
            : new JournalEntry(id, cell, content, writer.Device, typedAt, before.Id == id ? null : before.Id, before.Id == id ? null : Reason);
        taken[cell] = entry;
        return new EntryReading(id.ToString(), entry, null);
    }

    private string? Refusal(int member, DateTimeOffset typedAt) => writer.IsTeacher ? null
        : AnswersFor.Of(view, member).Has(writer.Device) ? Answering.Of(view).Refusal(typedAt)
        : $"This device does not answer for student {member}: choose who you are first.";

    /// <summary>As it is kept: one kind of line ends; a number that carries its own unit needs no second one.</summary>
    private static (string Text, string? Unit) AnswerText(AnswerQuestion? question, string? text, string? unit)
    {
        string plain = (text ?? "").ReplaceLineEndings("\n").Trim();
        string? given = unit?.Trim() is { Length: > 0 } word && word != AnswerUnits.None ? word : null;
        return (plain, question is { Kind: AnswerKind.Value } && given is not null && !AnswerUnits.IsIn(plain) ? given : null);
    }
}
