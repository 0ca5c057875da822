using Calx.Papers.Charts;

namespace Calx.Papers.Reports;

/// <summary>The style of a report: quiet, print-like. A whole file has all of it inside, with its font; a page of an app takes
/// <see cref="ScreenSheet"/> as a file beside it and puts the report's parts into an element of class <c>report</c> (a plan's
/// into <c>report plan</c>).</summary>
public static class ReportStyle
{
    private static readonly Lazy<string> Parts = new(() => StyleFile.Text("report.css"));
    private static readonly Lazy<string> Whole = new(() => Faces + ScreenSheet + StyleFile.Text("page.css"));

    /// <summary>Colours, charts and parts of reports, for light, dark and print, without any font: text is set in
    /// <c>'Calx Sans'</c> where the page brings it (see <see cref="ReportFonts"/>), else in a plain one. The same text every
    /// time; it asks for no other file.</summary>
    public static string ScreenSheet => $":root{{{ChartStyle.Light}}}\n@media (prefers-color-scheme:dark){{:root{{{ChartStyle.Dark}}}}}\n"
        + $"@media print{{:root{{{ChartStyle.Light};--paper:#fff}}}}\n{Parts.Value}{ChartStyle.Roles}\n";

    /// <summary>The style sheet of a whole file, its font inside.</summary>
    internal static string Sheet => Whole.Value;

    /// <summary>The font, inside a whole file.</summary>
    internal static string Faces { get; } = Face(ReportFonts.Regular(), 400) + Face(ReportFonts.Bold(), 700);

    private static string Face(Stream font, int weight)
    {
        using (font)
        using (var bytes = new MemoryStream())
        {
            font.CopyTo(bytes);
            string text = Convert.ToBase64String(bytes.GetBuffer(), 0, (int)bytes.Length);
            return $"@font-face{{font-family:'Calx Sans';font-weight:{weight};src:url(data:font/woff2;base64,{text}) format('woff2')}}\n";
        }
    }
}
