namespace Calx.Practicals.Definition.Source;

/// <content>Texts, words and switches.</content>
internal sealed partial class FileMap
{
    /// <summary>Longer texts do not fit a sheet, a heading or a line of a report.</summary>
    public const int LongestText = 500;

    /// <summary>A text that must be there.</summary>
    public string Text(string key)
    {
        int before = faults.Spoiling;
        string text = Need(key, "a text") is FileNode value ? TextOf(value)?.Text ?? "?" : "?";
        faults.Forgive(before);
        return text;
    }

    /// <summary>A text that may be missing.</summary>
    public string? OptionalText(string key) => Find(key) is FileNode value ? TextOf(value)?.Text : null;

    /// <summary>The entries of a list that may be missing.</summary>
    /// <param name="key">The key.</param>
    /// <param name="described">What an entry is.</param>
    public IReadOnlyList<FileNode> Nodes(string key, string described) => Items(Find(key), described);

    /// <summary>A list of texts that may be missing.</summary>
    public IReadOnlyList<string> Texts(string key) =>
        [.. Items(Find(key), "a text").Select(TextOf).OfType<ScalarNode>().Select(n => n.Text)];

    /// <summary>True or false; false where the key is missing.</summary>
    public bool Flag(string key)
    {
        FileNode? value = Find(key);
        if (value is ScalarNode { Plain: true, Text: "true" or "false" } flag)
        {
            return flag.Text == "true";
        }

        if (value is not (null or UnreadableNode))
        {
            faults.Add(value.At, $"{Said(value)}, where true or false was expected");
        }

        return false;
    }

    /// <summary>One of some words, or the fallback where the key is missing; missing is noted without a fallback.</summary>
    public T Word<T>(string key, IReadOnlyDictionary<string, T> words, T? fallback = null)
        where T : struct
    {
        FileNode? value = fallback is null ? Need(key, $"one of {string.Join(", ", words.Keys)}") : Find(key);
        ScalarNode? text = value is null ? null : TextOf(value);
        if (text is not null && words.TryGetValue(text.Text, out T found))
        {
            return found;
        }

        if (text is not null)
        {
            faults.Add(text.At, $"'{Short(text.Text)}' is not understood; {NearestWord.Choice(text.Text, words.Keys)}");
        }

        return fallback ?? default;
    }

    private ScalarNode? TextOf(FileNode value)
    {
        string? reason = value switch
        {
            UnreadableNode => null,
            ScalarNode scalar => ReasonAgainst(scalar),
            _ => $"{Said(value)}, where a text was expected",
        };
        if (reason is not null)
        {
            faults.Add(value.At, reason);
        }

        return reason is null ? value as ScalarNode : null;
    }

    private static string? ReasonAgainst(ScalarNode scalar) => scalar switch
    {
        { IsNothing: true } => "nothing stands here, where a text was expected",
        { Plain: true } when FileNumber.Is(scalar) || scalar.Text is "true" or "false"
            => $"{scalar.Text} is not a text; put it in quotes, '{scalar.Text}', if it is meant as one",
        _ when string.IsNullOrWhiteSpace(scalar.Text) => "the text is blank",
        { Text.Length: > LongestText } => $"the text is longer than {LongestText} characters",
        _ => null,
    };
}
