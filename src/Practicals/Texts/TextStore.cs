using System.Collections.Concurrent;
using System.Globalization;
using System.Resources;

namespace Calx.Practicals.Texts;

/// <summary>The texts of one language, topic by topic: each topic is read when it is first asked for, and once. Safe for several
/// threads.</summary>
public sealed class TextStore
{
    private readonly Func<string, Stream?> resources;
    private readonly TextStore? otherwise;
    private readonly ConcurrentDictionary<string, ResourceSet?> topics = new(StringComparer.Ordinal);

    /// <summary>Takes where the texts are.</summary>
    /// <param name="resources">Opens the compiled texts (.resources) of a topic, or gives null where this language has none.</param>
    /// <param name="otherwise">Has what this language lacks; null for the language that has everything.</param>
    public TextStore(Func<string, Stream?> resources, TextStore? otherwise)
    {
        ArgumentNullException.ThrowIfNull(resources);
        (this.resources, this.otherwise) = (resources, otherwise);
    }

    /// <summary>Opens a topic that is embedded in an assembly; null where there is none.</summary>
    /// <param name="beside">A type of the assembly and of the namespace in which it is embedded.</param>
    /// <param name="topic">The topic, with the language's tag behind it where it is not British: <c>PlanTexts.de</c>.</param>
    public static Stream? Embedded(Type beside, string topic)
    {
        ArgumentNullException.ThrowIfNull(beside);
        return beside.Assembly.GetManifestResourceStream($"{beside.Namespace}.{topic}.resources");
    }

    /// <summary>A text.</summary>
    /// <param name="topic">The topic: the name of its file.</param>
    /// <param name="key">What the text is for.</param>
    /// <exception cref="ArgumentException">No language has it.</exception>
    public string Text(string topic, string key) =>
        topics.GetOrAdd(topic, Open)?.GetString(key)
        ?? otherwise?.Text(topic, key)
        ?? throw new ArgumentException($"{topic} has no text '{key}'.", nameof(key));

    /// <summary>A text with what stands in its places, put there as it is.</summary>
    /// <param name="topic">The topic.</param>
    /// <param name="key">What the text is for.</param>
    /// <param name="words">What stands in its places.</param>
    public string Text(string topic, string key, params ReadOnlySpan<string?> words) =>
        string.Format(CultureInfo.InvariantCulture, Text(topic, key), words);

    private ResourceSet? Open(string topic) => resources(topic) is Stream content ? new ResourceSet(content) : null;
}
