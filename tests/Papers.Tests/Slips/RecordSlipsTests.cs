using AngleSharp.Dom;
using Calx.Measurement.Weighing;
using Calx.Papers.Reports;
using Calx.Papers.Slips;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Definition;
using Calx.Practicals.Clock;

namespace Calx.Papers.Tests.Slips;

public class RecordSlipsTests
{
    private static readonly Practical Magnesium = BuiltInPracticals.Find("magnesium-oxide")!;

    [Fact]
    public void Every_group_has_a_slip_with_its_number()
    {
        IElement[] slips = Slips(Magnesium, new SlipSettings(groups: 12, decimals: 2));

        Assert.Equal(12, slips.Length);
        for (int i = 0; i < 12; i++)
        {
            Assert.Equal($"group {i + 1}", slips[i].QuerySelector("h2")!.TextContent);
            Assert.Contains("letter on the balance", slips[i].TextContent, StringComparison.Ordinal);
            Assert.Contains("number on the vessel", slips[i].TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_trial_of_a_group_has_a_slip_of_its_own()
    {
        IElement[] slips = Slips(Magnesium, new SlipSettings(groups: 2, decimals: 2, trials: 2));

        Assert.Equal(
            ["group 1 trial 1", "group 1 trial 2", "group 2 trial 1", "group 2 trial 2"],
            slips.Select(s => s.QuerySelector("h2")!.TextContent));
    }

    [Fact]
    public void Each_reading_is_headed_by_its_quantity_and_unit_and_reheatings_have_rows()
    {
        string[] rows = [.. Slips(Magnesium, new SlipSettings(1, 2))[0].QuerySelectorAll("tbody th").Select(Plain)];

        Assert.Equal(
            ["Mass of empty crucible and lid / g", "Mass of crucible, lid and magnesium / g", "Mass after heating / g", "Mass after reheating / g", "Mass after reheating 2 / g"],
            rows);
    }

    // A crucible of up to 25 g with a lid of up to 20 g: two digits before the point.
    [Theory]
    [InlineData(0, 2)]
    [InlineData(1, 3)]
    [InlineData(2, 4)]
    [InlineData(3, 5)]
    public void There_is_a_box_for_every_digit_of_the_balance_and_a_point_where_it_has_decimals(int decimals, int boxes)
    {
        IElement[] cells = [.. Slips(Magnesium, new SlipSettings(1, decimals))[0].QuerySelectorAll("td.digits")];

        Assert.All(cells, cell => Assert.Equal(boxes, cell.QuerySelectorAll(".digit").Length));
        Assert.All(cells, cell => Assert.Equal(decimals == 0 ? 0 : 1, cell.QuerySelectorAll(".point").Length));
        Assert.All(cells, cell => Assert.Equal(
            decimals, cell.Children.Reverse().TakeWhile(c => c.ClassName == "digit").Count() % (decimals == 0 ? boxes : boxes + 1)));
    }

    [Fact]
    public void Minutes_since_the_flame_was_put_out_are_asked_of_what_was_heated_only()
    {
        IElement slip = Slips(Magnesium, new SlipSettings(1, 2))[0];

        Assert.Contains("minutes since flame out", slip.QuerySelector("thead")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(
            [false, false, true, true, true],
            slip.QuerySelectorAll("tbody tr").Select(r => r.Children[2].QuerySelector(".box") is not null));
    }

    [Fact]
    public void What_may_be_seen_can_be_ticked_but_not_what_is_for_the_teacher_alone()
    {
        foreach (Practical practical in BuiltInPracticals.All)
        {
            IElement slip = Slips(practical, new SlipSettings(1, 2))[0];
            Assert.Equal(
                practical.Observations.Where(o => o is { TeacherOnly: false, Stop: false }).Select(o => o.Label),
                slip.QuerySelectorAll("section.seen li").Select(Plain));
            Assert.Equal(
                practical.Observations.Where(o => o is { TeacherOnly: false, Stop: true }).Select(o => o.Label),
                slip.QuerySelectorAll("section.stop li").Select(Plain));
        }

        Assert.DoesNotContain("smell of ammonia", Html(Magnesium, draft: false), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Every_control_of_a_hazard_stands_above_the_readings_and_eye_protection_is_named()
    {
        foreach (Practical practical in BuiltInPracticals.All)
        {
            IElement slip = Slips(practical, new SlipSettings(1, 2))[0];
            string cautions = Plain(slip.QuerySelector("ul.cautions")!);
            Assert.All(practical.Hazards, h => Assert.Contains(h.Control, cautions, StringComparison.Ordinal));
            Assert.Contains("eye protection", cautions, StringComparison.Ordinal);
            string html = slip.OuterHtml;
            Assert.True(html.IndexOf("cautions", StringComparison.Ordinal) < html.IndexOf("<table", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Nothing_on_a_slip_tells_a_cause_an_expected_value_or_an_answer()
    {
        foreach (Practical practical in BuiltInPracticals.All)
        {
            string text = Plain(Slips(practical, new SlipSettings(1, 2))[0]);
            Assert.All(practical.Faults, f => Assert.DoesNotContain(f.Label, text, StringComparison.Ordinal));
            Assert.DoesNotContain("accepted", text, StringComparison.OrdinalIgnoreCase);
            Assert.DoesNotContain("weight", text, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    public void A_practical_that_is_not_checked_says_so_on_every_slip_and_a_checked_one_on_none()
    {
        IDocument page = Page.Of(Html(Magnesium, draft: true));

        Assert.Equal(4, page.QuerySelectorAll("p.draft").Length);
        Assert.All(page.QuerySelectorAll("p.draft"), p => Assert.Equal("DRAFT: not yet checked against the employer’s risk assessment", p.TextContent));
        Assert.DoesNotContain("DRAFT", Page.TextOf(Page.Of(Html(Magnesium, draft: false))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_plan_tells_groups_decimals_trials_and_readings_left_out()
    {
        PlanSettings plan = new PlanSettings(Magnesium, 5, [new Balance(0.1), new Balance(0.01)], 60).WithTrials(2).WithUnread("empty");
        IElement[] slips = Slips(Magnesium, SlipSettings.Of(plan));

        Assert.Equal(10, slips.Length);
        Assert.Equal("Mass of crucible, lid and magnesium / g", Plain(slips[0].QuerySelector("tbody th")!));
        Assert.Equal(4, slips[0].QuerySelector("td.digits")!.QuerySelectorAll(".digit").Length);
    }

    [Fact]
    public void What_a_file_or_a_person_wrote_cannot_become_markup()
    {
        Practical hostile = Planned.Hostile.Settings.Practical;
        string html = RecordSlips.Html(hostile, new SlipSettings(2, 2), new ReportHeading("<9F onclick=x>", "\"1 June\"", false), draft: true);
        IDocument page = Page.Of(html);

        Page.AssertStrict(page);
        Assert.Empty(page.QuerySelectorAll("img, i, b"));
        Assert.Contains("<9F onclick=x>", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("http", html, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData(0, 2, 1)]
    [InlineData(61, 2, 1)]
    [InlineData(1, -1, 1)]
    [InlineData(1, 7, 1)]
    [InlineData(1, 2, 0)]
    public void Numbers_out_of_range_are_refused(int groups, int decimals, int trials) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new SlipSettings(groups, decimals, trials));

    private static IElement[] Slips(Practical practical, SlipSettings settings) =>
        [.. Page.Of(RecordSlips.Html(practical, settings, new ReportHeading("Class 9F", "1 June", false), draft: false)).QuerySelectorAll("article")];

    private static string Html(Practical practical, bool draft) =>
        RecordSlips.Html(practical, new SlipSettings(4, 2), new ReportHeading("Class 9F", null, false), draft);

    private static string Plain(IElement element) => element.TextContent.Replace('\u00a0', ' ');
}
