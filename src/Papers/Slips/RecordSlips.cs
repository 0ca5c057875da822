using System.Globalization;
using System.Text;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Slips;

/// <summary>
/// Slips on which groups without a device write their readings, two to a page of A4 or Letter: a box for every digit that the
/// balance shows, the balance and the vessel, the minutes since the flame was put out, what was seen; the cautions above. What
/// is written on them is typed in later. One HTML file that needs nothing else.
/// </summary>
public static class RecordSlips
{
    /// <summary>Writes the slips.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="settings">For which groups and balances.</param>
    /// <param name="heading">Which class and date stand on them, and in which language they are.</param>
    /// <param name="draft">Whether the practical still waits for its check: every slip then says so.</param>
    /// <returns>A whole HTML document, a slip a group and trial; the same bytes for the same arguments.</returns>
    public static string Html(Practical practical, SlipSettings settings, ReportHeading heading, bool draft)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentNullException.ThrowIfNull(settings);
        ArgumentNullException.ThrowIfNull(heading);
        RecordSlipTexts texts = new(heading.Language);
        var page = new StringBuilder("<!doctype html>\n")
            .Append(CultureInfo.InvariantCulture, $"<html lang=\"{Text.Of(heading.Language.Tag)}\">\n<head>\n<meta charset=\"utf-8\">\n")
            .Append("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">\n")
            .Append(CultureInfo.InvariantCulture, $"<title>{Text.Of(texts.Title(practical.Title))}</title>\n")
            .Append(CultureInfo.InvariantCulture, $"<style>{ReportStyle.Faces}{StyleFile.Text("slips.css")}</style>\n</head>\n<body>\n<main>\n");
        var slip = new SlipParts(practical, settings, heading.Language);
        for (int group = 1; group <= settings.Groups; group++)
        {
            for (int trial = 1; trial <= settings.Trials; trial++)
            {
                Write(page, slip, heading, draft, settings.Trials > 1 ? (group, trial) : (group, null));
            }
        }

        return page.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static void Write(StringBuilder page, SlipParts slip, ReportHeading heading, bool draft, (int Group, int? Trial) of)
    {
        page.Append("<article class=\"slip\">\n");
        if (draft)
        {
            page.Append(CultureInfo.InvariantCulture, $"<p class=\"draft\">{Text.Of(new SharedTexts(heading.Language).Draft)}</p>\n");
        }

        RecordSlipTexts texts = new(heading.Language);
        string trial = of.Trial is int number ? string.Create(CultureInfo.InvariantCulture, $" <small>{Text.Of(texts.Trial)}</small> {number}") : string.Empty;
        page.Append(CultureInfo.InvariantCulture, $"<header>\n<h2><small>{Text.Of(texts.Group)}</small> {of.Group}{trial}</h2>\n")
            .Append(CultureInfo.InvariantCulture, $"<p>{slip.Title}<br/>{ReportPage.ClassAndDate(heading)}</p>\n")
            .Append(CultureInfo.InvariantCulture, $"<p class=\"field\"><small>{Text.Of(texts.BalanceLetter)}</small><span class=\"blank\"></span></p>\n")
            .Append(CultureInfo.InvariantCulture, $"<p class=\"field\"><small>{Text.Of(texts.VesselNumber)}</small><span class=\"blank\"></span></p>\n</header>\n")
            .Append(slip.Cautions)
            .Append("<div class=\"work\">\n<div>\n").Append(slip.Readings)
            .Append("</div>\n<div>\n").Append(slip.Observations).Append("</div>\n</div>\n</article>\n");
    }
}
