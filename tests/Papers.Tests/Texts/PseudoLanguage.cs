using System.Resources;
using System.Text.RegularExpressions;
using Calx.Papers.Texts;
using Calx.Practicals.Texts;

namespace Calx.Papers.Tests.Texts;

/// <summary>A language that nobody speaks: every English text with each letter changed and half as long again, compiled as a second
/// language's texts would be.</summary>
internal static partial class PseudoLanguage
{
    private const string Plain = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private const string Changed = "àƀçđéƒğĥîĵķļɱñöþǫŕšţûṽŵẋýžÀƁÇĐÉƑĞĤÎĴĶĻḾÑÖÞǪŔŠŢÛṼŴẊÝŽ";

    /// <summary>The language; its tag is the one that Unicode keeps for such. The engine speaks it too.</summary>
    /// <param name="without">A key that it lacks, as 'Topic.Key'.</param>
    public static PaperLanguage Of(string? without = null) => new("en-XA", topic => Compiled(TextTopic.Papers, topic, without), Engine);

    /// <summary>The engine's.</summary>
    public static EngineLanguage Engine { get; } = EngineWithout(null);

    /// <summary>The engine's, which lacks a key.</summary>
    /// <param name="without">As 'Topic.Key'.</param>
    public static EngineLanguage EngineWithout(string? without) => new("en-XA", topic => Compiled(TextTopic.Engine, topic, without));

    /// <summary>A text in it; what stands in its places is left.</summary>
    public static string Spoken(string text)
    {
        string changed = Places().Replace(text, m => m.Groups["place"].Success ? m.Value : string.Concat(m.Value.Select(Letter)));
        return $"{changed}{new string('·', text.Length / 2)}";
    }

    private static char Letter(char letter) => Plain.IndexOf(letter, StringComparison.Ordinal) is >= 0 and int at ? Changed[at] : letter;

    private static MemoryStream? Compiled(string library, string topic, string? without)
    {
        if (TextTopic.All.Concat(TextTopic.InManner).SingleOrDefault(t => t.Library == library && t.Name == topic) is not TextTopic found)
        {
            return null;
        }

        using var bytes = new MemoryStream();
        using (var writer = new ResourceWriter(bytes))
        {
            foreach (KeptText text in found.Texts.Where(t => $"{topic}.{t.Key}" != without))
            {
                writer.AddResource(text.Key, Spoken(text.Value));
            }
        }

        return new MemoryStream(bytes.ToArray());
    }

    [GeneratedRegex(@"(?<place>\{\d+\})|[^{}]+", RegexOptions.CultureInvariant)]
    private static partial Regex Places();
}
