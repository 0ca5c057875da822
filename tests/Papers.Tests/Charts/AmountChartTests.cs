using System.Globalization;
using System.Xml.Linq;
using Calx.Papers.Charts;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Planning;
using Calx.Practicals.Planning.Amounts;
using static Calx.Papers.Tests.Charts.Drawn;

namespace Calx.Papers.Tests.Charts;

public class AmountChartTests
{
    [Fact]
    public void No_label_covers_another_and_all_stand_inside()
    {
        foreach (Plan plan in new[] { Planned.Magnesium(1), Planned.Magnesium(12), Planned.WithoutEmpty, Planned.Hydrate, Planned.WithWays, Planned.Hostile })
        {
            AssertNoLabelCovers(Picture(plan), plan.Settings.Practical.Title);
            AssertInside(Picture(plan));
        }
    }

    [Fact]
    public void Names_of_lines_keep_a_line_of_writing_away_from_the_names_of_amounts()
    {
        foreach (Plan plan in new[] { Planned.Magnesium(1), Planned.Magnesium(12), Planned.WithoutEmpty, Planned.Hydrate, Planned.WithWays })
        {
            XElement picture = Picture(plan);
            XElement[] texts = [.. picture.Descendants(Svg + "text")];
            string[] roles = ["planned-label", "smallest-label", "best-label"];
            double lowestMark = texts.Where(t => roles.Contains(t.Attribute("class")!.Value)).Max(t => Of(t, "y"));
            double highestName = texts.Where(t => t.Attribute("class")!.Value is string role && (role.StartsWith("of-", StringComparison.Ordinal) || role == "odd-label"))
                .Min(t => Of(t, "y"));
            Assert.True(highestName - lowestMark >= 20, $"{highestName - lowestMark} in {plan.Settings.Practical.Title}");
        }
    }

    // The ticks of both axes tell what a place on paper means.
    [Fact]
    public void The_class_and_one_group_lie_where_the_ticks_say()
    {
        Plan plan = Planned.Magnesium(12);
        XElement picture = Picture(plan);
        for (int i = 0; i < plan.Amounts.Planned.Chances.Count; i++)
        {
            int number = i;
            AssertLine(picture, plan, $"of-class line-{i}", p => p.Chances[number].ClassRight.Value);
            AssertLine(picture, plan, $"of-group line-{i}", p => p.Chances[number].GroupRight.Value);
        }

        AssertLine(picture, plan, "wrong", p => p.ClassWrong);
    }

    [Fact]
    public void The_axis_goes_from_0_to_100_in_100()
    {
        string[] ticks = [.. OfRole(Picture(Planned.Magnesium(12)), "text", "tick").Select(t => t.Value)];

        Assert.Equal(["0 %", "20 %", "40 %", "60 %", "80 %", "100 %"], ticks.Where(t => t.EndsWith('%')));
    }

    [Fact]
    public void The_planned_the_smallest_and_the_best_amount_are_marked_and_named()
    {
        Plan plan = Planned.Magnesium(12);
        XElement picture = Picture(plan);

        foreach ((string role, double? grams) in new[] { ("planned", 0.24), ("smallest", plan.Amounts.Smallest?.SampleInGrams), ("best", plan.Amounts.Best?.SampleInGrams) })
        {
            Assert.Equal(grams!.Value, GramsAt(picture, Of(OfRole(picture, "line", role).Single(), "x1")), 1e-3);
            string name = string.Create(CultureInfo.InvariantCulture, $"{role} {grams:0.######} g");
            Assert.Equal(name, OfRole(picture, "text", $"{role}-label").Single().Value);
        }
    }

    [Fact]
    public void Marks_of_the_same_amount_share_a_name()
    {
        Plan plan = Planned.WithoutEmpty;
        int amounts = new[] { plan.Amounts.Planned, plan.Amounts.Smallest, plan.Amounts.Best }.OfType<AmountPoint>().Select(p => p.SampleInGrams).Distinct().Count();
        XElement picture = Picture(plan);
        int marks = new[] { "planned", "smallest", "best" }.Sum(role => OfRole(picture, "line", role).Count());

        Assert.Equal(amounts, marks);
    }

    [Fact]
    public void Every_conclusion_is_named_at_the_end_of_its_line()
    {
        Plan plan = Planned.Magnesium(12);
        string all = string.Join(' ', Picture(plan).Descendants(Svg + "text").Select(t => t.Value));

        Assert.Equal(2, plan.Amounts.Planned.Chances.Count);
        Assert.All(plan.Amounts.Planned.Chances, c => Assert.Contains($"class: {c.Conclusion.Label}", all, StringComparison.Ordinal));
        Assert.All(plan.Amounts.Planned.Chances, c => Assert.Contains($"one group: {c.Conclusion.Label}", all, StringComparison.Ordinal));
        Assert.Contains("class is led to a wrong answer", all, StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_of_one_group_has_one_line_for_a_conclusion()
    {
        XElement picture = Picture(Planned.Magnesium(1));

        Assert.Equal(3, picture.Descendants(Svg + "polyline").Count());
        Assert.DoesNotContain(picture.Descendants(Svg + "text"), t => t.Value.StartsWith("one group", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_nothing_can_be_concluded_there_is_no_chart() => Assert.Null(AmountChart.Of(Planned.Hopeless.Amounts, 4));

    private static XElement Picture(Plan plan) => XElement.Parse(AmountChart.Of(plan.Amounts, plan.Settings.Groups)!.Svg());

    private static void AssertLine(XElement picture, Plan plan, string role, Func<AmountPoint, double> probability)
    {
        (double X, double Y)[] corners = Corners(OfRole(picture, "polyline", role).Single());
        Assert.Equal(plan.Amounts.Curve.Count, corners.Length);
        for (int i = 0; i < corners.Length; i++)
        {
            Assert.Equal(plan.Amounts.Curve[i].SampleInGrams, GramsAt(picture, corners[i].X), 1e-3);
            Assert.Equal(100 * probability(plan.Amounts.Curve[i]), PercentAt(picture, corners[i].Y), 0.02);
        }
    }

    private static double GramsAt(XElement picture, double x)
    {
        XElement[] ticks = [.. OfRole(picture, "text", "tick").Where(t => t.Attribute("text-anchor")!.Value == "middle")];
        return Along(x, Of(ticks[0], "x"), Number(ticks[0].Value), Of(ticks[^1], "x"), Number(ticks[^1].Value));
    }

    private static double PercentAt(XElement picture, double y)
    {
        XElement[] ticks = [.. OfRole(picture, "text", "tick").Where(t => t.Value.EndsWith('%'))];
        return Along(y + 5, Of(ticks[0], "y"), Number(ticks[0].Value[..^2]), Of(ticks[^1], "y"), Number(ticks[^1].Value[..^2]));
    }

    private static double Along(double at, double first, double firstValue, double last, double lastValue) =>
        firstValue + ((at - first) / (last - first) * (lastValue - firstValue));
}
