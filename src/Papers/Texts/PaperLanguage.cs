using System.Collections.Concurrent;
using System.Globalization;
using System.Reflection;
using System.Resources;

namespace Calx.Papers.Texts;

/// <summary>
/// A language that papers are written in: their own texts, topic by topic. The practical's sentences and the engine's are not among
/// them. It is passed to what writes a paper and never taken from the machine: no culture takes part.
/// </summary>
public sealed class PaperLanguage
{
    private readonly Func<string, Stream?> resources;
    private readonly ConcurrentDictionary<string, ResourceSet?> topics = new(StringComparer.Ordinal);

    /// <summary>Names a language.</summary>
    /// <param name="tag">Its tag (BCP 47), as pages and documents say it: <c>en-GB</c>.</param>
    /// <param name="resources">Opens the compiled texts (.resources) of a topic, or gives null where this language has none.</param>
    internal PaperLanguage(string tag, Func<string, Stream?> resources) => (Tag, this.resources) = (tag, resources);

    /// <summary>The language that every text exists in.</summary>
    public static PaperLanguage BritishEnglish { get; } = new("en-GB", Embedded);

    /// <summary>Its tag (BCP 47).</summary>
    public string Tag { get; }

    /// <summary>A text; where this language lacks it, the British English one.</summary>
    /// <param name="topic">The topic: the name of its file.</param>
    /// <param name="key">What the text is for.</param>
    internal string Text(string topic, string key) =>
        topics.GetOrAdd(topic, Open)?.GetString(key)
        ?? (this == BritishEnglish ? throw new ArgumentException($"{topic} has no text '{key}'.", nameof(key)) : BritishEnglish.Text(topic, key));

    /// <summary>A text with what stands in its places, put there as it is.</summary>
    internal string Text(string topic, string key, params ReadOnlySpan<string?> words) =>
        string.Format(CultureInfo.InvariantCulture, Text(topic, key), words);

    private ResourceSet? Open(string topic) => resources(topic) is Stream content ? new ResourceSet(content) : null;

    private static Stream? Embedded(string topic) =>
        Assembly.GetExecutingAssembly().GetManifestResourceStream($"{typeof(PaperLanguage).Namespace}.{topic}.resources");
}
