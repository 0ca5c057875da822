using System.Text;
using Calx.Papers.Tables;
using Calx.Practicals.Readings;

namespace Calx.Papers.Tests.Tables;

/// <summary>Opens tables for the tests and writes them down with bars between cells.</summary>
internal static class Opening
{
    public static TableFile.Opened Read(byte[] bytes, TableLimits? limits = null)
    {
        TableFile file = TableFile.Read(new MemoryStream(bytes), limits);
        return file as TableFile.Opened ?? throw new Xunit.Sdk.XunitException("Not read: " + ((TableFile.Fault)file).Reason);
    }

    public static TableFile.Opened Read(string text) => Read(Encoding.UTF8.GetBytes(text));

    public static TableFile.Fault Refused(byte[] bytes, TableLimits? limits = null) =>
        Assert.IsType<TableFile.Fault>(TableFile.Read(new MemoryStream(bytes), limits));

    /// <summary>Rows as <c>1: A=Group B=empty</c>.</summary>
    public static string[] Rows(TableFile.Opened file, int sheet = 0) => [.. file.Sheets[sheet].Rows.Select(
        row => $"{row.Number}: " + string.Join(" ", row.Cells.Select(c => $"{CellPosition.LetterOf(c.Column)}={c.Text}")))];

    public static string Text(TableFile.Opened file, string cell) => Cell(file, cell).Text;

    public static TableCell Cell(TableFile.Opened file, string cell) => file.Sheets[0].Rows
        .SelectMany(row => row.Cells.Select(c => (Name: new CellPosition("", row.Number, c.Column).ToString(), Cell: c)))
        .First(c => c.Name == cell).Cell;
}
