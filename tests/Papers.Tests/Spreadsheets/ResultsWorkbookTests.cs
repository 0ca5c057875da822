using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Spreadsheets;
using Calx.Papers.Tables;
using Calx.Papers.Tests.Handouts;
using Calx.Papers.Tests.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;
using Calx.Practicals.Planning;
using Calx.Practicals.Readings;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;

namespace Calx.Papers.Tests.Spreadsheets;

/// <summary>The workbook for a class's results. The validator is that of the Open XML SDK, after ECMA-376.</summary>
public sealed class ResultsWorkbookTests
{
    [Theory]
    [MemberData(nameof(Practicals))]
    public void Every_part_is_valid(string id)
    {
        foreach (PaperLook look in (PaperLook[])[PaperLook.Usual, new PaperLook(SheetSize.Letter, true, null)])
        {
            using SpreadsheetDocument file = Of(new PaperSetting(StudentSheetTests.Plans[id], new PaperOccasion("9F", "3 December", null, null, null, "1 December"), look, isChecked: false));
            Assert.Empty(new OpenXmlValidator(FileFormatVersions.Office2019).Validate(file, TestContext.Current.CancellationToken).Select(e => $"{e.Path?.XPath}: {e.Description}"));
        }
    }

    /// <summary>Labels with markup, trials, a reading that is never taken, one group alone.</summary>
    [Fact]
    public void No_plan_makes_a_file_that_cannot_be_opened()
    {
        foreach (Plan plan in Planned.All)
        {
            using SpreadsheetDocument file = Of(StudentSheetTests.Setting(plan));
            Assert.Empty(new OpenXmlValidator(FileFormatVersions.Office2019).Validate(file, TestContext.Current.CancellationToken).Select(e => $"{e.Path?.XPath}: {e.Description}"));
        }
    }

    [Fact]
    public void The_same_lesson_gives_the_same_bytes() => Assert.Equal(Bytes(Planned.Hydrate), Bytes(Planned.Hydrate));

    [Theory]
    [MemberData(nameof(Practicals))]
    public void An_analysis_knows_every_reading_and_takes_no_answer_for_one(string id)
    {
        TableFile.Opened opened = Assert.IsType<TableFile.Opened>(TableFile.Read(new MemoryStream(Bytes(StudentSheetTests.Plans[id]))));
        Practical practical = BuiltInPracticals.Find(id)!;
        ClassReadings read = Assert.IsType<ClassReading.Taken>(ClassTableReader.Read(opened.Sheets, practical)).Readings;
        string[] readings = [.. practical.Readings.SelectMany(r => Enumerable.Range(1, r.Repeats).Select(n => TakenReading.IdOf(r.Id, n)))];
        Assert.Equal(
            ["group", "balance", .. readings, "observations", .. practical.Answers.Select(_ => "ignored")],
            read.Columns.Select(c => c.Meaning switch
            {
                ColumnMeaning.Reading reading => TakenReading.IdOf(reading.BaseId, reading.Occurrence),
                ColumnMeaning.Said said => said.Kind.ToString().ToLowerInvariant(),
                ColumnMeaning.Ignored => "ignored",
                _ => c.Meaning.Word,
            }));
    }

    [Fact]
    public void Each_trial_has_its_row()
    {
        using SpreadsheetDocument file = Of(StudentSheetTests.Setting(Planned.Hydrate));
        Worksheet table = Sheets.Named(file, "Class results");
        Assert.Equal("Trial", Sheets.Cell(table, "B", 5).InnerText);
        (string, string)[] names = [.. Enumerable.Range(6, 36).Select(row => (Sheets.Cell(table, "A", row).InnerText, Sheets.Cell(table, "B", row).InnerText))];
        Assert.Equal(("1", "1"), names[0]);
        Assert.Equal(("1", "2"), names[1]);
        Assert.Equal(("18", "2"), names[35]);
        Assert.Equal(42, Sheets.RowOf(table, "Median"));
    }

