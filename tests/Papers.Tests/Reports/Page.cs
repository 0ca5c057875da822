using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Calx.Papers.Tests.Reports;

/// <summary>HTML read as a browser reads it.</summary>
internal static class Page
{
    /// <summary>A whole document, or parts placed in one.</summary>
    public static IDocument Of(string html) => new HtmlParser().ParseDocument(html);

    /// <summary>A page whose rules allow no style and no script but from its own files loses nothing of this.</summary>
    public static void AssertStrict(IDocument page)
    {
        foreach (IElement element in page.All)
        {
            Assert.NotEqual("script", element.LocalName);
            Assert.DoesNotContain(element.Attributes, a => a.Name == "style" || a.Name.StartsWith("on", StringComparison.Ordinal));
        }
    }

    /// <summary>Text as it is read, with plain spaces.</summary>
    public static string TextOf(IDocument page) => page.Body!.TextContent.Replace('\u00a0', ' ');
}
