using System.Reflection;
using Calx.Papers.Charts;

namespace Calx.Papers.Reports;

/// <summary>The style of a report: quiet, print-like, its font brought along.</summary>
internal static class ReportStyle
{
    private static readonly Lazy<string> Fonts = new(() => Face("CalxSans-Regular", 400) + Face("CalxSans-Bold", 700));

    /// <summary>The whole style sheet.</summary>
    public static string Sheet => Fonts.Value + $":root{{{ChartStyle.Light}}}@media (prefers-color-scheme:dark){{:root{{{ChartStyle.Dark}}}}}"
        + $"@media print{{:root{{{ChartStyle.Light};--paper:#fff}}}}" + Page + Plans + Tables + ChartStyle.Roles + Print;

    private const string Page =
        "*{box-sizing:border-box}html{color-scheme:light dark;font-size:clamp(16px,1.05vw,26px)}"
        + "body{margin:0;background:var(--paper);color:var(--ink);font:1.0625rem/1.5 'Calx Sans',sans-serif;font-variant-numeric:tabular-nums}"
        + "main{max-width:70rem;margin:0 auto;padding:36px clamp(16px,2.2vw,28px) 60px}"
        + "h1{font-size:2.1rem;line-height:1.15;margin:.2em 0 .1em}h2{font-size:1.3rem;margin:2.4em 0 .6em;padding-top:.7em;border-top:2px solid var(--ink)}"
        + "h3{font-size:1.05rem;margin:0 0 .5em}p{margin:.4em 0}.quiet{color:var(--quiet)}"
        + ".invented{display:inline-block;border:2px solid var(--odd);color:var(--odd);font-weight:700;padding:.1em .6em;margin:0 0 .6em}"
        + ".conclusion{font-size:1.3rem;line-height:1.45;max-width:46em;padding:0;margin:1.4em 0 0;list-style:none}"
        + ".conclusion li{margin:0 0 .65em;padding-left:1.1em;border-left:4px solid var(--band)}.conclusion li:first-child,.conclusion li:nth-child(2){border-left-color:var(--mark)}"
        + ".figures{display:grid;grid-template-columns:repeat(auto-fit,minmax(11rem,1fr));gap:0 28px;margin:2em 0 0}"
        + ".figures div{border-top:2px solid var(--mark);padding:.5em 0}.figures dt{color:var(--quiet);font-size:.95rem}.figures dd{margin:0;font-size:1.75rem;font-weight:700;line-height:1.25}"
        + ".charts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(29rem,100%),1fr));gap:34px 40px;align-items:start}"
        + "figure{margin:0;min-width:0}figcaption{color:var(--quiet);font-size:.95rem}.chart{width:100%;min-width:430px;height:auto;display:block}";

    private const string Plans =
        ".verdicts{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(24rem,100%),1fr));gap:0 28px;align-items:start}.verdict{display:flex;flex-direction:column;flex-wrap:wrap;align-items:baseline;gap:0 .6em;border-left:10px solid var(--mark);padding:.1em 0 .1em .6em;margin:1em 0 0}"
        + ".verdict strong{font-size:2.6rem;line-height:1.15}.verdict span{font-size:1.3rem}.verdict.tight{border-left-style:double}.verdict.does-not-fit{border-left-color:var(--odd)}.verdict.does-not-fit strong{color:var(--odd)}"
        + ".chart-alone{max-width:46rem;margin:1.4em 0 0}.charts-wide{display:grid;gap:34px}.charts-wide .chart{min-width:720px}"
        + ".caution{border:2px solid var(--odd);padding:.2em 1em .8em;margin:2.4em 0 0}.caution h2{border:0;margin:.3em 0 .2em;padding:0}.caution strong{color:var(--odd)}"
        + ".plan tbody th{min-width:8.5em}.plan .ways tbody th{min-width:12.5em;max-width:40em}.ways ul{margin:0;padding:0;list-style:none}.ways li{margin:0 0 .3em}.ways small{font-weight:400}.kit tbody th,.expected tbody th,.values tbody th{font-weight:400}";

