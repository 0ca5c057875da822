using Calx.Papers.Tables;
using DocumentFormat.OpenXml.Spreadsheet;
using static Calx.Papers.Tests.Tables.MadeWorkbook;

namespace Calx.Papers.Tests.Tables;

public class XlsxTests
{
    // What each format shows: ECMA-376 part 1, 18.8.30 and 18.8.31.
    [Theory]
    [InlineData(General, "15.1", "15.1", false)]
    [InlineData(General, "24.310000000000002", "24.31", false)]
    [InlineData(General, "0.16000000000000014", "0.16", false)]
    [InlineData(General, "30", "30", false)]
    [InlineData(TwoDecimals, "15.1", "15.10", true)]
    [InlineData(TwoDecimals, "24.3149", "24.31", true)]
    [InlineData(TwoDecimals, "24.305", "24.31", true)]
    [InlineData(TwoDecimals, "-0.03", "-0.03", true)]
    [InlineData(TwoDecimals, "0.5", "0.50", true)]
    [InlineData(Grams, "24.31", "24.31 g", true)]
    [InlineData(Accounting, "1234.5", "1234.500", true)]
    [InlineData(Accounting, "-0.25", "-0.250", true)]
    [InlineData(UpToThree, "24.31", "24.31", false)]
    [InlineData(UpToThree, "24", "24.0", false)]
    [InlineData(Thousands, "1234.5", "1234.50", true)]
    [InlineData(Percent, "0.4", "40.00%", true)]
    [InlineData(Date, "45000", "2023-03-15", true)]
    [InlineData(General, "1E+300", "1E+300", false)]
    public void A_number_is_taken_as_its_format_shows_it(uint style, string stored, string shown, bool decimalsShown)
    {
        TableFile.Opened file = Opening.Read(Of(("Sheet1", null, [Row(1, Number("B1", stored, style))])));
        Assert.Equal(shown, Opening.Text(file, "B1"));
        Assert.Equal(decimalsShown, Opening.Cell(file, "B1").DecimalsShown);
    }

    [Fact]
    public void Texts_formulas_truths_and_errors_are_taken_as_shown()
    {
        TableFile.Opened file = Opening.Read(Of(("Sheet1", null,
        [
            Row(2, Shared("A2", 1), Text("B2", "in place"), Number("C2", "0.24", TwoDecimals, "C1-B1"), Typed("D2", "1", CellValues.Boolean)),
            Row(5, Typed("A5", "#DIV/0!", CellValues.Error), Typed("B5", "=1+1", CellValues.String), Number("C5", "", General, "B1-A1")),
        ])));
        Assert.Equal(["2: A=Group B=in place C=0.24 D=TRUE", "5: A=#DIV/0! B==1+1 C==B1-A1"], Opening.Rows(file));
        Assert.Contains("1 formula without a stored value", Assert.Single(file.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Hidden_sheets_are_passed_over_and_told()
    {
        Row[] rows = [Row(1, Text("A1", "x"))];
        TableFile.Opened file = Opening.Read(Of(("Old", SheetStateValues.Hidden, rows), ("Very", SheetStateValues.VeryHidden, [Row(1, Text("A1", "y"))]),
            ("Empty", null, []), ("Class", null, [Row(1, Text("A1", "z"))])));
        Assert.Equal(["Class"], file.Sheets.Select(s => s.Sheet));
        Assert.Equal(["sheet 'Old' is hidden and was not read", "sheet 'Very' is hidden and was not read"], file.Notes);
    }

    [Fact]
    public void A_group_merged_over_its_trials_stands_in_each_of_their_rows()
    {
        TableFile.Opened file = Opening.Read(Of([("S", null,
        [
            Row(1, Text("A1", "Burning magnesium")),
            Row(2, Text("A2", "Group"), Text("B2", "Trial"), Text("C2", "after")),
            Row(3, Text("A3", "Ash"), Number("B3", "1"), Number("C3", "30.49")),
            Row(4, Number("B4", "2"), Number("C4", "30.5")),
        ])], ["A1:C1", "A3:A4", "A9:A1048576"]));
        Assert.Equal("4: A=Ash B=2 C=30.5", Opening.Rows(file)[^1]);
        Assert.Equal("1: A=Burning magnesium", Opening.Rows(file)[0]);
    }

    [Fact]
    public void Hidden_rows_are_read_and_told()
    {
        Row hidden = Row(2, Text("A2", "Ash"));
        hidden.Hidden = true;
        TableFile.Opened file = Opening.Read(Of(("S", null, [Row(1, Text("A1", "Group")), hidden])));
        Assert.Equal(2, file.Sheets[0].Rows.Count);
        Assert.Contains("1 hidden row,", Assert.Single(file.Notes), StringComparison.Ordinal);
    }

    [Fact]
    public void Cells_and_rows_without_references_follow_one_another()
    {
        Row row = new(Text("A1", "a"), Text("B1", "b"));
        foreach (Cell cell in row.Elements<Cell>())
            cell.CellReference = null;
        Assert.Equal(["1: A=a B=b"], Opening.Rows(Opening.Read(Of(("S", null, [row])))));
    }

    [Fact]
    public void Too_many_rows_or_columns_are_told()
    {
        Row[] rows = [.. Enumerable.Range(1, 5).Select(i => Row((uint)i, Number($"A{i}", "1")))];
        Assert.Contains("more than 4 rows", Opening.Refused(Of(("S", null, rows)), new TableLimits(mostRows: 4)).Reason, StringComparison.Ordinal);
        byte[] wide = Of(("S", null, [Row(1, Text("ZZ1", "far out"))]));
        Assert.Contains("cell ZZ1", Opening.Refused(wide).Reason, StringComparison.Ordinal);
    }
}
