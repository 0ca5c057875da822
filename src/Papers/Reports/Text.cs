using System.Net;

namespace Calx.Papers.Reports;

/// <summary>Text made safe for a page.</summary>
internal static class Text
{
    /// <summary>The text with every character that means something to HTML as a reference.</summary>
    public static string Of(string text) => WebUtility.HtmlEncode(text);

    /// <summary>With a capital at the beginning; no markup is made of it. A symbol, one letter by itself, stays as it is: <c>x in CuSO4·xH2O</c>.</summary>
    public static string Capital(string text) =>
        text.Length == 0 || (text[0] != 'a' && (text.Length == 1 || text[1] == ' ')) ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>A sentence, in which a number keeps its unit on the same line.</summary>
    public static string OfSentence(string sentence) => Of(Together(sentence));

    /// <summary>The same before it is put on a page: what belongs together stays on a line.</summary>
    public static string Together(string sentence) => sentence
        .Replace(" %", "\u00a0%", StringComparison.Ordinal)
        .Replace(" ± ", "\u00a0±\u00a0", StringComparison.Ordinal)
        .Replace(" g,", "\u00a0g,", StringComparison.Ordinal)
        .Replace(" g)", "\u00a0g)", StringComparison.Ordinal)
        .Replace(" g.", "\u00a0g.", StringComparison.Ordinal)
        .Replace("p = ", "p\u00a0=\u00a0", StringComparison.Ordinal)
        .Replace("p < ", "p\u00a0<\u00a0", StringComparison.Ordinal);

    /// <summary>A text of our own between two tags: only what HTML takes for markup there is a reference.</summary>
    public static string Own(string text) => text
        .Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
}
