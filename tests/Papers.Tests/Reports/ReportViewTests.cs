using AngleSharp.Dom;
using Calx.Papers.Charts;
using Calx.Papers.Plans;
using Calx.Papers.Reports;
using Calx.Practicals.Findings;

namespace Calx.Papers.Tests.Reports;

public class ReportViewTests
{
    private static readonly string[] Names =
        ["Amber", "Cedar", "Dove", "Elm", "Finch", "Garnet", "Heron", "Ivy", "Juniper", "Kestrel", "Lark"];

    public static TheoryData<bool, bool, bool> Views => new(
        from causes in new[] { false, true } from accepted in new[] { false, true } from names in new[] { false, true } select (causes, accepted, names));

    [Theory]
    [MemberData(nameof(Views))]
    public void Parts_hold_no_style_no_script_and_nothing_that_a_group_wrote_as_markup(bool causes, bool accepted, bool names)
    {
        IDocument page = Page.Of(ClassReport.Sections(Analysed.Hostile, new ReportView(causes, accepted, names)));

        Page.AssertStrict(page);
        Assert.Empty(page.QuerySelectorAll("img, style, link, b, h1, head > title"));
        Assert.Contains(page.QuerySelectorAll("h2"), h => h.TextContent == "Group by group");
        Assert.Equal(page.QuerySelectorAll("[id]").Length, page.QuerySelectorAll("[id]").Select(e => e.Id).Distinct().Count());
    }