    private const string Tables =
        ".scroll{overflow-x:auto}table{border-collapse:collapse;width:100%;font-size:.95rem}"
        + "caption{text-align:left;color:var(--quiet);padding:0 0 .5em}caption span{display:inline-block;position:sticky;left:0;max-width:min(100%,calc(100vw - 40px))}"
        + "th,td{text-align:left;vertical-align:top;padding:.4em .9em .4em 0;border-bottom:1px solid var(--rule)}"
        + "thead th{border-bottom:2px solid var(--quiet);vertical-align:bottom}td.n,th.n{text-align:right}td.n{white-space:nowrap}"
        + ":focus-visible{outline:3px solid var(--theory);outline-offset:3px}small{color:var(--quiet);font-size:.85em}"
        + ".groups tbody th{overflow-wrap:anywhere}.groups td{padding-bottom:.3em}.words{min-width:8.5em}.groups tr>:first-child:is(th){position:sticky;left:0;background:var(--paper)}"
        + ".groups tbody tr:has(+tr) td{border-bottom:0}.remarks p{margin:0 0 .2em;max-width:min(46em,calc(100vw - 8em))}"
        + "tbody.odd th,tbody.odd td{color:var(--odd)}"
        + ".causes ul{list-style:none;margin:0;padding:0;min-width:15em}.causes li{position:relative;padding:.15em .4em;margin:0 0 .2em}"
        + ".causes .bar{position:absolute;left:0;top:0;bottom:0;z-index:-1;background:var(--band);border-left:3px solid var(--mark);print-color-adjust:exact;-webkit-print-color-adjust:exact}"
        + ".causes td:last-child{min-width:18em;max-width:34em}.causes tbody th{overflow-wrap:anywhere;min-width:4em}.causes li{isolation:isolate}"
        + "@media (max-width:480px){.plan table{font-size:.85rem}.plan th,.plan td{padding-right:.55em}.plan tbody th,.plan .ways tbody th{min-width:5.5em}}"
        + "@media screen and (max-width:40rem){.causes thead{position:absolute;left:-999rem}.causes tr,.causes td,.causes tbody th{display:block;border:0;padding:.15em 0}.causes tr{border-bottom:1px solid var(--rule);padding:.5em 0}.causes td:last-child{min-width:0}}";

    private const string Print =
        "@page{margin:16mm}@media print{html{font-size:10pt}body{font-size:10.5pt}section{break-before:page}section h2{border:0;margin-top:0}main{padding:0;max-width:none}.conclusion{font-size:12.5pt}"
        + ".charts{grid-template-columns:1fr 1fr;gap:14px 22px}.charts-wide .chart{min-width:0}.chart-alone{max-width:128mm}.verdict strong{font-size:24pt}.verdict span{font-size:12.5pt}.caution{break-inside:avoid}.plan h2{margin-top:1.2em;padding-top:.4em}.plan .scroll:not(:has(.ways)){break-inside:avoid}.plan .caution{margin-top:1.2em}.plan table{font-size:9pt}.plan th,.plan td{padding-top:.22em;padding-bottom:.22em}.plan .conclusion li{margin-bottom:.45em}tr,tbody.odd,.groups tbody,figure,li,.figures div,p{break-inside:avoid}h2,h3,caption{break-after:avoid}thead{display:table-header-group}.scroll{overflow:visible}.chart{min-width:0}"
        + ".groups{font-size:7.8pt}.groups th,.groups td{padding-right:.6em}.words{min-width:8em}.remarks p{max-width:none}.wide{page:wide}}@page wide{size:landscape}";

    private static string Face(string name, int weight)
    {
        using Stream file = Assembly.GetExecutingAssembly().GetManifestResourceStream($"{name}.woff2")
            ?? throw new InvalidOperationException($"The font {name} is not in the program.");
        using var bytes = new MemoryStream();
        file.CopyTo(bytes);
        return $"@font-face{{font-family:'Calx Sans';font-weight:{weight};src:url(data:font/woff2;base64,{Convert.ToBase64String(bytes.GetBuffer(), 0, (int)bytes.Length)}) format('woff2')}}";
    }
}
