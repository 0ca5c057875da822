namespace Calx.Practicals.Texts;

/// <summary>
/// A language that the engine says its sentences in. It is handed to what says them and never taken from the machine: no culture takes
/// part. What a practical says itself stands in its file.
/// </summary>
public sealed class EngineLanguage
{
    private readonly TextStore texts;

    /// <summary>Names a language.</summary>
    /// <param name="tag">Its tag (BCP 47).</param>
    /// <param name="resources">Opens the compiled texts (.resources) of a topic, or gives null where this language has none.</param>
    internal EngineLanguage(string tag, Func<string, Stream?> resources) => (Tag, texts) = (tag, new TextStore(resources, British?.texts));

    /// <summary>British English, in which every text exists.</summary>
    public static EngineLanguage British { get; } = new("en-GB", Embedded);

    /// <summary>Its tag (BCP 47), as pages and documents say it.</summary>
    public string Tag { get; }

    /// <summary>A text; where this language lacks it, the British one.</summary>
    internal string Text(string topic, string key) => texts.Text(topic, key);

    /// <summary>A text with what stands in its places, put there as it is.</summary>
    internal string Text(string topic, string key, params ReadOnlySpan<string?> words) => texts.Text(topic, key, words);

    private static Stream? Embedded(string topic) => TextStore.Embedded(typeof(EngineLanguage), topic);
}
