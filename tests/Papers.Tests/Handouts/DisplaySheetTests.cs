using System.Text;
using System.Xml.Linq;
using Calx.Papers.Charts;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Tests.Charts;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Findings;
using DocumentFormat.OpenXml.Packaging;
using static Calx.Papers.Tests.Charts.Drawn;

namespace Calx.Papers.Tests.Handouts;

/// <summary>The sheet for the wall: the class's result, and nothing by which a group could be told from another.</summary>
public sealed class DisplaySheetTests
{
    private const string Letters = "abcdefghijklmnopqrstuvwxyzÄéßñŁ<>&\"' -Ωж你";

    [Fact]
    public void The_question_stands_at_the_top_and_the_result_is_the_largest()
    {
        Paper sheet = Display(Analysed.Twelve);
        Assert.Equal("What happens to the mass when magnesium burns, and what is the formula of the oxide?", sheet.Title.Text);
        PaperBlock.Paragraph result = sheet.Content.OfType<PaperBlock.Paragraph>().Single(p => p.Look == ParagraphLook.Huge);
        Assert.Equal(Analysed.Twelve.Class.Find("moleRatio")!.Text, result.Text.Text);
        Assert.Equal("moles of oxygen for 1 mole of magnesium", Written.LinesOf(sheet)[2]);
        Assert.InRange(sheet.Content.OfType<PaperBlock.Items>().Single().Texts.Count, 2, 3);
    }

    /// <summary>A law: a hundred classes with names drawn by chance, letters of several scripts and marks of markup among them.</summary>
    [Fact]
    public void No_name_of_a_group_stands_on_it_whatever_the_names_are()
    {
        var chance = new Random(20261126);
        for (int one = 0; one < 100; one++)
        {
            string[] names = [.. Enumerable.Range(0, 12).Select(i => $"q{i}{Drawn(chance)}x")];
            ClassFindings findings = Named(names, oddAtRandom: chance.Next(4));
            Paper sheet = Display(findings, accepted: one % 2 == 0);
            string said = $"{Written.Of(sheet)}\n{PaperHtml.Of(sheet)}\n{(one % 10 == 0 ? Word(sheet) : "")}";
            Assert.All(names, name => Assert.DoesNotContain(name.Trim(), said, StringComparison.OrdinalIgnoreCase));
            Assert.All(names, name => Assert.DoesNotContain(SvgPicture.Escaped(name.Trim()), said, StringComparison.OrdinalIgnoreCase));
        }
    }

    [Fact]
    public void No_odd_result_no_cause_and_nothing_that_was_noted_is_on_it()
    {
        string said = $"{Written.Of(Display(Analysed.Hostile))}\n{PaperHtml.Of(Display(Analysed.Hostile)).Split("<body>")[1]}";
        Assert.All((string[])["odd result", "look into", "smoke", "lid", "grey", "misread", "spilled", "class=\"odd"], word => Assert.DoesNotContain(word, said, StringComparison.Ordinal));
    }

