using Calx.Papers.Tables;
using Calx.Practicals.Readings;

namespace Calx.Papers.Tests.Tables;

// Files/class.xlsx, .ods and .xls were saved by LibreOffice 7.4.7 from class.csv, an invented class.
public class RealFileTests
{
    private static readonly ExpectedTable Magnesium = new(
        "magnesium-oxide",
        [
            new("empty", "Mass of empty crucible and lid", ExpectedKind.Weighing),
            new("before", "Mass of crucible, lid and magnesium", ExpectedKind.Weighing),
            new("after", "Mass after heating", ExpectedKind.Weighing, repeats: 3, repeatLabel: "Mass after reheating"),
        ]);

    private static string File(string name) => Path.Combine(AppContext.BaseDirectory, "Files", name);

    [Theory]
    [InlineData("class.csv")]
    [InlineData("class.xlsx")]
    public void A_class_is_read_alike_from_text_and_from_a_workbook_that_dropped_its_zeros(string name)
    {
        TableFile.Opened file = Assert.IsType<TableFile.Opened>(TableFile.Read(File(name)));
        ClassReadings read = Assert.IsType<ClassReading.Taken>(ClassTableReader.Read(file.Sheets, Magnesium)).Readings;
        Assert.Equal(["Ash", "Birch", "Cedar", "Dogwood"], read.Groups.Select(g => g.Name));
        Assert.Equal("empty 30.10 g, before 30.34 g, after 30.49 g, after2 30.50 g", string.Join(", ", read.Groups[0].Readings));
        Assert.Equal("before 31.23 g", read.Groups[2].Find("before")!.ToString());
        Assert.Equal(["lid", "up"], read.Groups[2].Remarks.Observations);
        RejectedCell spilt = Assert.Single(read.Rejected);
        Assert.Equal(("D7", "spilt"), (new CellPosition("", spilt.Cell.Row, spilt.Cell.Column).ToString(), spilt.Text));
        Assert.Equal(0.01m, read.Balance.ResolutionInGrams);
        Assert.Empty(read.Notes);
    }

    [Theory]
    [InlineData("class.ods", "OpenDocument")]
    [InlineData("class.xls", "XLS")]
    public void Other_workbooks_are_told_how_to_be_saved(string name, string reason) =>
        Assert.Contains(reason, Assert.IsType<TableFile.Fault>(TableFile.Read(File(name))).Reason, StringComparison.Ordinal);

    [Fact]
    public void A_link_that_is_no_address_does_not_spoil_the_workbook()
    {
        byte[] workbook = MadeWorkbook.Of(("S", null, [MadeWorkbook.Row(1, MadeWorkbook.Text("A1", "Group"))]));
        byte[] linked = MadeWorkbook.With(workbook, "xl/worksheets/_rels/sheet1.xml.rels",
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?><Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">"
            + "<Relationship Id=\"rId1\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships/hyperlink\" "
            + "Target=\"mailto:a b@@c,d?x=[1]\" TargetMode=\"External\"/></Relationships>");
        Assert.Equal(["1: A=Group"], Opening.Rows(Opening.Read(linked)));
    }

    [Fact]
    public void A_file_that_another_program_has_open_is_read_all_the_same()
    {
        using FileStream held = new(File("class.csv"), FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        Assert.IsType<TableFile.Opened>(TableFile.Read(File("class.csv")));
    }
}
