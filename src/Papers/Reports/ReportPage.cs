using System.Globalization;
using System.Text;
using Calx.Papers.Charts;
using Calx.Papers.Texts;

namespace Calx.Papers.Reports;

/// <summary>What every report has in common: one HTML document with its style and font inside, and charts on it.</summary>
internal static class ReportPage
{
    /// <summary>Begins the document, up to its first heading.</summary>
    /// <param name="page">The document.</param>
    /// <param name="title">What it is of.</param>
    /// <param name="forWhom">For whom, or what kind of report.</param>
    /// <param name="language">The language of the report's own texts.</param>
    /// <param name="kind">Which kind of report, for the style sheet; null for that of a class.</param>
    public static void Begin(StringBuilder page, string title, string forWhom, PaperLanguage language, string? kind = null) => page
        .Append("<!doctype html>\n")
        .Append(CultureInfo.InvariantCulture, $"<html lang=\"{Text.Of(language.Tag)}\">\n<head>\n<meta charset=\"utf-8\">\n")
        .Append("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n")
        .Append(CultureInfo.InvariantCulture, $"<title>{Text.Of(title)}: {Text.Of(forWhom)}</title>\n")
        .Append(CultureInfo.InvariantCulture, $"<style>{ReportStyle.Sheet}</style>\n</head>\n<body>\n<main class=\"report{(kind is null ? string.Empty : $" {kind}")}\">\n");

    /// <summary>Ends the document.</summary>
    public static void End(StringBuilder page) => page.Append("</main>\n</body>\n</html>\n");

    /// <summary>The class and the date on a line.</summary>
    public static string ClassAndDate(ReportHeading heading) =>
        heading.Date is null ? Text.Of(heading.ClassName) : $"{Text.Of(heading.ClassName)} · {Text.Of(heading.Date)}";

    /// <summary>A number that matters, with its name.</summary>
    public static void Figure(StringBuilder page, string name, string value) =>
        page.Append(CultureInfo.InvariantCulture, $"<div><dt>{Text.Of(name)}</dt><dd>{Text.Of(value)}</dd></div>\n");

    /// <summary>Sentences to be read first.</summary>
    public static void Sentences(StringBuilder page, IEnumerable<string> sentences)
    {
        page.Append("<ul class=\"conclusion\">\n");
        foreach (string sentence in sentences)
        {
            page.Append(CultureInfo.InvariantCulture, $"<li>{Text.OfSentence(sentence)}</li>\n");
        }

        page.Append("</ul>\n");
    }

    /// <summary>Charts side by side where there is room, or one under another.</summary>
    public static void Charts(StringBuilder page, IEnumerable<Chart> charts, string layout = "charts")
    {
        page.Append(CultureInfo.InvariantCulture, $"<div class=\"{layout}\">\n");
        foreach (Chart chart in charts)
        {
            page.Append(CultureInfo.InvariantCulture, $"<figure>\n<h3>{Text.Of(chart.Heading)}</h3>\n<div class=\"scroll\" tabindex=\"0\" role=\"group\" aria-label=\"{Text.Of(chart.Heading)}\">{chart.Inline}</div>\n");
            if (chart.Caption.Length > 0)
            {
                page.Append(CultureInfo.InvariantCulture, $"<figcaption>{Text.OfSentence(chart.Caption)}</figcaption>\n");
            }

            page.Append("</figure>\n");
        }

        page.Append("</div>\n");
    }
}
