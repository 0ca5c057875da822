using System.Xml.Linq;
using Calx.Papers.Charts;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Findings;
using static Calx.Papers.Tests.Charts.Drawn;

namespace Calx.Papers.Tests.Charts;

public class ChartTests
{
    [Fact]
    public void Every_chart_is_well_formed_and_names_and_describes_itself()
    {
        foreach (Chart chart in All(Analysed.Twelve))
        {
            XElement picture = XElement.Parse(chart.Svg());
            string[] named = picture.Attribute("aria-labelledby")!.Value.Split(' ');
            Assert.Equal("img", picture.Attribute("role")!.Value);
            Assert.Equal(named[0], picture.Element(Svg + "title")!.Attribute("id")!.Value);
            Assert.True(picture.Element(Svg + "desc")!.Value.Length > 20);
        }
    }

    [Fact]
    public void Everything_drawn_lies_inside_the_picture()
    {
        foreach (Chart chart in All(Analysed.Twelve).Concat(All(Analysed.Sound(18))).Concat(All(Analysed.Sound(1)))
            .Concat(All(Analysed.Sound(12, i => new string('W', 4 * i + 1)))).Concat(All(Analysed.Heated(9, times: 7))))
        {
            AssertInside(XElement.Parse(chart.Svg()));
        }
    }

    [Theory]
    [InlineData(5)]
    [InlineData(12)]
    [InlineData(18)]
    public void No_label_covers_another(int groups)
    {
        IEnumerable<Chart> charts = All(Analysed.Sound(groups)).Concat(All(Analysed.Twelve)).Concat(All(Analysed.Heated(groups, times: 3)))
            .Concat(All(Analysed.Heated(groups, times: 7))).Concat(All(Analysed.Sound(groups, i => new string('W', 5 * i + 1))));
        foreach (Chart chart in charts)
        {
            AssertNoLabelCovers(XElement.Parse(chart.Svg()), chart.Heading);
        }
    }

    /// <summary>Half as wide as a sheet, as they stand side by side on a report.</summary>
    [Theory]
    [InlineData(5)]
    [InlineData(12)]
    [InlineData(18)]
    public void On_half_a_sheet_all_lies_inside_and_no_label_covers_another(int groups)
    {
        ClassFindings[] classes = [Analysed.Sound(groups), Analysed.Twelve, Analysed.Heated(groups, times: 3), Analysed.Sound(groups, i => new string('W', (5 * i) + 1))];
        foreach (Chart? chart in classes.SelectMany(c => (Chart?[])[RatioChart.Of(c, null, ChartSize.Half), SampleChart.Of(c, null, ChartSize.Half)]))
        {
            AssertInside(XElement.Parse(chart!.Svg()));
            AssertNoLabelCovers(XElement.Parse(chart.Svg()), chart.Heading);
        }
    }

    [Fact]
    public void Odd_results_have_another_shape_and_gross_ones_are_named_as_off_the_scale()
    {
        Chart ratio = RatioChart.Of(Analysed.Twelve)!;

        Assert.Equal(2, XElement.Parse(ratio.Svg()).Descendants(Svg + "text").Count(t => t.Value.StartsWith("off the scale", StringComparison.Ordinal)));
        Assert.Equal(4, XElement.Parse(ratio.Svg()).Descendants(Svg + "polygon").Count(p => p.Attribute("class")!.Value == "odd-dot"));
        Assert.Equal(8, XElement.Parse(ratio.Svg()).Descendants(Svg + "circle").Count());
        Assert.Contains("Dove", SampleChart.Of(Analysed.Twelve)!.Caption, StringComparison.Ordinal);
    }

    // Heron's and Lark's intervals begin left of the axis, which the sound groups decide.
    [Fact]
    public void An_interval_that_is_longer_than_the_axis_ends_in_an_arrow_head_at_the_edge()
    {
        Chart ratio = RatioChart.Of(Analysed.Twelve)!;
        XElement picture = XElement.Parse(ratio.Svg());
        XElement[] heads = [.. OfRole(picture, "polygon", "odd-on")];
        double left = OfRole(picture, "line", "grid").Min(g => Of(g, "x1"));

        Assert.Equal(2, heads.Length);
        Assert.All(heads, h => Assert.Equal(left, Corners(h).Min(c => c.X), 0.01));
        Assert.Contains("An arrow head: the interval goes on", ratio.Caption, StringComparison.Ordinal);
        Assert.DoesNotContain("arrow head", RatioChart.Of(Analysed.Sound(9))!.Caption, StringComparison.Ordinal);
    }

