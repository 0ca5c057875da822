using System.Net;

namespace Calx.Papers.Reports;

/// <summary>Text that people wrote, made safe for a page.</summary>
internal static class Text
{
    /// <summary>The text with every character that means something to HTML as a reference.</summary>
    public static string Of(string text) => WebUtility.HtmlEncode(text);
}
