using System.Globalization;
using System.Xml.Linq;
using Calx.Papers.Charts;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Clock;
using Calx.Practicals.Planning;
using static Calx.Papers.Tests.Charts.Drawn;

namespace Calx.Papers.Tests.Charts;

public class TimelineChartTests
{
    private static readonly string[] Shapes = ["weighing", "flame", "cooling", "work", "waiting"];

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(12)]
    [InlineData(18)]
    public void No_label_covers_another_and_all_stand_inside(int groups)
    {
        LessonForecast lesson = Planned.Magnesium(groups).Lesson;
        foreach (Chart chart in new[] { TimelineChart.Typical(lesson), TimelineChart.Bad(lesson) })
        {
            AssertNoLabelCovers(XElement.Parse(chart.Svg()), chart.Heading);
            AssertInside(XElement.Parse(chart.Svg()));
        }
    }

    [Fact]
    public void Nor_does_one_where_the_lesson_is_short_long_or_of_ones_own()
    {
        foreach (Plan plan in new[] { Planned.Easy, Planned.Hydrate, Planned.Hostile })
        {
            XElement picture = Typical(plan);
            AssertNoLabelCovers(picture, plan.Settings.Practical.Title);
            AssertInside(picture);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(18)]
    public void Every_group_has_a_numbered_row_and_each_of_its_bars_is_in_it(int groups)
    {
        Plan plan = Planned.Magnesium(groups);
        XElement picture = Typical(plan);
        TimelineBar[] bars = Own(plan.Lesson.Typical);
        XElement[] drawn = BarShapes(picture);

        Assert.Equal(bars.Length, drawn.Length);
        for (int i = 0; i < bars.Length; i++)
        {
            string number = bars[i].Group.ToString(CultureInfo.InvariantCulture);
            XElement row = picture.Descendants(Svg + "text").Single(t => t.Value == number && t.Attribute("class")!.Value == "label");
            Assert.Contains(bars[i].Label, Tip(drawn[i]), StringComparison.Ordinal);
            Assert.StartsWith($"group {number}:", Tip(drawn[i]), StringComparison.Ordinal);
            Assert.Equal(Of(row, "y") + 1, Box(drawn[i]).Bottom, 0.02);
        }
    }

    [Fact]
    public void Every_step_of_the_lesson_is_named_over_its_bar()
    {
        foreach (Plan plan in new[] { Planned.Magnesium(12), Planned.Hydrate })
        {
            string[] texts = [.. Typical(plan).Descendants(Svg + "text").Select(t => t.Value)];
            string[] done = [.. plan.Lesson.Typical.Bars.Select(b => b.Label).Distinct()];

            Assert.True(done.Length > 10);
            Assert.All(done, label => Assert.Contains(texts, t => t == label || (t[^1] == '…' && label.StartsWith(t[..^1], StringComparison.Ordinal) && t.Length > 10)));
        }
    }

    // The numbers under the axis tell which minute a place on paper is; the bars must agree with them.
    [Fact]
    public void Bars_lie_where_the_minutes_say()
    {
        foreach (Plan plan in new[] { Planned.Magnesium(12), Planned.Easy, Planned.Hydrate })
        {
            XElement picture = Typical(plan);
            TimelineBar[] bars = Own(plan.Lesson.Typical);
            XElement[] drawn = BarShapes(picture);
            for (int i = 0; i < bars.Length; i++)
            {
                (double left, _, double right, _) = Box(drawn[i]);
                Assert.Equal(bars[i].FromMinute, MinuteAt(picture, left), 0.01);
                // Only a weighing shorter than a hair's breadth is drawn wider than it is.
                Assert.True(Math.Abs(bars[i].ToMinute - MinuteAt(picture, right)) < 0.01 || (bars[i].Kind == BarKind.Weighing && right - left < 2.6));
            }
        }
    }

    [Fact]
    public void What_the_class_does_together_is_a_band_through_all_rows()
    {
        Plan plan = Planned.Magnesium(12);
        XElement picture = Typical(plan);
        XElement[] bands = [.. OfRole(picture, "rect", "band")];
        double[] bottoms = [.. BarShapes(picture).Select(b => Box(b).Bottom)];

        Assert.Equal(["arrive and settle", "briefing and demonstration", "what did we find"], bands.Select(b => Tip(b).Split(": ")[1].Split(", minute")[0]));
        Assert.All(bands, band => Assert.True(Of(band, "y") < bottoms.Min() && Of(band, "y") + Of(band, "height") > bottoms.Max()));
        Assert.Equal(plan.Lesson.Typical.EndMinute, MinuteAt(picture, Of(bands[2], "x") + Of(bands[2], "width")), 0.01);
    }

    [Fact]
    public void Kinds_of_bars_differ_in_shape_and_height_without_colour()
    {
        XElement picture = Typical(Planned.Magnesium(12));
        double weighing = Height("rect", "weighing");
        double work = Height("rect", "work");
        double waiting = Height("rect", "waiting");

        Assert.True(weighing > 1.5 * work && work > 2 * waiting);
        Assert.All(OfRole(picture, "polygon", "cooling"), wedge => Assert.Equal(4, Corners(wedge).Length));
        Assert.All(OfRole(picture, "polygon", "flame"), flame => Assert.True(Corners(flame).Length >= 5));

        double Height(string name, string role) => OfRole(picture, name, role).Select(r => Of(r, "height")).Distinct().Single();
    }

    [Fact]
    public void The_minutes_that_the_teacher_calls_out_are_lines_with_their_names()
    {
        Plan plan = Planned.Easy;
        XElement picture = Typical(plan);

        Assert.Equal(120, MinuteAt(picture, LineX("bell")), 0.01);
        Assert.Equal(105, MinuteAt(picture, LineX("gas-off")), 0.01); // 15 min before the bell, as the practical's file says.
        Assert.Equal(plan.Lesson.Calls.Heating!.Value, MinuteAt(picture, LineX("last-heating")), 0.01);
        string[] texts = [.. picture.Descendants(Svg + "text").Select(t => t.Value)];
        Assert.Contains("bell 120", texts);
        Assert.Contains("gas off by 105", texts);
        Assert.Contains(texts, t => t.StartsWith("last heating starts by ", StringComparison.Ordinal));

        double LineX(string role) => OfRole(picture, "line", role).Select(l => Of(l, "x1")).Distinct().Single();
    }

    [Fact]
    public void A_line_runs_through_every_step_on_which_the_end_depends()
    {
        LessonTimeline lesson = Planned.Magnesium(12).Lesson.Bad;
        XElement picture = XElement.Parse(TimelineChart.Bad(Planned.Magnesium(12).Lesson).Svg());
        XElement[] drawn = [.. OfRole(picture, "line", "critical")];

        Assert.Equal(lesson.CriticalPath.Count, drawn.Length);
        for (int i = 0; i < drawn.Length; i++)
        {
            CriticalStep step = lesson.CriticalPath[i];
            Assert.Equal(step.FromMinute, MinuteAt(picture, Of(drawn[i], "x1")), 0.01);
            Assert.Equal(step.ToMinute, MinuteAt(picture, Of(drawn[i], "x2")), 0.01);
            if (step.Group > 0)
            {
                double ground = Box(BarShapes(picture).First(b => Tip(b).StartsWith($"group {step.Group}:", StringComparison.Ordinal))).Bottom;
                Assert.InRange(Of(drawn[i], "y1"), ground, ground + 8);
            }
        }
    }

    [Fact]
    public void The_picture_says_in_words_when_the_lesson_ends_and_why()
    {
        Plan plan = Planned.Magnesium(5);
        XElement picture = Typical(plan);
        string description = picture.Element(Svg + "desc")!.Value;

        Assert.Equal("img", picture.Attribute("role")!.Value);
        Assert.Contains($"{plan.Lesson.Typical.EndMinute - 60:F0} min after the bell", description, StringComparison.Ordinal);
        Assert.All(plan.Lesson.Typical.CriticalPath, step => Assert.Contains(step.Label, description, StringComparison.Ordinal));
        Assert.Contains("min before the bell", Typical(Planned.Easy).Element(Svg + "desc")!.Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(40, 5)]
    [InlineData(60, 5)]
    [InlineData(135, 10)]
    [InlineData(222, 15)]
    [InlineData(600, 60)]
    public void Ticks_stand_where_a_clock_has_marks(double last, double step)
    {
        var axis = new MinuteAxis(last, 50, 850);

        Assert.Equal(step, axis.Step);
        Assert.All(axis.Ticks, tick => Assert.InRange(axis.At(tick), 50, 850));
        Assert.True(axis.Ticks.Last() > last - step - 1e-9);
    }

    private static XElement Typical(Plan plan) => XElement.Parse(TimelineChart.Typical(plan.Lesson).Svg());

    private static TimelineBar[] Own(LessonTimeline lesson) => [.. lesson.Bars.Where(b => b.Group > 0 && b.Kind != BarKind.Class)];

    private static XElement[] BarShapes(XElement picture) =>
        [.. picture.Elements().Where(e => Shapes.Contains(e.Attribute("class")?.Value))];

    private static string Tip(XElement shape) => shape.Element(Svg + "title")!.Value;

    private static (double Left, double Top, double Right, double Bottom) Box(XElement shape)
    {
        if (shape.Name == Svg + "rect")
        {
            return (Of(shape, "x"), Of(shape, "y"), Of(shape, "x") + Of(shape, "width"), Of(shape, "y") + Of(shape, "height"));
        }

        (double X, double Y)[] corners = Corners(shape);
        return (corners.Min(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.X), corners.Max(c => c.Y));
    }

    private static double MinuteAt(XElement picture, double x)
    {
        XElement[] ticks = [.. OfRole(picture, "text", "tick").Where(t => t.Attribute("text-anchor")!.Value == "middle" && t.Value.All(char.IsAsciiDigit))];
        (double first, double last) = (Of(ticks[0], "x"), Of(ticks[^1], "x"));
        return Number(ticks[0].Value) + ((x - first) / (last - first) * (Number(ticks[^1].Value) - Number(ticks[0].Value)));
    }
}
