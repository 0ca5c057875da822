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

        int conclusion = html.IndexOf("The mass rose in all 8 groups", StringComparison.Ordinal);
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
            string body = html[html.IndexOf("<main>", StringComparison.Ordinal)..(html.IndexOf("</main>", StringComparison.Ordinal) + 7)];
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

    private static IEnumerable<ClassFindings> Classes() =>
    [
        Analysed.Twelve,
        Analysed.Sound(1),
        Analysed.Sound(18),
        Analysed.Sound(60),
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
