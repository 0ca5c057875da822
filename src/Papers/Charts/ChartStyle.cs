namespace Calx.Papers.Charts;

/// <summary>How the roles of a chart are drawn: colours as custom properties of CSS, and rules that use them. The page sets the
/// colours; a chart alone takes the light ones.</summary>
public static class ChartStyle
{
    /// <summary>The colours by role, for paper: every pair used for text has a contrast of 4.5 or more (WCAG 2.2, 1.4.3).</summary>
    public const string Light = "--paper:#fffdf8;--ink:#22302b;--quiet:#57645e;--rule:#d9d8cf;--mark:#1d5c4b;--band:#dfeae3;--odd:#a33a12;--theory:#4a3f8f";

    /// <summary>The same for a dark room.</summary>
    public const string Dark = "--paper:#141a18;--ink:#e9ece6;--quiet:#a9b4ad;--rule:#39443f;--mark:#7fd0b4;--band:#22392f;--odd:#f0956b;--theory:#b9aef5";

    /// <summary>Keeps text legible over lines, where a program knows in which order to paint.</summary>
    private const string Halo = "paint-order:stroke;stroke:var(--paper);stroke-width:3px;stroke-linejoin:round";

    /// <summary>Shapes and text by role.</summary>
    public const string Roles =
        ".chart text{font-family:'Calx Sans',sans-serif;font-size:15px;fill:var(--ink);font-variant-numeric:tabular-nums;"
        + Halo + "}"
        + ".chart .quiet,.chart .tick{fill:var(--quiet)}.chart .tick{font-size:14px}.chart .axis-name{font-size:15px;fill:var(--quiet)}"
        + ".chart .odd-label{fill:var(--odd);font-weight:700}.chart .theory-label{fill:var(--theory);font-weight:700}.chart .mark-label{fill:var(--mark);font-weight:700}"
        + ".chart .axis{stroke:var(--quiet);stroke-width:1.2}.chart .grid{stroke:var(--rule);stroke-width:1}"
        + ".chart .bar{fill:var(--mark)}.chart .bar-rest{fill:var(--rule)}.chart .band{fill:var(--band)}"
        + ".chart .spread{stroke:var(--mark);stroke-width:1.6}.chart .odd-spread{stroke:var(--odd);stroke-width:1.6;stroke-dasharray:3 2}"
        + ".chart .dot,.chart .on{fill:var(--mark)}.chart .odd-on{fill:var(--odd)}.chart .odd-dot{fill:var(--paper);stroke:var(--odd);stroke-width:2.2}"
        + ".chart .theory{stroke:var(--theory);stroke-width:2;stroke-dasharray:8 4;fill:none}.chart .fit{stroke:var(--mark);stroke-width:2;fill:none}"
        + ".chart .path{stroke:var(--mark);stroke-width:1.6;fill:none}.chart .odd-path{stroke:var(--odd);stroke-width:1.8;stroke-dasharray:5 3;fill:none}"
        + Lesson + Amounts + Drawings;

    /// <summary>The bars of a lesson differ by shape first: toothed flames, falling wedges of cooling, tall weighings, low
    /// work, thin hollow waiting.</summary>
    private const string Lesson =
        ".chart .weighing{fill:var(--ink)}.chart .flame{fill:var(--odd)}.chart .cooling{fill:var(--paper);stroke:var(--theory);stroke-width:1.3}"
        + ".chart .work{fill:var(--band);stroke:var(--mark);stroke-width:1.1}.chart .waiting{fill:var(--paper);stroke:var(--quiet);stroke-width:1}"
        + ".chart .leader{stroke:var(--quiet);stroke-width:1}.chart .critical{stroke:var(--ink);stroke-width:3.4;stroke-linecap:round}.chart .hand-over{fill:none;stroke:var(--ink);stroke-width:1.3}"
        + ".chart .bell{stroke:var(--ink);stroke-width:6}.chart .bell-core{stroke:var(--paper);stroke-width:2.4}.chart .gas-off{stroke:var(--odd);stroke-width:2;stroke-dasharray:8 4}"
        + ".chart .last-heating{stroke:var(--theory);stroke-width:2.4;stroke-dasharray:2 4}.chart .bell-label,.chart .critical-label{font-weight:700}"
        + ".chart .gas-off-label{fill:var(--odd);font-weight:700}.chart .last-heating-label{fill:var(--theory);font-weight:700}";

    /// <summary>Lines of a conclusion: the class's whole, one group's broken, the wrong one dotted.</summary>
    private const string Amounts =
        ".chart .line-0{--line:var(--mark)}.chart .line-1{--line:var(--theory)}.chart .line-2{--line:var(--ink)}.chart .line-3{--line:var(--quiet)}"
        + ".chart polyline.of-class{fill:none;stroke:var(--line);stroke-width:2.4}.chart polyline.of-group{fill:none;stroke:var(--line);stroke-width:1.5;stroke-dasharray:6 4}"
        + ".chart .point{fill:var(--line)}.chart text.of-class,.chart text.of-group{fill:var(--line)}.chart text.of-class{font-weight:700}"
        + ".chart .wrong{fill:none;stroke:var(--odd);stroke-width:2;stroke-dasharray:2 3}"
        + ".chart .planned{stroke:var(--ink);stroke-width:2.2}.chart .smallest,.chart .best{stroke:var(--quiet);stroke-width:1.6;stroke-dasharray:8 4}.chart .best{stroke-dasharray:2 3}"
        + ".chart .planned-label{font-weight:700}";

    /// <summary>Apparatus in section: lines of two widths in ink, even where they join; nothing but paper fills a part.</summary>
    private const string Drawings =
        ".chart .wall,.chart .body,.chart .fine{fill:none;stroke:var(--ink);stroke-width:2;stroke-linejoin:round;stroke-linecap:round}"
        + ".chart .body{fill:var(--paper)}.chart .fine{stroke-width:1.2}.chart .grain{fill:var(--ink)}.chart .ruled{stroke:var(--ink);stroke-width:.9}";

    /// <summary>The rules with colours in place of their names, on white.</summary>
    internal static string Printed { get; } = WithColours(Roles, $"{Light};--paper:#ffffff");

    /// <summary>The same for programs that would paint the halo over its text: without it.</summary>
    internal static string Plain { get; } = WithColours(Roles.Replace(Halo, string.Empty, StringComparison.Ordinal), $"{Light};--paper:#ffffff");

    /// <summary>Puts each colour in by its value; what has none here keeps its name.</summary>
    private static string WithColours(string rules, string colours)
    {
        foreach (string[] colour in colours.Split(';').Reverse().Select(c => c.Split(':')))
        {
            rules = rules.Replace($"var({colour[0]})", colour[1], StringComparison.Ordinal);
        }

        return rules;
    }

    /// <summary>All that a chart needs as a file of its own.</summary>
    internal static string Alone => $"svg{{{Light};background:var(--paper)}}{Roles}";
}