    [Fact]
    public void The_teacher_sees_causes_odd_results_accepted_values_and_names()
    {
        string text = Text(ReportView.Teacher);

        Assert.Contains("What may have happened", text, StringComparison.Ordinal);
        Assert.Contains("Result to look into", text, StringComparison.Ordinal);
        Assert.Contains("The accepted value is", text, StringComparison.Ordinal);
        Assert.Contains("the equation", text, StringComparison.Ordinal);
        Assert.Contains("MgO", text, StringComparison.Ordinal);
        Assert.All(Names, name => Assert.Contains(name, text, StringComparison.Ordinal));
        Assert.Contains("Noted: ", text, StringComparison.Ordinal);
        Assert.Contains("look()", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_sees_no_cause_and_no_odd_mark_and_nothing_typed()
    {
        string html = ClassReport.Sections(Analysed.Hostile, ReportView.Class);
        string text = Page.TextOf(Page.Of(html));

        Assert.DoesNotContain("What may have happened", text, StringComparison.Ordinal);
        Assert.DoesNotContain("look into", text, StringComparison.Ordinal);
        Assert.DoesNotContain("odd result", text[..text.IndexOf("How this was worked out", StringComparison.Ordinal)], StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"odd", html, StringComparison.Ordinal);
        Assert.DoesNotContain("Noted", text, StringComparison.Ordinal);
        Assert.DoesNotContain("smoke", text, StringComparison.Ordinal);
        Assert.DoesNotContain("look()", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_sees_no_accepted_value_and_no_formula_before_the_teacher_shows_it()
    {
        string html = ClassReport.Sections(Analysed.Hostile, ReportView.Class);
        string text = Page.TextOf(Page.Of(html));

        Assert.DoesNotContain("accepted", text, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("equation", text, StringComparison.Ordinal);
        Assert.DoesNotContain("MgO", text, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"theory", html, StringComparison.Ordinal);
        Assert.Contains("The mass rose in 11 of 12 groups", text, StringComparison.Ordinal);
        Assert.Contains("accepted value", Text(new ReportView(Causes: false, Accepted: true, Names: false)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_sees_numbers_for_names_in_words_tables_and_pictures()
    {
        string text = Text(ReportView.Class);

        Assert.All(Names, name => Assert.DoesNotContain(name, text, StringComparison.Ordinal));
        Assert.Equal(
            Enumerable.Range(1, 12).Select(n => $"Group {n}"),
            Page.Of(ClassReport.Sections(Analysed.Hostile, ReportView.Class)).QuerySelectorAll("table.groups tbody th").Select(h => h.TextContent));
    }

    [Fact]
    public void Points_to_talk_about_are_those_that_the_view_may_show()
    {
        string[] all = Points(ReportView.Teacher);
        string[] ofClass = Points(ReportView.Class);

        Assert.Equal(TalkingPoints.Of(Analysed.Hostile).Select(p => p.Text), all);
        Assert.Contains(all, p => p.StartsWith("Result to look into: ", StringComparison.Ordinal));
        Assert.Contains(all, p => p.Contains("accepted value", StringComparison.Ordinal));
        Assert.Equal(all.Length - 2, ofClass.Length);
        Assert.All(ofClass, p => Assert.Contains("?", p, StringComparison.Ordinal));

        static string[] Points(ReportView view) => [.. Page.Of(ClassReport.Sections(Analysed.Hostile, view))
            .QuerySelectorAll(".talking li").Select(li => li.TextContent.Replace('\u00a0', ' '))];
    }

    [Fact]
    public void Numbers_may_also_stand_for_names_where_odd_results_are_shown()
    {
        string text = Text(new ReportView(Causes: true, Accepted: true, Names: false));

        Assert.All(Names, name => Assert.DoesNotContain(name, text, StringComparison.Ordinal));
        Assert.Contains("Four groups have an odd result and are left out of these values until explained.", text, StringComparison.Ordinal);
        Assert.Contains("Result to look into", text, StringComparison.Ordinal);
    }

    // Readings came in only from groups 2, 5 and 11: they do not become 1, 2 and 3.
    [Fact]
    public void Groups_that_go_by_numbers_keep_them()
    {
        ClassFindings findings = Analysed.Of("Group,empty,before,after\nGroup 2 (simulated),27.63,27.90,28.07\n5 (simulated),29.26,29.52,29.68\ngroup 11 (simulated),27.93,28.22,28.40\n");

        Assert.Equal(
            ["Group 2 (simulated)", "Group 5 (simulated)", "Group 11 (simulated)"],
            Page.Of(ClassReport.Sections(findings, ReportView.Class)).QuerySelectorAll("table.groups tbody th").Select(h => h.TextContent));
    }

    [Fact]
    public void A_group_with_simulated_readings_is_named_and_not_counted()
    {
        ClassFindings findings = Analysed.Of("Group,empty,before,after\nAmber,27.63,27.90,28.07\nBirch (simulated),29.26,29.52,29.68\nCedar,27.93,28.22,28.40\n");

        Assert.Equal(["Amber", "Cedar"], findings.Groups.Select(g => g.Name));
        string teacher = ClassReport.Html(findings, new ReportHeading("9F", null, inventedData: false));
        Assert.Contains("<li>Birch goes on with simulated readings and is not counted.</li>", teacher, StringComparison.Ordinal);
        Assert.DoesNotContain("class=\"invented\"", teacher, StringComparison.Ordinal);
        string ofClass = ClassReport.Sections(findings, ReportView.Class);
        Assert.Contains("<li>One group goes on with simulated readings and is not counted.</li>", ofClass, StringComparison.Ordinal);
        Assert.DoesNotContain("Birch", ofClass, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Simulated and not measured: magnesium-oxide with seed 1\nGroup,empty,before,after\nAmber,27.63,27.90,28.07\nBirch,29.26,29.52,29.68\n")]
    [InlineData("Group,empty,before,after\nAmber (simulated),27.63,27.90,28.07\nBirch (simulated),29.26,29.52,29.68\n")]
    public void A_report_on_simulated_data_says_so_before_anything_else(string table)
    {
        ClassFindings findings = Analysed.Of(table);

        Assert.Equal(2, findings.Groups.Count);
        string html = ClassReport.Html(findings, new ReportHeading("9F", null, inventedData: false));
        Assert.Contains("<p class=\"invented\">Simulated data: no class measured these readings</p>\n<h1>", html, StringComparison.Ordinal);
        Assert.StartsWith("These readings are simulated and not measured", findings.Class.Conclusion[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Charts_for_a_class_draw_every_group_alike()
    {
        foreach (Chart chart in new[] { RatioChart.Of(Analysed.Twelve, ReportView.Class)!, SampleChart.Of(Analysed.Twelve, ReportView.Class)!, StepsChart.Of(Analysed.Twelve, ReportView.Class)! })
        {
            Assert.DoesNotContain("class=\"odd", chart.Inline, StringComparison.Ordinal);
            Assert.DoesNotContain("class=\"theory", chart.Inline, StringComparison.Ordinal);
            Assert.DoesNotContain("ccepted", chart.Inline, StringComparison.Ordinal);
            Assert.DoesNotContain("Lark", chart.Inline + chart.Caption, StringComparison.Ordinal);
        }

        Assert.Equal(10, Page.Of(RatioChart.Of(Analysed.Twelve, ReportView.Class)!.Inline).QuerySelectorAll("circle.dot").Length);
    }

    [Fact]
    public void A_whole_file_in_a_view_is_the_same_parts_under_its_head()
    {
        string parts = ClassReport.Sections(Analysed.Twelve, ReportView.Class);
        string html = ClassReport.Html(Analysed.Twelve, new ReportHeading("Class 9F", null, inventedData: false), ReportView.Class);

        Assert.Contains($"</header>\n{parts}</main>", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bar_of_a_cause_is_as_long_as_it_is_probable()
    {
        IDocument page = Page.Of(ClassReport.Sections(Analysed.Hostile, ReportView.Teacher));
        IElement[] bars = [.. page.QuerySelectorAll("table.causes li")];

        Assert.NotEmpty(bars);
        Assert.All(bars, bar => Assert.EndsWith($", {bar.QuerySelector("rect")!.GetAttribute("width")} %", bar.TextContent.Replace('\u00a0', ' '), StringComparison.Ordinal));
    }

    [Fact]
    public void A_plan_has_parts_without_a_head()
    {
        string parts = PlanReport.Sections(Planned.Hostile, ["<b>First</b>"]);
        IDocument page = Page.Of(parts);

        Page.AssertStrict(page);
        Assert.Empty(page.QuerySelectorAll("h1, header, img, b"));
        Assert.Equal(2, page.QuerySelectorAll(".verdicts .verdict").Length);
        Assert.Contains($"</header>\n{parts}</main>", PlanReport.Html(Planned.Hostile, ["<b>First</b>"]), StringComparison.Ordinal);
    }

    private static string Text(ReportView view) => Page.TextOf(Page.Of(ClassReport.Sections(Analysed.Hostile, view)));
}
