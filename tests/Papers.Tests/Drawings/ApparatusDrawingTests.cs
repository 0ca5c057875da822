using System.Xml.Linq;
using Calx.Papers.Charts;
using Calx.Papers.Drawings;
using Calx.Practicals.Definition;
using static Calx.Papers.Tests.Charts.Drawn;

namespace Calx.Papers.Tests.Drawings;

public class ApparatusDrawingTests
{
    public static TheoryData<string, string> Shipped => [.. BuiltInPracticals.All.SelectMany(p => p.Drawings.Select(d => (p.Id, d.Id)))];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_shipped_drawing_is_well_formed_and_names_each_of_its_parts_once(string practicalId, string id)
    {
        Practical practical = BuiltInPracticals.Find(practicalId)!;
        Drawing drawing = practical.Drawings.Single(d => d.Id == id);
        Chart chart = ApparatusDrawing.Of(practical, id)!;
        XElement picture = XElement.Parse(chart.Svg());

        Assert.Equal(drawing.Label, chart.Heading);
        Assert.Equal(drawing.Label, picture.Element(Svg + "title")!.Value);
        string described = picture.Element(Svg + "desc")!.Value;
        Assert.All(drawing.Parts, part => Assert.Contains(part.Label, described, StringComparison.Ordinal));
        string[] labels = [.. drawing.Parts.Select(p => p.Label).Order(StringComparer.Ordinal)];
        Assert.Equal(labels, labels.Distinct());
        // A long label stands on two lines.
        Assert.Equal(Arrangement.Of(drawing).SelectMany(p => p.Part.Label.Split(' ')), picture.Descendants(Svg + "text").SelectMany(t => t.Value.Split(' ')));
        Assert.Equal(labels.Length, OfRole(picture, "line", "ruled").Count());
        AssertInside(picture);
        AssertNoLabelCovers(picture, id);
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void A_shipped_drawing_is_small_and_prints_legibly_at_150_mm(string practicalId, string id)
    {
        Chart chart = ApparatusDrawing.Of(BuiltInPracticals.Find(practicalId)!, id)!;
        double width = Number(XElement.Parse(chart.Svg()).Attribute("viewBox")!.Value.Split(' ')[2]);

        Assert.True(chart.Inline.Length < 25_000);
        Assert.True(TextWidth.LabelSize / width * 150 / 25.4 * 72 >= 8, "a label is smaller than 8 points");
        Assert.DoesNotContain("<style", chart.Inline, StringComparison.Ordinal);
    }

    [Fact]
    public void The_heating_of_magnesium_is_told_in_words()
    {
        Chart chart = ApparatusDrawing.Of(BuiltInPracticals.Find("magnesium-oxide")!, "heating", id: "here")!;

        Assert.Equal("heat gently at first; heat strongly and lift the lid now and then; heat strongly with the lid ajar; reheat", chart.Caption);
        Assert.Contains(
            "On the bench from left to right: heat-resistant mat; tripod on the heat-resistant mat; pipe-clay triangle on the tripod; crucible on the pipe-clay triangle; "
            + "magnesium ribbon in the crucible; lid, ajar on the crucible, leaving a gap at one side; burner under the tripod, lit.",
            chart.Inline,
            StringComparison.Ordinal);
        Assert.Contains("id=\"here-t\"", chart.Inline, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lid_ajar_leaves_a_gap_on_one_side_and_lies_on_the_rim_on_the_other()
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        (double left, double right) = Rims(practical, "heating");
        (double closedLeft, double closedRight) = Rims(practical, "cooling");

        Assert.True(left > 5 && right > 0, "a gap to the left, the right rim covered");
        Assert.True(closedLeft < 0 && closedRight > 0, "both rims covered");
    }

    [Fact]
    public void The_bench_is_drawn_only_where_something_stands_on_it_without_a_mat()
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;

        Assert.Empty(OfRole(XElement.Parse(ApparatusDrawing.Of(practical, "heating")!.Svg()), "line", "fine"));
        Assert.Single(OfRole(XElement.Parse(ApparatusDrawing.Of(practical, "weighing")!.Svg()), "line", "fine"));
    }

    [Fact]
    public void A_drawing_that_is_not_there_is_none() => Assert.Null(ApparatusDrawing.Of(BuiltInPracticals.Find("magnesium-oxide")!, "titration"));

    /// <summary>How far the lid's ends lie to the right of the crucible's rims, in mm.</summary>
    private static (double Left, double Right) Rims(Practical practical, string id)
    {
        IReadOnlyList<Placed> parts = Arrangement.Of(practical.Drawings.Single(d => d.Id == id));
        PartShape crucible = parts.Single(p => p.Part.Kind == Apparatus.Crucible).Shape;
        PartShape lid = parts.Single(p => p.Part.Kind == Apparatus.Lid).Shape;
        return (lid.Left - crucible.Left, lid.Right - crucible.Right);
    }
}