    [Fact]
    public void Groups_with_the_same_values_do_not_hide_each_other()
    {
        Chart chart = SampleChart.Of(Analysed.Of("Group,empty,before,after\n" + string.Concat(Enumerable.Range(1, 4).Select(i => $"G{i},30.00,30.24,30.40\n")) + "G5,30.00,30.30,30.49\n"))!;
        (double X, double Y)[] dots = [.. XElement.Parse(chart.Svg()).Descendants(Svg + "circle").Select(c => (Of(c, "cx"), Of(c, "cy")))];

        Assert.Equal(5, dots.Length);
        Assert.All(dots, d => Assert.Single(dots, o => Math.Abs(o.X - d.X) < 9 && Math.Abs(o.Y - d.Y) < 9));
        Assert.StartsWith("Groups that would hide one another stand side by side.", chart.Caption, StringComparison.Ordinal);
    }

    // The readings of one group, by hand: 0.27 g of sample, 0.16 g gained; the ticks tell where that must lie.
    [Fact]
    public void A_point_lies_where_the_ticks_say()
    {
        XElement picture = XElement.Parse(SampleChart.Of(Analysed.Sound(9))!.Svg());
        (double x1, double v1, double x2, double v2) = Ticks(picture, "middle", "x");
        (double y1, double w1, double y2, double w2) = Ticks(picture, "end", "y", shift: -5);
        XElement[] dots = [.. picture.Descendants(Svg + "circle")];
        // Group 1 of the invented class: sample 0.20, gain 0.13 − 0.01.
        double x = Number(dots[0].Attribute("cx")!.Value);
        double y = Number(dots[0].Attribute("cy")!.Value);
        Assert.Equal(0.20, v1 + ((x - x1) / (x2 - x1) * (v2 - v1)), 1e-3);
        Assert.Equal(0.12, w1 + ((y - y1) / (y2 - y1) * (w2 - w1)), 1e-3);
    }

    [Fact]
    public void Every_point_lies_inside_the_plot_area()
    {
        Chart[] charts = [.. new[] { Analysed.Twelve, Analysed.Sound(1), Analysed.Sound(18), Analysed.AllOdd }.SelectMany(All)];
        foreach (XElement picture in charts.Select(c => XElement.Parse(c.Svg())))
        {
            // The axes are the edges of the area; the chart of shares has none and no points.
            XElement[] axes = [.. OfRole(picture, "line", "axis")];
            double left = axes.Select(a => Of(a, "x1")).DefaultIfEmpty().Min();
            double right = axes.Select(a => Of(a, "x2")).DefaultIfEmpty().Max();
            double top = OfRole(picture, "line", "grid").Select(g => Of(g, "y1")).DefaultIfEmpty().Min();
            double bottom = axes.Select(a => Of(a, "y2")).DefaultIfEmpty().Max();
            (double X, double Y)[] points = [.. picture.Descendants(Svg + "circle").Select(c => (Of(c, "cx"), Of(c, "cy"))), .. picture.Descendants(Svg + "polyline").SelectMany(Corners), .. picture.Descendants(Svg + "polygon").Select(Middle)];
            Assert.All(points, p => Assert.True(p.X >= left && p.X <= right && p.Y >= top && p.Y <= bottom, $"{p} outside {left} to {right}, {top} to {bottom}"));
            Assert.True(points.Length > 0 || axes.Length == 0);
        }
    }

