using System.IO.Compression;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Word;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Validation;
using DocumentFormat.OpenXml.Wordprocessing;
using Paper = Calx.Papers.Documents.Paper;

namespace Calx.Papers.Tests.Documents;

/// <summary>Papers for a word processor. The validator is that of the Open XML SDK, after ECMA-376.</summary>
public sealed class PaperWordTests
{
    [Theory]
    [InlineData(SheetSize.A4, false, null)]
    [InlineData(SheetSize.Letter, true, "fff4d6")]
    public void Every_part_of_a_paper_is_valid(SheetSize size, bool isLarge, string? tint)
    {
        using WordprocessingDocument file = Open(SamplePaper.Of(new PaperLook(size, isLarge, tint)));
        Assert.Empty(new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(file, TestContext.Current.CancellationToken).Select(e => $"{e.Path?.XPath}: {e.Description}"));
    }

    [Fact]
    public void The_same_paper_gives_the_same_bytes() => Assert.Equal(PaperWord.Of(SamplePaper.Of()), PaperWord.Of(SamplePaper.Of()));

    [Fact]
    public void No_row_is_split_and_headings_stand_on_every_page()
    {
        using WordprocessingDocument file = Open(SamplePaper.Of());
        TableRow[] rows = [.. file.MainDocumentPart!.Document!.Descendants<TableRow>()];
        Assert.All(rows, row => Assert.NotNull(row.TableRowProperties!.GetFirstChild<CantSplit>()));
        Assert.Equal(2, rows.Count(row => row.TableRowProperties!.GetFirstChild<TableHeader>() is not null));
    }

    [Fact]
    public void Each_numbered_list_begins_at_one()
    {
        using WordprocessingDocument file = Open(SamplePaper.Of());
        int[] lists = [.. file.MainDocumentPart!.Document!.Descendants<NumberingId>().Select(n => n.Val!.Value).Distinct()];
        NumberingInstance[] begun = [.. file.MainDocumentPart.NumberingDefinitionsPart!.Numbering!.Elements<NumberingInstance>()];
        Assert.Equal(lists.Order(), begun.Select(n => n.NumberID!.Value).Order());
        Assert.Equal(2, begun.Count(n => n.GetFirstChild<LevelOverride>()?.StartOverrideNumberingValue?.Val?.Value == 1));
    }

    [Fact]
    public void A_picture_says_what_is_to_be_seen_and_is_there_in_lines_and_as_a_bitmap()
    {
        using WordprocessingDocument file = Open(SamplePaper.Of());
        Assert.Equal(
            "A crucible with its lid on a triangle.",
            file.MainDocumentPart!.Document!.Descendants<DocumentFormat.OpenXml.Drawing.Wordprocessing.DocProperties>().Single().Description!.Value);
        Assert.Equal(["image/png", "image/svg+xml"], file.MainDocumentPart.ImageParts.Select(p => p.ContentType).Order());
    }

    [Fact]
    public void A_character_that_XML_cannot_hold_does_not_damage_the_file()
    {
        var paper = new Paper("odd", "Odd \u0001 name", new RunningHeads("a", "b", "c", null), []);
        using WordprocessingDocument file = Open(paper);
        Assert.Contains("Odd \uFFFD name", file.MainDocumentPart!.Document!.InnerText, StringComparison.Ordinal);
    }

    [Fact]
    public void The_clock_is_not_in_the_file()
    {
        using var zip = new ZipArchive(new MemoryStream(PaperWord.Of(SamplePaper.Of())));
        Assert.Equal("[Content_Types].xml", zip.Entries[0].FullName);
        Assert.All(zip.Entries, e => Assert.Equal(1980, e.LastWriteTime.Year));
    }

    private static WordprocessingDocument Open(Paper paper) => WordprocessingDocument.Open(new MemoryStream(PaperWord.Of(paper)), isEditable: false);
}