    [Fact]
    public void Only_what_is_to_be_written_can_be_written_and_no_password_keeps_the_rest()
    {
        using SpreadsheetDocument file = Of(StudentSheetTests.Setting(StudentSheetTests.Plans["magnesium-oxide"]));
        CellFormat[] formats = [.. file.WorkbookPart!.WorkbookStylesPart!.Stylesheet!.CellFormats!.Elements<CellFormat>()];
        bool IsLocked(Cell cell) => formats[cell.StyleIndex!.Value].Protection!.Locked!.Value;
        foreach (string name in (string[])["Class results", "One group", "Constants", "About"])
        {
            Worksheet sheet = Sheets.Named(file, name);
            SheetProtection protection = Assert.Single(sheet.Elements<SheetProtection>());
            Assert.True(protection.Sheet!.Value);
            Assert.Null(protection.Password);
            Assert.Null(protection.HashValue);
            Assert.All(sheet.Descendants<Cell>().Where(c => c.CellFormula is not null), cell => Assert.True(IsLocked(cell)));
        }

        Worksheet table = Sheets.Named(file, "Class results");
        Assert.All(table.Descendants<Row>().Single(r => r.RowIndex! == 5).Elements<Cell>(), cell => Assert.True(IsLocked(cell)));
        foreach (string column in (string[])["A", "B", "C", "D", "E", "F", "G", "H"])
        {
            Assert.All(Enumerable.Range(6, 12), row => Assert.False(IsLocked(Sheets.Cell(table, column, row))));
        }
    }

    [Fact]
    public void A_reading_that_cannot_be_is_warned_of_and_never_refused()
    {
        using SpreadsheetDocument file = Of(StudentSheetTests.Setting(StudentSheetTests.Plans["magnesium-oxide"]));
        DataValidation[] checks = [.. Sheets.Named(file, "Class results").Descendants<DataValidation>()];
        Assert.Equal(["C6:C17", "D6:D17", "E6:E17", "F6:F17", "G6:G17"], checks.Select(c => c.SequenceOfReferences!.InnerText));
        Assert.All(checks, c => Assert.Equal(DataValidationErrorStyleValues.Warning, c.ErrorStyle!.Value));
        Assert.Equal("IF(ISNUMBER(C6),AND(C6>0,ABS(C6-ROUND(C6,balance_decimals))<0.000000001),FALSE)", checks[0].Formula1!.Text);
        Assert.Equal("Constants!$B$7", file.WorkbookPart!.Workbook!.DefinedNames!.Elements<DefinedName>().Single(n => n.Name == "balance_decimals").Text);
        Assert.InRange(checks[0].Error!.Value!.Length, 1, 255);
        Assert.InRange(checks[0].ErrorTitle!.Value!.Length, 1, 32);
    }

    [Fact]
    public void Answers_are_live_and_empty_until_there_is_something_to_work_out()
    {
        using SpreadsheetDocument file = Of(StudentSheetTests.Setting(StudentSheetTests.Plans["magnesium-oxide"]));
        Worksheet table = Sheets.Named(file, "Class results");
        Assert.Equal("IF(COUNT(D6,C6)<2,\"\",IFERROR(D6-C6,\"–\"))", Sheets.Cell(table, "I", 6).CellFormula!.Text);
        Assert.Equal(
            "IF(COUNT(D6)+MIN(1,COUNT(E6,F6,G6))<2,\"\",IFERROR(IF(ISNUMBER(G6),G6,IF(ISNUMBER(F6),F6,E6))-D6,\"–\"))", Sheets.Cell(table, "J", 6).CellFormula!.Text);
        Assert.Equal("IF(COUNT(I6)<1,\"\",IFERROR(I6/M_Mg,\"–\"))", Sheets.Cell(table, "K", 6).CellFormula!.Text);
        Assert.All(table.Descendants<Cell>().Where(c => c.CellFormula is not null), c => Assert.Equal("", c.CellValue!.Text));
    }

