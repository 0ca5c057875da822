using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Calx.Papers.Plans;
using Calx.Papers.Reports;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;

namespace Calx.Papers.Tests.Reports;

public partial class PlanReportTests
{
    [Fact]
    public void The_verdict_comes_first_then_the_sentences_then_the_pictures()
    {
        string html = Html(Planned.Magnesium(12));

        int verdict = html.IndexOf("<strong>Does not fit</strong>", StringComparison.Ordinal);
        int first = html.IndexOf("First sentence.", StringComparison.Ordinal);
        int second = html.IndexOf("Second sentence.", StringComparison.Ordinal);
        int picture = html.IndexOf("<svg", StringComparison.Ordinal);
        Assert.True(verdict > 0 && verdict < first && first < second && second < picture);
        Assert.Contains("<strong>Fits</strong>", Html(Planned.Easy), StringComparison.Ordinal);
    }

    [Fact]
    public void A_table_that_lacks_a_reading_is_told_as_large_as_whether_the_lesson_fits()
    {
        string[] verdicts = [.. Body(Planned.WithoutEmpty).Descendants("strong").Select(s => s.Value).Take(2)];

        Assert.Equal("Cannot conclude", verdicts[1]);
        Assert.Contains("<strong>Enough</strong>", Html(Planned.Magnesium(12)), StringComparison.Ordinal);
        Assert.Contains("<strong>Not sure enough</strong>", Html(Planned.Magnesium(1)), StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_asked_of_the_network_and_nothing_runs()
    {
        foreach (Plan plan in Planned.All)
        {
            string html = Html(plan);
            Assert.DoesNotMatch(OutsideAddress(), html);
            Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
            Assert.Equal(2, html.Split("url(").Length - 1); // The two fonts, which it brings along.
            Assert.Equal(2, html.Split("url(data:font/woff2;base64,").Length - 1);
        }
    }

    [Fact]
    public void What_a_person_wrote_cannot_become_markup()
    {
        string html = PlanReport.Html(Planned.Hostile, ["<b>sentence</b> & more"], new ReportHeading("<9F>", "\"1 June\"", inventedData: false));

        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<b>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<i>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<9F>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<magnesium>", html, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;look()", html, StringComparison.Ordinal);
        Assert.Contains("&lt;img src=x&gt; tongs", html, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;sentence&lt;/b&gt; &amp; more", html, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_is_well_formed_whatever_the_plan_and_each_id_stands_once()
    {
        foreach (Plan plan in Planned.All)
        {
            XElement main = Body(plan);
            string[] ids = [.. main.DescendantsAndSelf().Select(e => e.Attribute("id")?.Value).OfType<string>()];
            Assert.True(ids.Length > 8);
            Assert.Equal(ids.Length, ids.Distinct().Count());
            Assert.DoesNotContain("NaN", main.Value, StringComparison.Ordinal);
            Assert.DoesNotContain("∞", main.Value, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Numbers_do_not_depend_on_the_culture_of_the_machine()
    {
        string plain = Html(Planned.Magnesium(12));
        CultureInfo before = CultureInfo.CurrentCulture;
        var other = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        other.NumberFormat.NumberDecimalSeparator = ",";
        other.NumberFormat.NegativeSign = "~";
        CultureInfo.CurrentCulture = other;
        try
        {
            Assert.Equal("0,5", $"{0.5}");
            Assert.Equal(plain, Html(Planned.Magnesium(12)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Conclusions_are_told_in_times_out_of_a_hundred()
    {
        Plan plan = Planned.Magnesium(12);
        string[][] rows = Rows(plan, "conclusions");

        Assert.Equal(2, rows.Length);
        for (int i = 0; i < rows.Length; i++)
        {
            ConclusionChance chance = plan.Amounts.Planned.Chances[i];
            Assert.Equal(chance.Conclusion.Label, rows[i][0]);
            double[] probabilities = [chance.GroupRight.Value, chance.GroupWrong.Value, chance.ClassRight.Value, chance.ClassWrong.Value];
            Assert.All(probabilities.Zip(rows[i][1..]), pair => Assert.InRange(Times(pair.Second) - (100 * pair.First), -1, 1));
        }
    }

    [Fact]
    public void A_conclusion_that_the_readings_cannot_decide_has_dashes_for_numbers()
    {
        Assert.Equal(["–", "–", "–", "–"], Rows(Planned.WithoutEmpty, "conclusions").Single(r => r[0].StartsWith("magnesium and oxygen", StringComparison.Ordinal))[1..]);
    }

    [Fact]
    public void Expected_readings_have_the_decimals_of_the_balance()
    {
        string[][] rows = Rows(Planned.Magnesium(12), "expected");

        Assert.Equal("Mass of empty crucible and lid / g", rows[0][0].Replace('\u00a0', ' '));
        Assert.Equal(Planned.Magnesium(12).ExpectedReadings.Count, rows.Length);
        Assert.All(rows, row => Assert.Matches("^\\d+\\.\\d\\d$", row[1]));
        Assert.All(Rows(Planned.WithoutEmpty, "expected"), row => Assert.Matches("^\\d+\\.\\d$", row[1]));
        // The usual sample of the practical's file, 0.24 g, is what stands in the crucible before burning.
        Assert.InRange(double.Parse(rows[1][3], CultureInfo.InvariantCulture), 0.22, 0.26);
    }

    [Fact]
    public void Each_shared_thing_has_its_waiting()
    {
        Plan plan = Planned.Hydrate;
        string[][] rows = Rows(plan, "waiting");

        Assert.Equal(plan.Lesson.Uses.Select(u => u.Thing.Label), rows.Select(r => r[0]));
        Assert.Equal(plan.Lesson.Uses[0].MeanWait, double.Parse(rows[0][2], CultureInfo.InvariantCulture), 0.051);
    }

    [Fact]
    public void Ways_out_name_each_change_with_its_cost_and_are_left_out_where_there_are_none()
    {
        Plan plan = Planned.WithWays;
        Assert.NotEmpty(plan.Ways!);
        XElement[] rows = [.. Table(Body(plan), "ways").Element("tbody")!.Elements("tr")];

        Assert.Equal(plan.Ways!.Count, rows.Length);
        for (int i = 0; i < rows.Length; i++)
        {
            string[] entries = [.. rows[i].Descendants("li").Select(li => li.Value.Replace('\u00a0', ' '))];
            Assert.Equal(plan.Ways[i].Changes.Zip(plan.Ways[i].Costs).Select(c => c.First + c.Second), entries);
        }

        Assert.DoesNotContain("id=\"ways\"", Html(Planned.Easy), StringComparison.Ordinal);
    }

    // Twelve groups of two; 0.24 g of ribbon each, 28.2 cm, and a fifth more: 2.88 g and 0.576 g, 3.456 g in all; of a ribbon of
    // 0.85 g a metre that is 4.066 m.
    [Fact]
    public void The_kit_is_counted_for_the_class_with_spares()
    {
        // Of twelve crucibles 4 in 100 break on average: 0.48 at 2.50 each.
        var stock = new PlanStock(0.85, new Dictionary<string, double> { ["crucible"] = 2.5 });
        string html = PlanReport.Html(Planned.Magnesium(12), [], new ReportHeading("9F", null, inventedData: false), stock);
        string[][] rows = Rows(MainOf(html), "kit");

        Assert.Equal(["12", "1", "13", "–"], rows.Single(r => r[0] == "pipe-clay triangle")[1..]);
        Assert.Equal("1.20", rows.Single(r => r[0].StartsWith("crucible", StringComparison.Ordinal))[^1]);
        Assert.Contains("costs 1.20, by the prices given", html, StringComparison.Ordinal);
        Assert.Equal("24", rows.Single(r => r[0] == "eye protection")[1]);
        Assert.Equal(["2.88 g", "0.576 g", "3.46 g28 cm each, 4.07 m", "–"], rows.Single(r => r[0] == "magnesium ribbon")[1..]);
        Assert.Equal(Planned.Magnesium(12).Kit.Count, rows.Length);
    }

    [Fact]
    public void The_head_says_what_the_plan_rests_on()
    {
        Plan plan = Plan.Of(
            Planned.Magnesium(12).Settings.WithHeatings(1).WithPrepared(true).WithMoved("brief"),
            Calx.Chemistry.Elements.AtomicWeights.Iupac2024,
            new PlanOptions(looksForWays: false, lessons: 100));
        string head = PlanReport.Html(plan, []).Split("</header>")[0];
        foreach (string part in plan.Settings.InWords)
        {
            Assert.Contains(part.Replace("'", "", StringComparison.Ordinal)[..10], Regex.Replace(head, "['’‘\u00a0]|&#39;", m => m.Value == "\u00a0" ? " " : ""), StringComparison.Ordinal);
        }

        Assert.Contains("prepared by a technician", head, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_change_would_buy_stands_beside_the_plan()
    {
        string[][] rows = Rows(MainOf(PlanReport.Html(Planned.Magnesium(12), [])), "changes");
        Assert.Equal("as planned", rows[0][0]);
        Assert.Equal(Planned.Magnesium(12).Amounts.Changes.Select(c => c.Label), rows[1..].Select(r => r[0]));
        double planned = Planned.Magnesium(12).Amounts.Planned.GroupRight;
        Assert.Equal(Math.Round(100 * planned).ToString(CultureInfo.InvariantCulture), rows[0][1]);
    }

    [Fact]
    public void Every_hazard_stands_with_its_control_and_the_employer_decides()
    {
        Practical practical = Planned.Magnesium(12).Settings.Practical;
        XElement caution = Body(Planned.Magnesium(12)).Descendants("div").Single(d => d.Attribute("class")?.Value == "caution");

        Assert.Equal(practical.Hazards.Select(h => (h.Of, h.Harm, h.Control)), Rows(caution, "cautions").Select(r => (r[0], r[1], r[2])));
        Assert.Contains("No group takes more than 0.3 g: ribbon only, never powder.", caution.Value, StringComparison.Ordinal);
        Assert.Contains("Gas off by minute 45, 15", caution.Value, StringComparison.Ordinal);
        Assert.Contains("employer’s risk assessment and local rules decide", caution.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_for_no_class_in_particular_says_that_it_is_a_plan()
    {
        string html = PlanReport.Html(Planned.Magnesium(1), []);

        Assert.Contains("<title>Burning magnesium in a crucible: plan</title>", html, StringComparison.Ordinal);
        Assert.Contains("<p class=\"quiet\">Plan</p>", html, StringComparison.Ordinal);
        Assert.Contains("<p class=\"quiet\">Plan · Class 9F · 1 June</p>", Html(Planned.Magnesium(1)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_that_nobody_has_signed_for_says_draft_at_its_head_and_another_does_not()
    {
        string[] sentences = ["First sentence."];
        Assert.Contains("DRAFT: not yet checked", MainOf(PlanReport.Html(Planned.Easy, sentences, draft: true)).Element("header")!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("DRAFT", PlanReport.Html(Planned.Easy, sentences), StringComparison.Ordinal);
    }

    [Fact]
    public void A_page_that_puts_something_between_leaves_out_nothing()
    {
        string[] sentences = ["First sentence."];
        Assert.Equal(
            PlanReport.Sections(Planned.Easy, sentences), PlanReport.Verdicts(Planned.Easy) + PlanReport.UnderVerdicts(Planned.Easy, sentences));
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes() => Assert.Equal(Html(Planned.Magnesium(12)), Html(Planned.Magnesium(12)));

    private static string[][] Rows(Plan plan, string id) => Rows(Body(plan), id);

    private static string[][] Rows(XElement body, string id) =>
        [.. Table(body, id).Element("tbody")!.Elements("tr").Select(r => r.Elements().Select(c => c.Value.Replace('\u00a0', ' ')).ToArray())];

    private static XElement Table(XElement body, string id) => body.Descendants("table").Single(t => t.Attribute("class")?.Value == id);

    private static double Times(string text) => text switch
    {
        "< 1" => 0,
        "> 99" => 100,
        _ => double.Parse(text, CultureInfo.InvariantCulture),
    };

    private static XElement Body(Plan plan) => MainOf(Html(plan));

    private static XElement MainOf(string html) =>
        XElement.Parse(html[html.IndexOf("<main", StringComparison.Ordinal)..(html.IndexOf("</main>", StringComparison.Ordinal) + 7)]);

    private static string Html(Plan plan) =>
        PlanReport.Html(plan, ["First sentence.", "Second sentence."], new ReportHeading("Class 9F", "1 June", inventedData: false));

    [GeneratedRegex("<[^>]*\\s(src|href|action)\\s*=|https?://|@import", RegexOptions.IgnoreCase)]
    private static partial Regex OutsideAddress();
}