    [Fact]
    public void The_accepted_value_and_the_formula_are_told_only_where_the_teacher_says_so()
    {
        string closed = $"{Written.Of(Display(Analysed.Twelve))}{PaperHtml.Of(Display(Analysed.Twelve))}";
        Assert.DoesNotContain("accepted", closed, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("MgO", closed, StringComparison.Ordinal);
        string open = $"{Written.Of(Display(Analysed.Twelve, accepted: true))}{PaperHtml.Of(Display(Analysed.Twelve, accepted: true))}";
        Assert.Contains("accepted 1", open, StringComparison.Ordinal);
        Assert.Contains("The masses single out MgO (probability 99\u00a0%).", open, StringComparison.Ordinal);
    }

    /// <summary>Letters of 22 point have capitals of 5 mm, which at 2 m are seen under 8.6 minutes of arc; an eye of acuity 1 needs 5
    /// (ISO 8596, from memory).</summary>
    [Fact]
    public void Every_letter_on_it_can_be_read_from_two_metres()
    {
        Paper sheet = Display(Analysed.Twelve);
        PaperBlock.Figure figure = sheet.Content.OfType<PaperBlock.Figure>().Single();
        double unit = figure.WidthInMillimetres / figure.Picture.Width;
        Assert.All(XElement.Parse(figure.Picture.Alone()).Descendants(Svg + "text"), t => Assert.NotEqual("tick", t.Attribute("class")!.Value));
        Assert.InRange(15 * unit / 25.4 * 72, 22, 30);
        using WordprocessingDocument file = WordprocessingDocument.Open(new MemoryStream(PaperWord.Of(sheet)), isEditable: false);
        DocumentFormat.OpenXml.Wordprocessing.Styles styles = file.MainDocumentPart!.StyleDefinitionsPart!.Styles!;
        string[] used = [.. file.MainDocumentPart.Document!.Body!.Descendants<DocumentFormat.OpenXml.Wordprocessing.ParagraphStyleId>().Select(s => s.Val!.Value!).Distinct().Except(["Gap"])];
        Assert.All(used, id => Assert.True(Size(styles, id) >= 44, $"{id} has {Size(styles, id) / 2.0} pt"));
        Assert.Contains(".wall { font-size: 22pt", PaperHtml.Of(sheet), StringComparison.Ordinal);
    }

    [Fact]
    public void On_A3_everything_is_larger_by_the_ratio_of_the_sheets()
    {
        Paper a4 = Display(Analysed.Twelve), a3 = DisplaySheet.Of(
            new PaperSetting(StudentSheetTests.Plans["magnesium-oxide"], PaperOccasion.Unsaid, PaperLook.Usual with { Wall = SheetSize.A3 }, isChecked: true), new ClassOutcome(Analysed.Twelve));
        Assert.Equal(Math.Sqrt(2), a3.Content.OfType<PaperBlock.Figure>().Single().WidthInMillimetres / a4.Content.OfType<PaperBlock.Figure>().Single().WidthInMillimetres, 1e-9);
        Assert.Contains("size: A3", PaperHtml.Of(a3), StringComparison.Ordinal);
        // The other papers of the set stay as they are.
        Assert.Equal(SheetSize.A4, ReportSheetTests.Report(Analysed.Twelve).Look.Size);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(12)]
    [InlineData(18)]
    [InlineData(36)]
    public void Its_chart_has_a_dot_a_group_none_over_another_and_all_inside(int groups)
    {
        foreach (ClassFindings findings in (ClassFindings[])[Analysed.Sound(groups), Analysed.Heated(groups, times: 2), Analysed.Twelve, Analysed.AllOdd])
        {
            XElement picture = XElement.Parse(DotsChart.Of(findings, "moleRatio", accepted: true, room: groups == 12 ? 36 : 144)!.Svg());
            AssertInside(picture);
            AssertNoLabelCovers(picture, "dots");
            (double X, double Y, double R)[] dots = [.. picture.Descendants(Svg + "circle").Select(c => (Of(c, "cx"), Of(c, "cy"), Of(c, "r")))];
            for (int i = 0; i < dots.Length; i++)
            {
                Assert.All(dots[(i + 1)..], other => Assert.True(Math.Sqrt(Math.Pow(other.X - dots[i].X, 2) + Math.Pow(other.Y - dots[i].Y, 2)) >= 2 * other.R - 0.1));
            }
        }

        Assert.Equal(groups, XElement.Parse(DotsChart.Of(Analysed.Sound(groups), "moleRatio")!.Svg()).Descendants(Svg + "circle").Count());
    }

    [Fact]
    public void Values_far_away_are_counted_and_not_shown() =>
        Assert.EndsWith("2 of 12 values lie outside this scale.", DotsChart.Of(Analysed.Twelve, "moleRatio")!.Caption, StringComparison.Ordinal);

    internal static Paper Display(ClassFindings findings, bool isLarge = false, bool accepted = false) =>
        DisplaySheet.Of(ReportSheetTests.Setting(isLarge), new ClassOutcome(findings, ShowsAccepted: accepted));

    private static ClassFindings Named(string[] names, int oddAtRandom)
    {
        var csv = new StringBuilder("Group;empty;before;after;after 2\n");
        for (int i = 0; i < names.Length; i++)
        {
            decimal sample = 0.22m + (0.01m * (i % 7));
            decimal gain = i < oddAtRandom ? -3.21m : Math.Round(sample * 0.65m, 2);
            csv.Append(System.Globalization.CultureInfo.InvariantCulture, $"\"{names[i].Replace("\"", "\"\"", StringComparison.Ordinal)}\";{30.00m + i};{30.00m + i + sample};{30.00m + i + sample + gain};{30.00m + i + sample + gain}\n");
        }

        return Analysed.Of(csv.ToString());
    }

    private static string Drawn(Random chance) => string.Concat(Enumerable.Range(0, 3 + chance.Next(9)).Select(_ => Letters[chance.Next(Letters.Length)]));

    private static string Word(Paper paper)
    {
        using WordprocessingDocument file = WordprocessingDocument.Open(new MemoryStream(PaperWord.Of(paper)), isEditable: false);
        return file.MainDocumentPart!.Document!.OuterXml + string.Concat(file.MainDocumentPart.ImageParts.Where(p => p.ContentType == "image/svg+xml").Select(p => new StreamReader(p.GetStream()).ReadToEnd()));
    }

    /// <summary>Size of a style in half points, its own or that of the document.</summary>
    private static int Size(DocumentFormat.OpenXml.Wordprocessing.Styles styles, string id)
    {
        string? own = styles.Elements<DocumentFormat.OpenXml.Wordprocessing.Style>().Single(s => s.StyleId == id).StyleRunProperties?.FontSize?.Val?.Value;
        string @default = styles.DocDefaults!.RunPropertiesDefault!.RunPropertiesBaseStyle!.FontSize!.Val!.Value!;
        return int.Parse(own ?? @default, System.Globalization.CultureInfo.InvariantCulture);
    }
}
