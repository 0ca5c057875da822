using System.Collections.Concurrent;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Texts;

/// <summary>
/// A language that the engine says its sentences in. It is handed to what says them and never taken from the machine: no culture takes
/// part. What a practical says itself stands in its file.
/// </summary>
public sealed class EngineLanguage
{
    private readonly TextStore texts;
    private readonly Func<string, Stream?> resources;
    private readonly EngineLanguage plain;
    private readonly ConcurrentDictionary<string, EngineLanguage> manners = new(StringComparer.Ordinal);

    /// <summary>Names a language.</summary>
    /// <param name="tag">Its tag (BCP 47).</param>
    /// <param name="resources">Opens the compiled texts (.resources) of a topic, or gives null where this language has none.</param>
    internal EngineLanguage(string tag, Func<string, Stream?> resources) =>
        (Tag, this.resources, texts, plain) = (tag, resources, new TextStore(resources, British?.texts), this);

    private EngineLanguage(EngineLanguage before, string manner) =>
        (Tag, resources, texts, plain) = (before.Tag, before.resources, new TextStore(topic => before.resources($"{topic}.{manner}"), before.texts), before.plain);

    /// <summary>British English, in which every text exists.</summary>
    public static EngineLanguage British { get; } = new("en-GB", Embedded);

    /// <summary>Its tag (BCP 47), as pages and documents say it.</summary>
    public string Tag { get; }

    /// <summary>The same language in the words that fit a practical (<see cref="Manners"/>).</summary>
    public EngineLanguage For(Practical practical) =>
        Manners.Of(practical).Aggregate(plain, (said, manner) => said.manners.GetOrAdd(manner, name => new EngineLanguage(said, name)));

    /// <summary>A text; where this language lacks it, the British one.</summary>
    internal string Text(string topic, string key) => texts.Text(topic, key);

    /// <summary>A text with what stands in its places, put there as it is.</summary>
    internal string Text(string topic, string key, params ReadOnlySpan<string?> words) => texts.Text(topic, key, words);

    private static Stream? Embedded(string topic) => TextStore.Embedded(typeof(EngineLanguage), topic);
}
