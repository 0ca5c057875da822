using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Records.Journal;

namespace Calx.Records.Storage;

/// <summary>What was typed, taken apart into texts, and back: the same parts in tables and archives.</summary>
internal sealed record ContentParts(string Kind, string Value, string? Unit, string? Balance, string? Vessel, string? OutOf, string? Comment)
{
    public const string Reading = "reading";
    public const string Observation = "observation";
    public const string Answer = "answer";
    public const string Mark = "mark";
    public const string Note = "note";
    public const string Happening = "happening";

    public static ContentParts Of(EntryContent content) => content switch
    {
        EntryContent.Reading r => new(Reading, r.Written.ToString(), r.Unit, r.Balance, r.Vessel, null, null),
        EntryContent.Observation o => new(Observation, o.Seen ? "true" : "false", null, null, null, null, null),
        EntryContent.Answer a => new(Answer, a.Text, a.Unit, null, null, null, null),
        EntryContent.Mark m => new(Mark, Digits(m.Marks), null, null, null, Digits(m.Of), m.Comment),
        EntryContent.Note n => new(Note, n.Text, null, null, null, null, null),
        EntryContent.Happening h => new(Happening, h.Text, null, null, null, null, null),
        _ => throw new ArgumentException($"{content.GetType().Name} is not known.", nameof(content)),
    };

    /// <exception cref="FormatException">The parts are of no content.</exception>
    public EntryContent Content() => Kind switch
    {
        Reading => new EntryContent.Reading(new WrittenNumber(Number(Value)), Unit ?? throw Wrong("unit"), Balance, Vessel),
        Observation => new EntryContent.Observation(Value switch { "true" => true, "false" => false, _ => throw Wrong("value") }),
        Answer => new EntryContent.Answer(Value, Unit),
        Mark => new EntryContent.Mark(Number(Value), Number(OutOf), Comment),
        Note => new EntryContent.Note(Value),
        Happening => new EntryContent.Happening(Value),
        _ => throw Wrong("kind"),
    };

    private static string Digits(decimal number) => number.ToString(CultureInfo.InvariantCulture);

    private decimal Number(string? text) => WrittenNumber.TryParse(text, out WrittenNumber number) ? number.Value : throw Wrong("number");

    private FormatException Wrong(string part) => new($"An entry of the kind '{Kind}' has a {part} that cannot be read.");
}
