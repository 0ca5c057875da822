using System.Text.RegularExpressions;
using AngleSharp.Dom;
using Calx.Papers.Documents;
using Calx.Papers.Documents.Html;
using Calx.Papers.Handouts;
using Calx.Papers.Spreadsheets;
using Calx.Papers.Tests.Reports;
using Calx.Practicals.Definition;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using Page = Calx.Papers.Tests.Reports.Page;

namespace Calx.Papers.Tests.Handouts;

/// <summary>What a practical demands stands in every form of a paper, read back as text: headings, cautions, decimals. The form for a word
/// processor is read in <see cref="OfficeTests"/>.</summary>
public sealed partial class FormsTests
{
    [Theory]
    [MemberData(nameof(Practicals))]
    public void All_that_is_on_a_paper_is_on_its_page_to_print(string id)
    {
        foreach (Paper paper in PaperPictureTests.Set(id, Enum.GetValues<PaperKind>()).Documents)
        {
            string page = Spaces().Replace(Page.TextOf(Page.Of(PaperHtml.Of(paper))), " ");
            foreach (string line in Written.LinesOf(paper).Where(l => !l.Contains("[]", StringComparison.Ordinal) && !l.Contains(")/(", StringComparison.Ordinal)))
            {
                Assert.Contains(Spaces().Replace(line, " ").Trim(), page, StringComparison.Ordinal);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Practicals))]
    public void The_page_of_a_student_sheet_has_the_cautions_the_headings_with_units_and_the_decimals(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        foreach (Paper sheet in PaperPictureTests.Set(id, PaperKind.Student).Documents)
        {
            IDocument page = Page.Of(PaperHtml.Of(sheet));
            string text = Page.TextOf(page);
            Assert.All(practical.Hazards, h => Assert.Contains(h.Control, text, StringComparison.OrdinalIgnoreCase));
            string[] headings = [.. page.QuerySelectorAll("h2").Select(h => h.TextContent)];
            Assert.Contains("What you do", headings);
            Assert.Contains("What you read", headings);
            string[] rows = [.. page.QuerySelectorAll("tbody th").Select(h => h.TextContent.Replace('\u00a0', ' '))];
            Assert.All(practical.Readings.Where(r => r.Unit == "g"), r => Assert.Contains(rows, row => row.StartsWith(r.Label, StringComparison.Ordinal) && row.EndsWith(" / g", StringComparison.Ordinal)));
            Assert.Contains("Your balance shows two decimals", text, StringComparison.Ordinal);
            Assert.Matches(@"\b\d+\.\d\d g\b", text);
        }
    }

    [Theory]
    [MemberData(nameof(Practicals))]
    public void The_page_of_risk_notes_has_every_hazard_stop_and_emergency(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        string text = Page.TextOf(Page.Of(PaperHtml.Of(PaperPictureTests.Set(id, PaperKind.Risk).Documents)));
        Assert.All(practical.Hazards, h => Assert.Contains(h.Control, text, StringComparison.OrdinalIgnoreCase));
        Assert.All(practical.Observations.Where(o => o.Stop), o => Assert.Contains(o.Label, text, StringComparison.OrdinalIgnoreCase));
        Assert.All(practical.Emergencies, e => Assert.Contains(e.Act, text, StringComparison.OrdinalIgnoreCase));
    }

    [Theory]
    [MemberData(nameof(Practicals))]
    public void The_workbook_has_the_headings_with_units_and_the_decimals_of_the_balance(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        ResultsWorkbook book = Assert.Single(PaperPictureTests.Set(id, PaperKind.Results).Workbooks);
        using SpreadsheetDocument file = SpreadsheetDocument.Open(new MemoryStream(book.Bytes()), isEditable: false);
        string[] texts = [.. file.WorkbookPart!.WorksheetParts.SelectMany(s => s.Worksheet!.Descendants<Cell>()).Select(c => c.InnerText.Replace('\u00a0', ' '))];
        Assert.All(practical.Readings.Where(r => r.Unit == "g"), r => Assert.Contains(texts, t => t.StartsWith(r.Label, StringComparison.Ordinal) && t.EndsWith(" / g", StringComparison.Ordinal)));
        Assert.Contains(file.WorkbookPart.WorkbookStylesPart!.Stylesheet!.NumberingFormats!.Elements<NumberingFormat>(), f => f.FormatCode!.Value!.StartsWith("0.00#", StringComparison.Ordinal));
    }

    public static TheoryData<string> Practicals => [.. Shelf.Three];

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
