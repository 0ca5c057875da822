namespace Calx.Records;

/// <summary>What every text that is kept obeys, so that both databases give it back as it was: a length, no NUL, and no half of a
/// pair of surrogates.</summary>
internal static class KeptText
{
    /// <summary>Gives the text back.</summary>
    /// <exception cref="ArgumentException">It is blank, too long, or holds what a database cannot keep.</exception>
    public static string Needed(string? text, int longest, string name)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text, name);
        return MayBeEmpty(text, longest, name);
    }

    /// <summary>As <see cref="Needed"/>, for a text that may be empty.</summary>
    public static string MayBeEmpty(string? text, int longest, string name)
    {
        ArgumentNullException.ThrowIfNull(text, name);
        return text.Length <= longest && IsKeepable(text)
            ? text
            : throw new ArgumentException(FormattableString.Invariant($"A text has at most {longest} characters, all of them whole characters."), name);
    }

    /// <summary>As <see cref="Needed"/>, for a text that may be absent.</summary>
    public static string? MayBeAbsent(string? text, int longest, string name) => text is null ? null : MayBeEmpty(text, longest, name);

    private static bool IsKeepable(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '\0' || (char.IsSurrogate(text[i]) && !char.IsSurrogatePair(text, i++)))
            {
                return false;
            }
        }

        return true;
    }
}