    [Fact]
    public void An_answer_whose_reading_is_never_taken_has_no_column()
    {
        using SpreadsheetDocument file = Of(StudentSheetTests.Setting(Planned.WithoutEmpty));
        string[] headings = [.. Sheets.Named(file, "Class results").Descendants<Row>().Single(r => r.RowIndex! == 5).Elements<Cell>().Select(c => Sheets.Plain(c.InnerText))];
        Assert.Equal("Calculated mass of oxygen / g", headings.Single(h => h.StartsWith("Calculated mass", StringComparison.Ordinal)));
        Assert.DoesNotContain(headings, h => h.Contains("empty", StringComparison.Ordinal));
    }

    [Fact]
    public void Pages_are_wide_have_their_headings_and_say_what_they_belong_to()
    {
        using SpreadsheetDocument file = Of(new PaperSetting(
            StudentSheetTests.Plans["magnesium-oxide"], new PaperOccasion("9F & G", "3 December", null, null, null, "1 December"), new PaperLook(SheetSize.Letter, false, null), isChecked: true));
        Worksheet table = Sheets.Named(file, "Class results");
        PageSetup page = table.Elements<PageSetup>().Single();
        Assert.Equal((1u, 1u, 0u), (page.PaperSize!.Value, page.FitToWidth!.Value, page.FitToHeight!.Value));
        Assert.Equal(OrientationValues.Landscape, page.Orientation!.Value);
        Assert.Equal("'Class results'!$5:$5", file.WorkbookPart!.Workbook!.DefinedNames!.Elements<DefinedName>().First(n => n.Name == "_xlnm.Print_Titles").Text);
        Assert.Equal("&LResults table: Burning magnesium in a crucible&R9F && G · 3 December", table.Descendants<OddHeader>().Single().Text);
        Assert.Equal("&Lmagnesium-oxide, version 2 · printed 1 December&R&P of &N", table.Descendants<OddFooter>().Single().Text);
        Pane pane = table.Descendants<Pane>().Single();
        Assert.Equal(("B6", 5d, 1d), (pane.TopLeftCell!.Value, pane.VerticalSplit!.Value, pane.HorizontalSplit!.Value));
        Assert.DoesNotContain("DRAFT", table.InnerText, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("=HYPERLINK(\"http://a.example\",\"9F\")")]
    [InlineData("+9F")]
    [InlineData("-9F")]
    [InlineData("@SUM(A1)")]
    public void What_looks_like_a_formula_is_a_text(string name)
    {
        using SpreadsheetDocument file = Of(new PaperSetting(StudentSheetTests.Plans["magnesium-oxide"], new PaperOccasion(name, name, null, null, null, name), null, isChecked: false));
        Cell cell = Sheets.Named(file, "Class results").Descendants<Cell>().First(c => c.InnerText == name);
        Assert.Equal(CellValues.InlineString, cell.DataType!.Value);
        Assert.Null(cell.CellFormula);
        Assert.True(file.WorkbookPart!.WorkbookStylesPart!.Stylesheet!.CellFormats!.Elements<CellFormat>().ElementAt((int)cell.StyleIndex!.Value).QuotePrefix!.Value);
        Assert.DoesNotContain(file.WorkbookPart.WorksheetParts.SelectMany(p => p.Worksheet!.Descendants<CellFormula>()), f => f.Text.Contains(name[1..], StringComparison.Ordinal));
    }

    [Fact]
    public void A_very_long_name_does_not_damage_the_page_head()
    {
        var print = new SheetPrint(SheetSize.A4, new RunningHeads(new string('&', 400), new string('x', 400), new string('y', 400), null), PaperLanguage.BritishEnglish);
        Assert.InRange(print.Head.Length, 100, 255);
        Assert.InRange(print.Foot.Length, 100, 255);
        Assert.Matches("^&L(&&)+…&Rx+…$", print.Head);
    }

    public static TheoryData<string> Practicals => [.. Shelf.Three];

    private static byte[] Bytes(Plan plan) => ResultsWorkbook.Of(StudentSheetTests.Setting(plan)).Bytes();

    private static SpreadsheetDocument Of(PaperSetting setting) => Sheets.Open(ResultsWorkbook.Of(setting).Bytes());
}
