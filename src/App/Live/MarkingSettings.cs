using System.Buffers;
using System.Text;
using System.Text.Json;
using Calx.App.Input;
using Calx.Chemistry.Elements;
using Calx.Practicals.Marking;
using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>
/// How the answers of a lesson are marked, and when students hear of it. Kept as happenings of the whole lesson in its journal, so that
/// what held when stays to be seen; the last one holds.
/// </summary>
/// <param name="Asked">Ids of the values, judgements and questions in words that are asked; null for all.</param>
/// <param name="Weights">Atomic weights that may be used: <c>school</c> for all rounded tables, or the name of a set.</param>
/// <param name="EarlyRounding">What becomes of a value rounded too far on the way.</param>
/// <param name="Figures">Whether a mark a paper is lost for figures.</param>
/// <param name="Units">What becomes of units.</param>
/// <param name="Feedback">When students see what is said of their answers.</param>
/// <param name="IsOpened">Whether the teacher has opened feedback that comes later.</param>
public sealed record MarkingSettings(
    IReadOnlyList<string>? Asked, string Weights, EarlyRounding EarlyRounding, bool Figures, UnitsRule Units, FeedbackTime Feedback, bool IsOpened)
{
    private static readonly JournalCell Cell = new(0, 1, Acts.Marking);
    private static readonly JournalCell Opening = new(0, 1, Acts.ShowFeedback);

    /// <summary>Of a lesson of which nothing was set: all answers are asked, early rounding is accepted, feedback comes later.</summary>
    public static MarkingSettings Usual { get; } =
        new(null, AtomicWeightChoice.School, EarlyRounding.Accept, Figures: true, UnitsRule.WrongOnes, FeedbackTime.Later, IsOpened: false);

    /// <summary>Those of a lesson. An assessed lesson gives no feedback at once, whatever was set: there it comes later.</summary>
    public static MarkingSettings Of(LessonView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        MarkingSettings set = Said(view, Cell) is string text ? Read(text) : Usual;
        return set with
        {
            Feedback = set.Feedback == FeedbackTime.AtOnce && view.Room.Lesson.Settings.Assessed ? FeedbackTime.Later : set.Feedback,
            IsOpened = Said(view, Opening) == LessonState.Yes,
        };
    }

    /// <summary>Whether students see now what is said of their answers.</summary>
    public bool ShowsFeedback => Feedback == FeedbackTime.AtOnce || (Feedback == FeedbackTime.Later && IsOpened);

    /// <summary>How strictly is marked.</summary>
    public MarkingPolicy Policy => new(EarlyRounding, Figures ? 1 : 0, Units == UnitsRule.Free ? 0 : 1, Units == UnitsRule.Asked);

    /// <summary>The sets of atomic weights that may be used.</summary>
    public IReadOnlyList<AtomicWeights> Sets => AtomicWeightChoice.Named(Weights) ?? AtomicWeightChoice.Named(AtomicWeightChoice.School)!;

    /// <summary>Whether something is asked.</summary>
    /// <param name="id">Id of a value, a judgement or a question in words.</param>
    public bool Asks(string id) => Asked is null || Asked.Contains(id, StringComparer.Ordinal);

    /// <summary>The entry of the journal that keeps them; whether feedback is opened is not in it.</summary>
    public JournalEntry Entry(EntryId id, DateTimeOffset at) => new(id, Cell, new EntryContent.Happening(Text()), EntryWriter.Teacher.Device, at);

    /// <summary>The entry that opens feedback to students, or closes it again.</summary>
    public static JournalEntry OpeningEntry(EntryId id, bool opens, DateTimeOffset at) =>
        new(id, Opening, new EntryContent.Happening(opens ? LessonState.Yes : "no"), EntryWriter.Teacher.Device, at);

    /// <summary>Reads the text of an entry. What cannot be read there, as from a program that knows more, is as usual.</summary>
    internal static MarkingSettings Read(string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
            JsonElement json = document.RootElement;
            string? Word(string name) => json.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;
            return Usual with
            {
                Asked = json.TryGetProperty("asked", out JsonElement asked) && asked.ValueKind == JsonValueKind.Array
                    ? [.. asked.EnumerateArray().Where(a => a.ValueKind == JsonValueKind.String).Select(a => a.GetString()!)] : null,
                Weights = Word("weights") is string weights && AtomicWeightChoice.Named(weights) is not null ? weights : Usual.Weights,
                EarlyRounding = Word("earlyRounding") == "one-off" ? EarlyRounding.OneMarkOff : EarlyRounding.Accept,
                Figures = !json.TryGetProperty("figures", out JsonElement figures) || figures.ValueKind != JsonValueKind.False,
                Units = Word("units") switch { "asked" => UnitsRule.Asked, "free" => UnitsRule.Free, _ => UnitsRule.WrongOnes },
                Feedback = Word("feedback") switch { "at-once" => FeedbackTime.AtOnce, "never" => FeedbackTime.Never, _ => FeedbackTime.Later },
            };
        }
        catch (Exception other) when (other is JsonException or InvalidOperationException)
        {
            return Usual;
        }
    }

    private string Text()
    {
        var bytes = new ArrayBufferWriter<byte>(512);
        using (var json = new Utf8JsonWriter(bytes))
        {
            json.WriteStartObject();
            if (Asked is not null)
            {
                json.WriteStartArray("asked");
                foreach (string id in Asked)
                {
                    json.WriteStringValue(id);
                }

                json.WriteEndArray();
            }

            json.WriteString("weights", Weights);
            json.WriteString("earlyRounding", EarlyRounding == EarlyRounding.OneMarkOff ? "one-off" : "accept");
            json.WriteBoolean("figures", Figures);
            json.WriteString("units", Units switch { UnitsRule.Asked => "asked", UnitsRule.Free => "free", _ => "wrong-ones" });
            json.WriteString("feedback", Feedback switch { FeedbackTime.AtOnce => "at-once", FeedbackTime.Never => "never", _ => "later" });
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }

    private static string? Said(LessonView view, JournalCell cell) =>
        (view.Table.FirstOrDefault(c => c.Cell == cell)?.Latest.Entry.Content as EntryContent.Happening)?.Text;
}
