using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;

namespace Calx.Papers.Tests.Documents;

/// <summary>Papers to print from a browser.</summary>
public sealed class PaperHtmlTests
{
    [Fact]
    public void Text_that_looks_like_markup_stays_text()
    {
        var paper = new Paper("p", "<b>bold</b>", new RunningHeads("\"</style><script>", "\\", "c", null), [new PaperBlock.Paragraph("1 < 2 & 3")]);
        string html = PaperHtml.Of(paper);
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.Contains("<h1>&lt;b&gt;bold&lt;/b&gt;</h1>", html, StringComparison.Ordinal);
        Assert.Contains("1 &lt; 2 &amp; 3", html, StringComparison.Ordinal);
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(html, "</style>"));
    }

    [Fact]
    public void Papers_of_several_looks_have_sheets_of_their_own()
    {
        string html = PaperHtml.Of(SamplePaper.Of(), SamplePaper.Of(new PaperLook(SheetSize.Letter, true, "fff4d6")));
        Assert.Contains("@page p0 { size: A4;", html, StringComparison.Ordinal);
        Assert.Contains("@page p1 { size: letter;", html, StringComparison.Ordinal);
        Assert.Contains("background:#fff4d6", html, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_fetched_from_anywhere()
    {
        string html = PaperHtml.Of(SamplePaper.Of());
        Assert.DoesNotMatch(@"(src|href)\s*=\s*""(?!#)", html);
        Assert.DoesNotMatch(@"url\((?!data:)", html);

        // A page whose policy allows only a style sheet by its hash shows it too.
        Assert.DoesNotContain(" style=", html, StringComparison.Ordinal);
    }
}
