using System.Xml.Linq;
using Calx.Measurement.Numbers;
using Calx.Measurement.Uncertainty;
using Calx.Measurement.Weighing;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings.History;
using static Calx.Papers.Tests.Charts.Drawn;

namespace Calx.Papers.Tests.Charts;

public class HistoryChartTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(12)]
    [InlineData(60)]
    public void Every_lesson_has_a_row_and_nothing_covers_or_leaves_the_picture(int lessons)
    {
        Chart chart = HistoryChart.Of(Lessons(lessons, i => $"{2000 + i}/{i + 1} 9F"))!;
        XElement picture = XElement.Parse(chart.Svg());

        Assert.Equal(Math.Min(lessons, 40), picture.Descendants(Svg + "circle").Count());
        Assert.Equal(lessons > 40, chart.Caption.Contains("The last 40 of 60 lessons.", StringComparison.Ordinal));
        AssertInside(picture);
        AssertNoLabelCovers(picture, chart.Heading);
    }

    [Fact]
    public void The_accepted_value_is_drawn_for_the_teacher_and_not_for_a_class()
    {
        ResultHistory lessons = Lessons(4, i => $"year {i}");

        Assert.Contains("accepted 1", HistoryChart.Of(lessons)!.Inline, StringComparison.Ordinal);
        Assert.DoesNotContain("accepted", HistoryChart.Of(lessons, ReportView.Class)!.Inline, StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_called_by_markup_is_written_out()
    {
        Assert.Contains("&lt;script&gt;", HistoryChart.Of(Lessons(1, _ => "<script>"))!.Inline, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", HistoryChart.Of(Lessons(1, _ => "<script>"))!.Inline, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", BalanceChart.Of(Checks(0, 1), "<b>A</b>")!.Inline, StringComparison.Ordinal);
    }

    [Fact]
    public void No_lesson_and_no_check_have_no_chart()
    {
        Assert.Null(HistoryChart.Of(Lessons(0, _ => "x")));
        Assert.Null(BalanceChart.Of(Checks(), "A"));
    }

    [Fact]
    public void A_check_lies_where_the_ticks_say_and_outside_the_band_it_has_another_shape()
    {
        XElement picture = XElement.Parse(BalanceChart.Of(Checks(0, 1, -1, 2), "A")!.Svg());
        (double Y, double Value)[] ticks = [.. picture.Descendants(Svg + "text")
            .Where(t => t.Attribute("text-anchor")!.Value == "end").Select(t => (Of(t, "y") - 5, Number(t.Value)))];
        double perDivision = (ticks[^1].Y - ticks[0].Y) / (ticks[^1].Value - ticks[0].Value);

        double[] divisions = [.. picture.Descendants(Svg + "circle").Select(c => Math.Round(ticks[0].Value + ((Of(c, "cy") - ticks[0].Y) / perDivision), 2))];
        Assert.Equal([0, 1, -1], divisions);
        Assert.Single(picture.Descendants(Svg + "polygon"));
        XElement band = Assert.Single(picture.Descendants(Svg + "rect"));
        Assert.Equal(2 * Math.Abs(perDivision), Of(band, "height"), 0.02);
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(4, 1)]
    [InlineData(5, 9)]
    [InlineData(5, 45)]
    [InlineData(12, 30)]
    [InlineData(20, 150)]
    [InlineData(30, 365)]
    [InlineData(40, 700)]
    public void Dates_have_few_ticks_that_do_not_cover_each_other(int checks, int daysApart)
    {
        Chart chart = BalanceChart.Of(Checks(daysApart, [.. Enumerable.Range(0, checks).Select(i => (i % 3) - 1)]), "A")!;
        XElement picture = XElement.Parse(chart.Svg());

        Assert.InRange(picture.Descendants(Svg + "text").Count(t => t.Attribute("text-anchor")!.Value == "middle"), 1, 8);
        AssertInside(picture);
        AssertNoLabelCovers(picture, chart.Heading);
    }

    [Fact]
    public void A_gross_check_is_off_the_scale_and_named()
    {
        Chart chart = BalanceChart.Of(Checks(0, 1, 0, -1, -120), "A")!;

        Assert.Contains("Off the scale: 30 Apr 2025 −120 divisions.", chart.Caption, StringComparison.Ordinal);
        Assert.Equal(4, XElement.Parse(chart.Svg()).Descendants(Svg + "circle").Count());
    }

    internal static ResultHistory Lessons(int count, Func<int, string> label) => ResultHistory.Of(
        BuiltInPracticals.Find("magnesium-oxide")!,
        [.. Enumerable.Range(0, count).Select(i => new LessonResult(
            label(i), new DateOnly(1960 + i, 11, 20), 0.95 + (0.01 * (i % 4)), 0.03, new CoverageInterval(0.89 + (0.01 * (i % 4)), 1.01 + (0.01 * (i % 4)), 0.95)))],
        accepted: 1);

    internal static BalanceHistory Checks(params int[] divisions) => Checks(30, divisions);

    internal static BalanceHistory Checks(int daysApart, int[] divisions) => BalanceHistory.Of(
        new Balance(0.01),
        [.. divisions.Select((d, i) => new BalanceCheckMade(
            new DateOnly(2024, 12, 31).AddDays(daysApart * i), new WrittenNumber(100.00m), new WrittenNumber(100.00m + (0.01m * d))))]);
}
