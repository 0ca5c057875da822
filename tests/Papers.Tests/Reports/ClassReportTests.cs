using System.Text.RegularExpressions;
using System.Xml.Linq;
using Calx.Papers.Reports;
using Calx.Practicals.Findings;

namespace Calx.Papers.Tests.Reports;

public partial class ClassReportTests
{
    [Fact]
    public void The_conclusion_stands_before_the_pictures_and_the_readings_as_written_after_them()
    {
        string html = Html(Analysed.Twelve);

        int conclusion = html.IndexOf("The mass rose in 11 of 12 groups", StringComparison.Ordinal);
        int chart = html.IndexOf("<svg", StringComparison.Ordinal);
        int reading = html.IndexOf(">27.90<", StringComparison.Ordinal);
        Assert.True(conclusion > 0 && conclusion < chart && chart < reading);
    }

    [Fact]
    public void Every_sentence_of_the_conclusion_is_on_the_page()
    {
        ClassFindings findings = Analysed.Twelve;
        string html = Html(findings);

        Assert.All(findings.Class.Conclusion, sentence => Assert.Contains(sentence, Plain(html), StringComparison.Ordinal));
    }

    [Fact]
    public void Nothing_is_asked_of_the_network_and_nothing_runs()
    {
        string html = Html(Analysed.Twelve);

        Assert.DoesNotMatch(OutsideAddress(), html);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(2, html.Split("url(data:font/woff2;base64,").Length - 1);
    }

    [Fact]
    public void What_a_person_wrote_cannot_become_markup()
    {
        string html = Html(Analysed.Sound(6, i => i == 2 ? "<script>alert(1)</script>" : $"=1+{i}"));

        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;alert(1)", html, StringComparison.Ordinal);
        Assert.Contains("=1+3", html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_body_is_well_formed_whatever_the_class()
    {
        foreach (ClassFindings findings in Classes())
        {
            string html = Html(findings);
            string body = html[html.IndexOf("<main", StringComparison.Ordinal)..(html.IndexOf("</main>", StringComparison.Ordinal) + 7)];
            XElement main = XElement.Parse(body);
            Assert.NotEmpty(main.Descendants("li"));
            Assert.DoesNotContain("NaN", body, StringComparison.Ordinal);
            Assert.DoesNotContain("Infinity", body, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_same_class_gives_the_same_bytes() => Assert.Equal(Html(Analysed.Twelve), Html(Analysed.Twelve));

    [Fact]
    public void Invented_data_are_labelled_and_others_are_not()
    {
        Assert.Contains("Invented data", ClassReport.Html(Analysed.Twelve, new ReportHeading("9F", null, inventedData: true)), StringComparison.Ordinal);
        Assert.DoesNotContain("Invented data", Html(Analysed.Twelve), StringComparison.Ordinal);
    }

    [Fact]
    public void Headings_of_columns_name_the_quantity_and_its_unit()
    {
        string html = Html(Analysed.Twelve);

        Assert.Contains("Mass of empty crucible and lid&#160;/&#160;g", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_group_with_an_odd_result_has_its_reason_and_its_verdict_on_constant_mass()
    {
        XElement lark = Body(Analysed.Twelve).Descendants("tbody").Single(b => b.Descendants("th").First().Value == "Lark");

        Assert.Equal("odd", lark.Attribute("class")!.Value);
        Assert.StartsWith("still rising", lark.Descendants("td").Single(d => d.Attribute("class")!.Value == "words").Value, StringComparison.Ordinal);
        Assert.StartsWith("Result to look into. Moles of oxygen", lark.Descendants("p").Single().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_row_of_a_group_is_as_wide_as_the_head_of_the_table()
    {
        XElement table = Body(Analysed.Heated(4, times: 3)).Descendants("table").First();
        int width = table.Element("thead")!.Descendants("th").Count();

        Assert.Equal(1 + 5 + 3 + 1, width);
        Assert.All(table.Elements("tbody"), group => Assert.Equal(width, group.Elements("tr").First().Elements().Count()));
    }

    [Fact]
    public void A_mass_written_in_kilograms_is_shown_as_it_was_written()
    {
        string html = Html(Analysed.Of("Group,empty,before,after\n1,0.02763 kg,27.90,28.07\n2,29.26,29.52,29.69\n"));

        Assert.Contains(">27.63<br><small>written 0.02763 kg</small>", html.Replace("<br/>", "<br>", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains(">29.26<", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_column_says_in_words_what_it_was_taken_for_and_a_cell_not_used_says_where_it_stood()
    {
        string text = Body(Analysed.Of("Group,crucible with lid,before,after\n1,27.63,27.90,28.07\n2,29.26,abc,29.69\n")).Value;

        Assert.Contains("Mass of crucible, lid and magnesium (before)", text, StringComparison.Ordinal);
        Assert.Contains("beforeabc", text, StringComparison.Ordinal);
    }

    private static XElement Body(ClassFindings findings)
    {
        string html = Html(findings);
        return XElement.Parse(html[html.IndexOf("<main", StringComparison.Ordinal)..(html.IndexOf("</main>", StringComparison.Ordinal) + 7)]);
    }

    private static IEnumerable<ClassFindings> Classes() =>
    [
        Analysed.Twelve,
        Analysed.Sound(1),
        Analysed.Sound(18),
        Analysed.Sound(60),
        Analysed.AllOdd,
        Analysed.Heated(18, times: 7),
        Analysed.Of("Group,before,after\n1,30.24,30.38\n2,31.20,31.33\n3,29.40,29.55\n"),
        Analysed.Of("Group,empty,before,after\n1,30.00,30.24,18.38\n2,30.00,29.00,31.00\n"),
        Analysed.Of("Group,empty,before,after\n1,30.00,30.00,30.01\n2,30.00,30.24,abc\n"),
        Analysed.Of("Group,empty\n1,30.00\n2,30.10\n"),
    ];

    private static string Plain(string html) => System.Net.WebUtility.HtmlDecode(html).Replace("\u00a0", " ", StringComparison.Ordinal);

    private static string Html(ClassFindings findings) => ClassReport.Html(findings, new ReportHeading("Class 9F", "1 June", inventedData: false));

    [GeneratedRegex("(src|href|action)\\s*=|https?://|@import", RegexOptions.IgnoreCase)]
    private static partial Regex OutsideAddress();
}
