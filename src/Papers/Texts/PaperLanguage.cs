using System.Collections.Concurrent;
using Calx.Practicals.Definition;
using Calx.Practicals.Texts;

namespace Calx.Papers.Texts;

/// <summary>
/// A language that papers are written in: their own texts, topic by topic, and the language in which the engine says what stands on them.
/// The practical's sentences are not among them. It is passed to what writes a paper and never taken from the machine: no culture takes
/// part.
/// </summary>
public sealed class PaperLanguage
{
    private readonly TextStore texts;
    private readonly Func<string, Stream?> resources;
    private readonly PaperLanguage plain;
    private readonly ConcurrentDictionary<string, PaperLanguage> manners = new(StringComparer.Ordinal);

    /// <summary>Names a language.</summary>
    /// <param name="tag">Its tag (BCP 47), as pages and documents say it: <c>en-GB</c>.</param>
    /// <param name="resources">Opens the compiled texts (.resources) of a topic, or gives null where this language has none.</param>
    /// <param name="engine">The engine's language; British where nothing else is said.</param>
    internal PaperLanguage(string tag, Func<string, Stream?> resources, EngineLanguage? engine = null) =>
        (Tag, this.resources, texts, plain, Engine) = (tag, resources, new TextStore(resources, BritishEnglish?.texts), this, engine ?? EngineLanguage.British);

    private PaperLanguage(PaperLanguage before, string manner) => (Tag, resources, texts, plain, Engine) =
        (before.Tag, before.resources, new TextStore(topic => before.resources($"{topic}.{manner}"), before.texts), before.plain, before.Engine);

    /// <summary>The language that every text exists in.</summary>
    public static PaperLanguage BritishEnglish { get; } = new("en-GB", Embedded);

    /// <summary>Its tag (BCP 47).</summary>
    public string Tag { get; }

    /// <summary>The language in which the engine is asked for what papers say of numbers.</summary>
    public EngineLanguage Engine { get; }

    /// <summary>The same language in the words that fit a practical (<see cref="Manners"/>).</summary>
    public PaperLanguage For(Practical practical) =>
        Manners.Of(practical).Aggregate(plain, (said, manner) => said.manners.GetOrAdd(manner, name => new PaperLanguage(said, name)));

    /// <summary>A text; where this language lacks it, the British English one.</summary>
    /// <param name="topic">The topic: the name of its file.</param>
    /// <param name="key">What the text is for.</param>
    internal string Text(string topic, string key) => texts.Text(topic, key);

    /// <summary>A text with what stands in its places, put there as it is.</summary>
    internal string Text(string topic, string key, params ReadOnlySpan<string?> words) => texts.Text(topic, key, words);

    private static Stream? Embedded(string topic) => TextStore.Embedded(typeof(PaperLanguage), topic);
}