    [Fact]
    public void Weighings_past_the_first_reheat_are_told_apart()
    {
        Assert.Contains(">after reheating 2<", StepsChart.Of(Analysed.Heated(6, times: 3))!.Svg(), StringComparison.Ordinal);
        Assert.Contains(">after 7<", StepsChart.Of(Analysed.Heated(6, times: 7))!.Svg(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_words_for_the_steps_say_how_many_groups_reached_constant_mass()
    {
        string description = XElement.Parse(StepsChart.Of(Analysed.Heated(6, times: 2))!.Svg()).Element(Svg + "desc")!.Value;

        Assert.EndsWith("same 6.", description, StringComparison.Ordinal);
    }

    [Fact]
    public void What_an_instrument_may_be_out_by_is_called_after_the_quantity_that_it_reads()
    {
        // Copper carried by 0.40 A for 1200 s: the ammeter's scale (2 % in the file) is among the largest parts.
        string description = XElement.Parse(BudgetChart.Of(Analysed.Of(
            "Group,anode before,cathode before,current,time,cathode after,anode after\n1,9.412,12.087,0.40,1200,12.244,9.253\n", practicalId: "copper-electrolysis"))!.Svg())
            .Element(Svg + "desc")!.Value;

        Assert.Contains("Scale of the instrument: current", description, StringComparison.Ordinal);
        Assert.DoesNotContain("ampere", description, StringComparison.Ordinal);
    }

    [Fact]
    public void Fuel_that_burns_away_is_not_drawn_against_itself()
    {
        ClassFindings findings = Analysed.Of(
            "Group,volume of water,mass of capped burner before,temperature at the start,highest temperature,mass of capped burner after\n"
            + "1,100,182.34,19.5,42.0,181.12\n2,100,179.80,20.0,41.5,178.66\n", practicalId: "alcohol-combustion");

        Assert.Equal(2, findings.Groups.Count(g => g.Find("enthalpy") is not null));
        Assert.Null(SampleChart.Of(findings));
    }

    [Fact]
    public void A_class_without_the_quantity_has_no_chart_of_it()
    {
        ClassFindings findings = Analysed.Of("Group,before,after\n1,30.24,30.38\n2,31.20,31.33\n");

        Assert.Null(RatioChart.Of(findings));
        Assert.Null(SampleChart.Of(findings));
        Assert.Null(BudgetChart.Of(findings));
        Assert.Null(StepsChart.Of(findings));
    }

    [Fact]
    public void Labels_pushed_apart_keep_their_order_and_their_gap()
    {
        double[] placed = LabelColumn.Spread([100, 101, 99, 300], gap: 17, top: 20, bottom: 310);

        Assert.True(placed[2] <= placed[0] - 17 && placed[0] <= placed[1] - 17);
        Assert.Equal(300, placed[3]);
    }

    [Theory]
    [InlineData(0.23, 0.29, 0.02)]
    [InlineData(0, 1, 0.2)]
    [InlineData(-12.2, 0.2, 5)]
    public void Ticks_stand_at_round_numbers_that_hold_the_values(double low, double high, double step)
    {
        var axis = new Axis([low, high], 0, 100);

        Assert.Equal(step, axis.Step, 1e-12);
        Assert.True(axis.Low <= low + 1e-9 && axis.High >= high - 1e-9);
        Assert.All(axis.Ticks, tick => Assert.Equal(0, Math.IEEERemainder(tick / step, 1), 1e-6));
    }

    private static IEnumerable<Chart> All(ClassFindings findings) =>
        ((Chart?[])[RatioChart.Of(findings), SampleChart.Of(findings), BudgetChart.Of(findings), StepsChart.Of(findings)]).OfType<Chart>();

    private static (double At1, double Value1, double At2, double Value2) Ticks(XElement picture, string anchor, string axis, double shift = 0)
    {
        XElement[] ticks = [.. picture.Descendants(Svg + "text")
            .Where(t => t.Attribute("class")!.Value == "tick" && t.Attribute("text-anchor")!.Value == anchor)];
        return (Number(ticks[0].Attribute(axis)!.Value) + shift, Number(ticks[0].Value), Number(ticks[^1].Attribute(axis)!.Value) + shift, Number(ticks[^1].Value));
    }

    private static (double X, double Y) Middle(XElement shape)
    {
        (double X, double Y)[] corners = Corners(shape);
        return (corners.Average(c => c.X), corners.Average(c => c.Y));
    }
}
