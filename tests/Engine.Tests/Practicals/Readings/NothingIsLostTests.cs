using System.Globalization;
using Calx.Practicals.Readings;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Practicals.Readings;

/// <summary>Whatever stands in a table, no cell disappears without a word.</summary>
public class NothingIsLostTests
{
    private static readonly Gen<string> Word = OneOf(
        "", "", " ", "-", "—", "24.31", "30,12", "30.1", "31.40 g", "31400 mg", "0.03 kg", "-0.24", "1e400", "NaN", "=1+1", "Ash", "Birch", "1",
        "2", "Mean", "spilt", "24.31 (lid)", "#DIV/0!", "1,234.5", "g", "mg", "empty", "after", "before heating", "white smoke; glow", "\u00a0", "\u200b",
        "\0", "\ud800", "Group", "999999999999999999999999999999");

    private static readonly Gen<string> Heading = OneOf(
        "Group", "Trial", "empty", "before / g", "after / mg", "after 2", "after reheating", "Mass of Mg / g", "MgO", "gain", "Notes", "Balance",
        "Time / min", "Mass", "Mass 1", "Mass 2", "Mass 3", "Reading", "Value", "Mass lost", "Colour", "", "crucible", "lid", "weight after", "oxide",
        "\ud83d\ude00", "after 99999999999", "2", "é", "(", "/", "( g )", "± 0.1");

    [Fact]
    public void Every_filled_cell_is_used_ignored_by_its_column_rejected_or_noted() =>
        Gen.Select(Heading.Array[2, 9], Word.Array[2, 9].Array[0, 12], Gen.Bool).Always((headings, rows, shown) =>
        {
            CellTable table = Table(headings, rows, shown);
            if (ClassTableReader.Read([table], Bench.Magnesium) is ClassReading.Taken { Readings.Groups.Count: > 0 } taken)
                Assert.Empty(Lost(table, taken.Readings));
        }, iter: 800);

    [Fact]
    public void Any_characters_in_any_cells_are_read_without_an_exception() =>
        Gen.Select(Gen.String.Array[1, 6].Array[0, 8], Heading.Array[1, 6]).Always((rows, headings) =>
        {
            CellTable table = Table(headings, rows, true);
            Assert.NotNull(ClassTableReader.Read([table], Bench.Magnesium));
        }, iter: 300);

    [Fact]
    public void Any_text_is_a_number_no_reading_or_rejected_with_a_reason() =>
        Gen.String[Gen.Char["0123456789.,-+ gmk\u00a0−eE%/()x"], 0, 14].Always(text =>
        {
            NumberCell cell = NumberText.Read(text, new NumberExpectation());
            // A mass once read is written and read again as itself.
            if (cell is NumberCell.Number number)
                Assert.Equal(number.Value, Assert.IsType<NumberCell.Number>(NumberText.Read(number.Value.ToString(), new NumberExpectation())).Value);
            else
                Assert.True(cell is NumberCell.NoReading or NumberCell.Rejected { Reason.Length: > 0 });
        }, iter: 5_000);

    private static Gen<string> OneOf(params string[] texts) => Gen.Int[0, texts.Length - 1].Select(i => texts[i]);

    private static CellTable Table(string[] headings, string[][] rows, bool shown) => new("S",
    [
        .. rows.Prepend(headings).Select((texts, i) => new CellRow(i + 1,
            [.. texts.Select((text, at) => new TableCell(at + 1, text, shown)).Where(c => c.Text.Length > 0)])),
    ]);

    private static List<string> Lost(CellTable table, ClassReadings read)
    {
        HashSet<string> told = [.. read.Rejected.Select(r => r.Cell.ToString())];
        told.UnionWith(read.Groups.SelectMany(g => g.Readings.Concat(g.DerivedColumns)).Select(r => r.Cell!.ToString()));
        Dictionary<int, ColumnMeaning> meanings = read.Columns.ToDictionary(c => c.Column, c => c.Meaning);
        HashSet<int> groupRows = [.. read.Groups.Select(g => g.Row!.Value)];
        HashSet<int> notedRows = [.. read.Notes.Where(n => n.Cell is not null).Select(n => n.Cell!.Row)];
        // The heading row is told by the columns; what stands above it is a title.
        int heading = HeadingRow(table, read);
        bool isLong = read.Columns.Any(c => c.Meaning is ColumnMeaning.ReadingName);
        List<string> lost = [];
        foreach (CellRow row in table.Rows.Where(r => r.Number > heading))
        {
            foreach (TableCell cell in row.Cells.Where(c => Says(c.Text)))
            {
                ColumnMeaning meaning = meanings[cell.Column];
                bool rowIsUsed = groupRows.Contains(row.Number) || notedRows.Contains(row.Number) || isLong;
                bool accounted = meaning is ColumnMeaning.Ignored
                    || told.Contains(new CellPosition("S", row.Number, cell.Column).ToString())
                    || (meaning is ColumnMeaning.Said or ColumnMeaning.ReadingName && rowIsUsed)
                    || (row.Number == heading + 1 && cell.Text is "g" or "mg" or "after / mg")
                    || notedRows.Contains(row.Number) && read.Notes.Any(n => n.Cell?.Row == row.Number && n.Text.StartsWith("the headings again", StringComparison.Ordinal));
                if (!accounted)
                    lost.Add(row.Number.ToString(CultureInfo.InvariantCulture) + ":" + cell.Column + " '" + cell.Text + "' " + meaning.Word);
            }
        }
        return lost;
    }

    // A heading over two rows has some of its cells in the row above: the lower one of the two is the last that counts.
    private static int HeadingRow(CellTable table, ClassReadings read)
    {
        int firstGroup = read.Groups.Min(g => g.Row!.Value);
        return table.Rows.Last(row => row.Number < firstGroup && read.Columns.Any(c =>
            c.Heading.Length > 0 && row.Cells.Any(cell => cell.Column == c.Column && cell.Text == c.Heading))).Number;
    }

    private static bool Says(string text) => NumberText.Read(text, new NumberExpectation()) is not NumberCell.NoReading;
}
