using System.Globalization;
using System.Xml.Linq;
using Calx.Papers.Charts;
using Calx.Papers.Reports;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using static Calx.Papers.Tests.Charts.Drawn;

namespace Calx.Papers.Tests.Charts;

public class ClassChartTests
{
    private static readonly Practical Magnesium = BuiltInPracticals.Find("magnesium-oxide")!;

    [Theory]
    [InlineData(0, 12)]
    [InlineData(1, 1)]
    [InlineData(1, 12)]
    [InlineData(2, 2)]
    [InlineData(18, 18)]
    public void Every_group_has_a_row_and_those_that_are_done_a_value(int having, int groups)
    {
        Chart chart = Charted(having, groups);
        XElement picture = XElement.Parse(chart.Svg());

        Assert.Equal(Numbers(groups), picture.Descendants(Svg + "text").Where(t => t.Attribute("text-anchor")!.Value == "end").Select(t => t.Value));
        Assert.Equal(having, picture.Descendants(Svg + "circle").Count());
        Assert.EndsWith($": {having} of {groups} groups", chart.Heading, StringComparison.Ordinal);
        AssertInside(picture);
        AssertNoLabelCovers(picture, chart.Heading);
    }

    // A reader at the back: letters of at least a twenty-sixth of the height of the screen, and no crowd of numbers.
    [Fact]
    public void Letters_are_large_and_ticks_few()
    {
        XElement picture = XElement.Parse(Charted(12, 12).Svg());
        double[] box = [.. picture.Attribute("viewBox")!.Value.Split(' ').Select(Number)];

        // Beside the minutes that are left a screen of 1920 by 1080 has 1300 by 900 for it.
        Assert.InRange(box[2] / box[3], 1.4, 1.5);
        Assert.True(14 * Math.Min(1300 / box[2], 900 / box[3]) >= 1080.0 / 36);
        Assert.InRange(picture.Descendants(Svg + "text").Count(t => t.Attribute("class")!.Value == "tick"), 2, 6);
    }

    [Fact]
    public void A_group_without_a_value_keeps_its_place()
    {
        ClassFindings findings = Analysed.Of("Group,empty,before,after\nGroup 2,27.63,27.90,28.07\nGroup 5,29.26,29.52,29.68\n");
        XElement picture = XElement.Parse(ClassChart.Of(Magnesium, Names(6), findings).Svg());
        Dictionary<string, double> rows = picture.Descendants(Svg + "text").Where(t => t.Attribute("text-anchor")!.Value == "end")
            .ToDictionary(t => t.Value, t => Drawn.Of(t, "y") - 5);

        double[] dots = [.. picture.Descendants(Svg + "circle").Select(c => Of(c, "cy"))];
        Assert.Equal([rows["2"], rows["5"]], dots);
        Assert.Contains("No value yet: 1, 3, 4, 6.", picture.Element(Svg + "desc")!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_sees_no_name_no_odd_mark_and_no_accepted_value_until_it_is_shown()
    {
        string[] names = ["Amber", "Birch", "Cedar", "Dove", "Elm", "Finch", "Garnet", "Heron", "Ivy", "Juniper", "Kestrel", "Lark"];
        string before = ClassChart.Of(Magnesium, names, Analysed.Twelve).Inline;
        string shown = ClassChart.Of(Magnesium, names, Analysed.Twelve, new ReportView(Causes: true, Accepted: true, Names: false)).Inline;

        Assert.All(names, name => Assert.DoesNotContain(name, before + shown, StringComparison.Ordinal));
        Assert.DoesNotContain("odd", before, StringComparison.Ordinal);
        Assert.DoesNotContain("theory", before, StringComparison.Ordinal);
        Assert.Contains("class=\"odd-dot\"", shown, StringComparison.Ordinal);
        Assert.Contains("accepted 1", shown, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_class_has_to_know_of_a_group_stands_beside_its_number()
    {
        Chart chart = ClassChart.Of(
            Magnesium, Names(6), Analysed.Sound(4), notes: new Dictionary<int, string> { [2] = "simulated", [6] = "<away>" });
        XElement picture = XElement.Parse(chart.Svg());

        Assert.Equal(
            ["1", "simulated 2", "3", "4", "5", "<away> 6"],
            picture.Descendants(Svg + "text").Where(t => t.Attribute("text-anchor")!.Value == "end").Select(t => t.Value));
        AssertInside(picture);
        AssertNoLabelCovers(picture, chart.Heading);
    }

    [Fact]
    public void One_group_is_no_class()
    {
        Assert.DoesNotContain("class=\"band\"", Charted(1, 12).Inline, StringComparison.Ordinal);
        Assert.Contains("class=\"band\"", Charted(2, 12).Inline, StringComparison.Ordinal);
    }

    private static Chart Charted(int having, int groups) =>
        ClassChart.Of(Magnesium, Names(groups), having == 0 ? null : Analysed.Sound(having));

    private static string[] Names(int groups) => [.. Numbers(groups).Select(n => $"Group {n}")];

    private static IEnumerable<string> Numbers(int groups) =>
        Enumerable.Range(1, groups).Select(n => n.ToString(CultureInfo.InvariantCulture));
}
