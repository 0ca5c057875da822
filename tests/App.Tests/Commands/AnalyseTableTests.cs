using System.Text.Json;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Calx.App.Tests.Commands;

/// <summary>Tables as teachers have them come to the same readings.</summary>
public sealed class AnalyseTableTests
{
    private const string Magnesium = "magnesium-oxide";

    [Theory]
    [InlineData("Group\tempty\tbefore\tafter\nA\t30.00\t30.24\t30.38\n")]
    [InlineData("\uFEFFGroup;empty;before;after\r\nA;30,00;30,24;30,38\r\n")]
    [InlineData("Year 9 magnesium,,,\n,,,\nGroup,empty,before,after\n,,,\nA,30.00 g,30.24 g,30.38g\n")]
    [InlineData("Group,after,empty,before\nA,30.38,30.00,30.24\n")]
    [InlineData("\"Group\",\"Mass of empty crucible and lid / g\",\"Mass of crucible, lid and magnesium / g\",\"Mass after heating / g\"\nA,30.00,30.24,30.38\n")]
    public void Separators_marks_titles_units_and_order_do_not_matter(string csv)
    {
        JsonElement a = ClassInput.Json(Magnesium, csv).Group("A");

        Assert.Equal(0.24, a.Value("sampleMass"), 9);
        Assert.Equal(0.14, a.Value("massChange"), 9);
        Assert.Equal("30.00", a.GetProperty("readings").GetProperty("empty").GetString());
    }

    [Fact]
    public void One_row_a_reading_is_read_too()
    {
        JsonElement answer = ClassInput.Json(
            Magnesium,
            "Group,Reading,Mass / g\nA,empty,30.00\nA,before,30.24\nA,after,30.37\nA,after,30.38\nB,empty,29.10\nB,before,29.35\nB,after,29.51\n");

        Assert.Equal(0.14, answer.Group("A").Value("massChange"), 9);
        Assert.Equal("30.38", answer.Group("A").GetProperty("readings").GetProperty("after2").GetString());
        Assert.Equal(0.16, answer.Group("B").Value("massChange"), 9);
    }

    [Fact]
    public void Trials_of_a_group_are_kept_apart()
    {
        JsonElement answer = ClassInput.Json(
            Magnesium, "Group,Trial,empty,before,after\nA,1,30.00,30.24,30.38\nA,2,30.01,30.27,30.43\nB,1,29.10,29.35,29.51\n");

        JsonElement[] trials = [.. answer.GetProperty("groups").EnumerateArray().Where(g => g.GetProperty("group").GetString() == "A")];
        Assert.Equal(["1", "2"], trials.Select(trial => trial.GetProperty("trial").GetString()));
        Assert.Equal(0.14, trials[0].Value("massChange"), 9);
        Assert.Equal(0.16, trials[1].Value("massChange"), 9);
    }

    [Fact]
    public void A_column_of_another_kind_is_reported_as_not_used()
    {
        JsonElement answer = ClassInput.Json(Magnesium, "Group,empty,before,after,eye colour\nA,30.00,30.24,30.38,brown\n");

        JsonElement column = answer.GetProperty("columns")[4];
        Assert.Equal("eye colour", column.GetProperty("heading").GetString());
        Assert.Equal("E", column.GetProperty("column").GetString());
        Assert.NotEmpty(column.GetProperty("reason").GetString()!);
    }

    [Fact]
    public void What_a_group_noted_stays_with_it()
    {
        JsonElement answer = ClassInput.Json(Magnesium, "Group,empty,before,after,Observations\nA,30.00,30.24,30.38,white smoke\n");

        Assert.Equal(["white smoke"], answer.Group("A").Texts("observations"));
    }

    [Fact]
    public void A_workbook_gives_the_same_as_a_text_file_with_its_missing_zeros_padded()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        Workbook(
            Path.Combine(folder.FullName, "class.xlsx"),
            ["Group", "Mass of empty crucible / g", "Mass of crucible + magnesium / g", "Mass after heating / g"],
            ["A", 30m, 30.24m, 30.38m],
            ["B", 29.1m, 29.35m, 29.51m],
            ["C", 31.4m, 31.63m, "spilt"]);

        Terminal run = Terminal.RunIn(folder.FullName, "analyse", "class.xlsx", "--practical", Magnesium, "--json");

        JsonElement answer = Schemas.Check("analysis", run.Output);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Equal("30.00", answer.Group("A").GetProperty("readings").GetProperty("empty").GetString());
        Assert.Equal(0.14, answer.Group("A").Value("massChange"), 9);
        Assert.Equal(0.16, answer.Group("B").Value("massChange"), 9);
        JsonElement rejected = Assert.Single(answer.GetProperty("rejected").EnumerateArray());
        Assert.Equal("Weighings", rejected.GetProperty("sheet").GetString());
        Assert.Equal((4, "D", "spilt"), (rejected.GetProperty("row").GetInt32(), rejected.GetProperty("column").GetString(), rejected.GetProperty("text").GetString()));
    }

    /// <summary>A workbook of one sheet, numbers in the General format.</summary>
    private static void Workbook(string path, params object[][] rows)
    {
        using var document = SpreadsheetDocument.Create(path, SpreadsheetDocumentType.Workbook);
        WorkbookPart book = document.AddWorkbookPart();
        WorksheetPart sheet = book.AddNewPart<WorksheetPart>();
        var cells = new SheetData();
        foreach (object[] row in rows)
        {
            cells.Append(new Row(row.Select(value => value is decimal number
                ? new Cell { DataType = CellValues.Number, CellValue = new CellValue(number) }
                : new Cell { DataType = CellValues.InlineString, InlineString = new InlineString(new Text((string)value)) })));
        }

        sheet.Worksheet = new Worksheet(cells);
        book.Workbook = new Workbook(new Sheets(new Sheet { Id = book.GetIdOfPart(sheet), SheetId = 1, Name = "Weighings" }));
    }
}
