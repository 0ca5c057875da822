using Calx.Papers.SheetCheck;
using Calx.Practicals.Definition;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Wordprocessing;
using M = DocumentFormat.OpenXml.Math;

namespace Calx.Papers.Tests.SheetCheck;

/// <summary>What is read of a worksheet, and where it is said to stand.</summary>
public sealed class SheetReadingTests
{
    [Fact]
    public void Places_are_those_that_a_person_counts()
    {
        Sheet sheet = MadeSheet.Opened(MadeSheet.Word("First.\nSecond.\n| a | b | c |\n| d | e | f |\nThird.\n| g |"));
        Assert.Equal("page text, paragraph 3", sheet.Paragraphs.Single(p => p.Text == "Third.").Place.At(0));
        Assert.Equal("table 1, row 2, column 3", sheet.Paragraphs.Single(p => p.Text == "f").Place.At(0));
        Assert.Equal("table 2, row 1, column 1", sheet.Paragraphs.Single(p => p.Text == "g").Place.At(0));
    }

    [Fact]
    public void Lines_of_a_text_file_are_counted_with_their_columns()
    {
        Sheet sheet = MadeSheet.Opened(MadeSheet.Text("\uFEFFOne\n\n  Weigh it\n  and write the weight.\n| Name | weight |\n"));
        SheetFinding[] found = [.. CheckedSheet.Findings(sheet, BuiltInPracticals.Find(InventedSheets.Magnesium)!).Where(f => f.Rule == "weight")];
        Assert.Equal(["line 4, column 17", "line 5, column 10"], found.Select(f => f.Place));
    }

    [Fact]
    public void Merged_cells_hold_for_all_that_they_cover()
    {
        SheetTable table = Assert.Single(MadeSheet.Opened(MadeSheet.Word("| vReading | Mass / g | << |\n| ^^ | Trial 1 | Trial 2 |\n| After | 1 | 2 |")).Tables);
        Assert.Equal("Mass / g", table.At(1, 3)!.Text);
        Assert.Equal("Reading", table.At(2, 1)!.Text);
        Assert.True(table.At(2, 1)!.IsContinued);
        Assert.Equal("2", table.At(3, 3)!.Text);
    }

    [Fact]
    public void What_is_not_on_the_page_is_left_out()
    {
        Sheet sheet = MadeSheet.Opened(MadeSheet.Word(body => body.Append(
            new Paragraph(
                new Run(new Text("Find the ") { Space = SpaceProcessingModeValues.Preserve }),
                new DeletedRun(new Run(new DeletedText("weight"))),
                new InsertedRun(new Run(new Text("mass"))),
                new Run(new RunProperties(new Vanish()), new Text(" weight")),
                new Run(new FieldCode("weight"))),
            new Table(
                new TableRow(new TableCell(new Paragraph(new Run(new Text("kept"))))),
                new TableRow(new TableRowProperties(new Deleted()), new TableCell(new Paragraph(new Run(new Text("weight")))))))));
        Assert.Equal(["Find the mass", "kept"], sheet.Paragraphs.Select(p => p.Text));
        Assert.Single(Assert.Single(sheet.Tables).Rows);
    }

    [Fact]
    public void Raised_and_lowered_figures_are_charges_and_numbers_of_atoms()
    {
        Sheet sheet = MadeSheet.Opened(MadeSheet.Word(body => body.Append(new Paragraph(
            new Run(new Text("2Mg + O")),
            new Run(new RunProperties(new VerticalTextAlignment { Val = VerticalPositionValues.Subscript }), new Text("2")),
            new Run(new Text(" → 2Mg") { Space = SpaceProcessingModeValues.Preserve }),
            new Run(new RunProperties(new VerticalTextAlignment { Val = VerticalPositionValues.Superscript }), new Text("2+")),
            new Run(new Text(" + 2O") { Space = SpaceProcessingModeValues.Preserve }),
            new Run(new RunProperties(new VerticalTextAlignment { Val = VerticalPositionValues.Superscript }), new Text("2-"))))));
        Assert.Equal("2Mg + O2 → 2Mg²⁺ + 2O²⁻", Assert.Single(sheet.Paragraphs).Text);
        Assert.DoesNotContain(CheckedSheet.Findings(sheet, BuiltInPracticals.Find(InventedSheets.Magnesium)!), f => f.Rule == "equation");
    }

    [Fact]
    public void Equations_of_the_word_processor_are_text()
    {
        Sheet sheet = MadeSheet.Opened(MadeSheet.Word(body => body.Append(new Paragraph(
            new Run(new Text("n = ") { Space = SpaceProcessingModeValues.Preserve }),
            new M.OfficeMath(
                new M.Fraction(new M.Numerator(new M.Run(new M.Text("m"))), new M.Denominator(new M.Run(new M.Text("M")))),
                new M.Superscript(new M.Base(new M.Run(new M.Text(" 10"))), new M.SuperArgument(new M.Run(new M.Text("-3")))))))));
        Assert.Equal("n = (m)/(M) 10⁻³", Assert.Single(sheet.Paragraphs).Text);
    }

    [Fact]
    public void A_table_in_a_table_is_one_of_its_own()
    {
        Sheet sheet = MadeSheet.Opened(MadeSheet.Word(body => body.Append(new Table(new TableRow(
            new TableCell(new Paragraph(new Run(new Text("outside"))), new Table(new TableRow(new TableCell(new Paragraph(new Run(new Text("inside")))))), new Paragraph()),
            new TableCell(new Paragraph(new Run(new Text("beside")))))))));
        Assert.Equal(2, sheet.Tables.Count);
        Assert.Equal(["outside", "beside"], sheet.Tables[0].Rows[0].Select(c => c.Text));
        Assert.Equal("table 2, row 1, column 1", sheet.Paragraphs.Single(p => p.Text == "inside").Place.At(0));
    }
}
