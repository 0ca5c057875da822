using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Papers.Texts;

namespace Calx.Papers.Documents.Html;

/// <summary>
/// Writes papers as one HTML file to print: pages of A4 or Letter with running heads and page numbers, tables whose headings
/// stand on every page and whose rows are not split. It needs nothing else, not even the fonts of the machine.
/// </summary>
public static class PaperHtml
{
    /// <summary>Writes them, each beginning a new page.</summary>
    /// <param name="papers">The papers, at least one; all in the language of the first.</param>
    /// <returns>A whole HTML document; the same bytes for the same papers.</returns>
    /// <exception cref="ArgumentException">There is no paper.</exception>
    public static string Of(params IReadOnlyList<Paper> papers)
    {
        ArgumentNullException.ThrowIfNull(papers);
        if (papers.Count == 0)
        {
            throw new ArgumentException("At least one paper is expected.", nameof(papers));
        }

        var styles = new StyleBook();
        var body = new StringBuilder();
        for (int i = 0; i < papers.Count; i++)
        {
            Write(body, styles, papers[i], i);
        }

        string title = string.Join(", ", papers.Select(p => p.Title.Text).Distinct());
        PaperLanguage language = papers[0].Look.Language;
        string sheet = StyleFile.Text("paper.css").Replace("{of}", new SharedTexts(language).OfPages, StringComparison.Ordinal);
        return new StringBuilder("<!doctype html>\n")
            .Append(CultureInfo.InvariantCulture, $"<html lang=\"{Text.Of(language.Tag)}\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n")
            .Append(CultureInfo.InvariantCulture, $"<title>{Text.Of(title)}</title>\n<style>{ReportStyle.Faces}:root{{{ChartStyle.Light}}}{ChartStyle.Roles}{sheet}")
            .AppendJoin(string.Empty, papers.Select(PageRule))
            .Append(styles.Rules())
            .Append("</style>\n</head>\n<body>\n").Append(body).Append("</body>\n</html>\n").ToString();
    }

    /// <summary>The sheet and its running heads; each paper's pages have a name of their own, so that papers of several looks
    /// print in one go.</summary>
    private static string PageRule(Paper paper, int number)
    {
        string size = paper.Look.Size switch { SheetSize.Letter => "letter", SheetSize.A3 => "A3", _ => "A4" };
        string tint = paper.Look.Tint is string colour ? $";background:#{colour}" : string.Empty;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"@page p{number} {{ size: {size}; @top-left {{ content: {Quoted(paper.Heads.Left)} }} @top-right {{ content: {Quoted(paper.Heads.Right)} }} @bottom-left {{ content: {Quoted(paper.Heads.Foot)} }} }}\n.p{number} {{ page: p{number}{tint} }}\n");
    }

    private static string ClassOf(PaperLook look) =>
        look.IsWall ? look.Size == SheetSize.A3 ? " wall a3" : " wall" : look.IsLarge ? " large" : look.IsOneStep ? " onestep" : look.IsDense ? " dense" : string.Empty;

    private static string Quoted(string text) =>
        $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal).Replace("<", "\\3c ", StringComparison.Ordinal).ReplaceLineEndings(" ")}\"";

    private static void Write(StringBuilder page, StyleBook styles, Paper paper, int number)
    {
        page.Append(CultureInfo.InvariantCulture, $"<main class=\"paper p{number}{(ClassOf(paper.Look))}\" id=\"{Text.Of(paper.Id)}\">\n");
        if (paper.Heads.Draft is string draft)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p class=\"draft\">{Text.Of(draft)}</p>\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"<h1{(paper.ShowsTitle ? string.Empty : " class=\"screen\"")}>{PhraseHtml.Of(paper.Title)}</h1>\n");
        new BlockHtml(page, styles).Write(paper.Content);
        page.Append("</main>\n");
    }
}
