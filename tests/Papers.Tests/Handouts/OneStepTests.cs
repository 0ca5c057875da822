using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using Calx.Papers.Handouts;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Definition;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using DocumentFormat.OpenXml.Wordprocessing;
using Paper = Calx.Papers.Documents.Paper;

namespace Calx.Papers.Tests.Handouts;

/// <summary>The student sheet with one step on each page.</summary>
public sealed class OneStepTests
{
    public static TheoryData<string> Ids => [.. Shelf.Three];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_step_begins_a_page_with_its_number_of_how_many_and_ends_in_a_box_to_tick(string id)
    {
        IReadOnlyList<PaperBlock>[] pages = Pages(Sheet(id));
        string[] steps = [.. Steps(StudentSheet.Of(StudentSheetTests.Setting(StudentSheetTests.Plans[id]), SupportLevel.Open))];
        Assert.Equal(steps.Length + 2, pages.Length);
        for (int i = 0; i < steps.Length; i++)
        {
            IReadOnlyList<PaperBlock> page = pages[i + 1];
            Assert.Equal($"Step {i + 1} of {steps.Length}", Assert.IsType<PaperBlock.Heading>(page[0]).Text.Text);
            PaperBlock.Paragraph step = Assert.IsType<PaperBlock.Paragraph>(page[1]);
            Assert.Equal((steps[i], ParagraphLook.Step), (step.Text.Text, step.Look));
            Assert.Equal(ListKind.Ticks, Assert.IsType<PaperBlock.Items>(page[^1]).Kind);
        }
    }

    [Fact]
    public void A_weighing_has_its_row_where_it_is_taken_and_a_drawing_stands_at_its_step()
    {
        IReadOnlyList<PaperBlock>[] pages = Pages(Sheet("magnesium-oxide"));
        string[] rows = [.. pages[1..^1].SelectMany(p => p.OfType<PaperBlock.Table>()).SelectMany(t => t.Content.Rows.Select(r => r[0].Text.Text.Split('\u00a0')[0]))];
        Assert.Equal(["Mass of empty crucible and lid", "Mass of crucible, lid and magnesium", "Mass after heating", "Mass after reheating", "Mass after reheating 2"], rows);
        Assert.Contains("Heating the magnesium with the lid ajar", Figures(Page(pages, "Heat gently for two minutes")));
        Assert.Contains("Cooling on the triangle with the lid on", Figures(Page(pages, "Gas off.")));
        Assert.Empty(Figures(Page(pages, "See that the balance shows zero")));
    }

    [Fact]
    public void Hot_things_are_warned_of_at_the_flame_and_all_cautions_stand_before_the_first_step()
    {
        IReadOnlyList<PaperBlock>[] pages = Pages(Sheet("magnesium-oxide"));
        PaperBlock.Panel care = Page(pages, "Heat gently for two minutes").OfType<PaperBlock.Panel>().Single();
        Assert.Contains(care.Content.OfType<PaperBlock.Items>().Single().Texts, t => t.Text.StartsWith("Tongs and mat every time", StringComparison.Ordinal));
        string first = string.Join('\n', Written.LinesOf(new Paper("front", "front", new RunningHeads("", "", "", null), pages[0])));
        Assert.All(BuiltInPracticals.Find("magnesium-oxide")!.Hazards, h => Assert.Contains(h.Control, first, StringComparison.Ordinal));
    }

    /// <summary>18 point: what the task of large print asks for; a word processor counts in half points.</summary>
    [Theory]
    [MemberData(nameof(Ids))]
    public void With_large_letters_no_text_of_the_sheet_is_below_18_point_and_the_file_is_valid(string id)
    {
        Paper sheet = Sheet(id, new PaperLook(SheetSize.A4, true, null, IsOneStep: true));
        using WordprocessingDocument file = WordprocessingDocument.Open(new MemoryStream(PaperWord.Of(sheet)), false);
        Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(file, TestContext.Current.CancellationToken).Select(e => $"{e.Path?.XPath}: {e.Description}"));
        Dictionary<string, Style> styles = file.MainDocumentPart!.StyleDefinitionsPart!.Styles!.Elements<Style>().Where(s => s.Type! == StyleValues.Paragraph).ToDictionary(s => s.StyleId!.Value!);
        int usual = int.Parse(file.MainDocumentPart.StyleDefinitionsPart.Styles!.DocDefaults!.RunPropertiesDefault!.RunPropertiesBaseStyle!.FontSize!.Val!.Value!, System.Globalization.CultureInfo.InvariantCulture);
        foreach (Paragraph paragraph in file.MainDocumentPart.Document!.Body!.Descendants<Paragraph>().Where(p => p.InnerText.Trim().Length > 0))
        {
            string style = paragraph.ParagraphProperties?.ParagraphStyleId?.Val?.Value ?? "Normal";
            string? own = styles[style].StyleRunProperties?.FontSize?.Val?.Value;
            Assert.True((own is null ? usual : int.Parse(own, System.Globalization.CultureInfo.InvariantCulture)) >= 36, $"{style}: {paragraph.InnerText}");
        }

        Assert.Equal("52", styles["Step"].StyleRunProperties!.FontSize!.Val!.Value);
    }

    [Fact]
    public void Only_student_sheets_are_taken_apart()
    {
        var setting = new PaperSetting(Planned.Easy, PaperOccasion.Unsaid, new PaperLook(SheetSize.A4, false, null, IsOneStep: true), isChecked: false);
        Assert.All(
            PaperSet.Of(setting, Enum.GetValues<PaperKind>(), [SupportLevel.Open]).Documents,
            p => Assert.Equal(p.Id == "student-sheet-open-one-step", p.Look.IsOneStep));
    }

    internal static Paper Sheet(string id, PaperLook? look = null) => StudentSheet.Of(
        new PaperSetting(StudentSheetTests.Plans[id], PaperOccasion.Unsaid, look ?? new PaperLook(SheetSize.A4, false, null, IsOneStep: true), isChecked: false), SupportLevel.Open);

    private static IEnumerable<string> Steps(Paper sheet) =>
        Written.Blocks(sheet.Content).OfType<PaperBlock.Items>().First(i => i.Kind == ListKind.Numbers).Texts.Select(t => t.Text);

    private static IEnumerable<string> Figures(IReadOnlyList<PaperBlock> page) => page.OfType<PaperBlock.Figure>().Select(f => f.Caption!.Text);

    private static IReadOnlyList<PaperBlock> Page(IReadOnlyList<PaperBlock>[] pages, string begins) =>
        pages.Single(p => p.OfType<PaperBlock.Paragraph>().Any(t => t.Text.Text.StartsWith(begins, StringComparison.Ordinal)));

    private static IReadOnlyList<PaperBlock>[] Pages(Paper sheet)
    {
        var pages = new List<List<PaperBlock>> { new() };
        foreach (PaperBlock block in sheet.Content)
        {
            if (block is PaperBlock.PageBreak)
            {
                pages.Add([]);
            }
            else
            {
                pages[^1].Add(block);
            }
        }

        return [.. pages];
    }
}
