using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Papers.Spreadsheets;
using Calx.Papers.Tables;
using Calx.Practicals.Definition;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Calx.Papers.Tests.Spreadsheets;

/// <summary>What a spreadsheet program makes of the formulas, against the values of the practical's own: two programs that share no code.</summary>
public sealed class RecalculatedTests
{
    [Theory]
    [InlineData("magnesium-oxide")]
    [InlineData("copper-sulfate-hydrate")]
    [InlineData("sodium-hydrogencarbonate")]
    public async Task Every_answer_is_what_the_practical_says(string id)
    {
        var filled = new FilledWorkbook(id, seed: 7);
        Practical practical = filled.Class.Practical;
        byte[] saved = await Office.Recalculated(filled.Bytes, TestContext.Current.CancellationToken);
        using SpreadsheetDocument was = Sheets.Open(filled.Bytes);
        using SpreadsheetDocument file = Sheets.Open(saved);
        Worksheet headings = Sheets.Named(was, "Class results");
        Worksheet table = Sheets.Named(file, "Class results");
        Worksheet one = Sheets.Named(file, "One group");
        int groupAnswers = Sheets.RowOf(Sheets.Named(was, "One group"), Heading(practical.Answers[0], capital: true));
        for (int a = 0; a < practical.Answers.Count; a++)
        {
            string column = Sheets.ColumnOf(headings, "Calculated " + Heading(practical.Answers[a], capital: false));
            double[] expected = [.. filled.Class.Groups.Select(g => Answers(practical, g)[practical.Answers[a].Id])];
            double[] found = [.. expected.Select((_, g) => Number(table, column, FilledWorkbook.RowOf(g)))];
            Assert.All(expected.Zip(found), pair => Assert.Equal(pair.First, pair.Second, 1e-9 * Math.Max(1, Math.Abs(pair.First))));
            Assert.Equal(expected[0], Number(one, "B", groupAnswers + a), 1e-9 * Math.Max(1, Math.Abs(expected[0])));
            double[] order = [.. expected.Order()];
            Assert.Equal((order[5] + order[6]) / 2, Number(table, column, FilledWorkbook.RowOf(12)), 1e-9 * Math.Max(1, Math.Abs(order[6])));
            Assert.Equal(12, Number(table, column, FilledWorkbook.RowOf(13)));
        }
    }

    [Fact]
    public async Task What_lacks_a_reading_is_empty_and_what_cannot_be_divided_is_a_dash()
    {
        var filled = new FilledWorkbook("magnesium-oxide", seed: 7);
        byte[] changed = Changed(filled.Bytes, (sheet, cell) =>
        {
            cell(sheet, "Mass of empty crucible and lid / g", 0).CellValue = null;
            foreach (string after in (string[])["Mass after heating / g", "Mass after reheating / g", "Mass after reheating 2 / g"])
            {
                cell(sheet, after, 1).CellValue = (CellValue)cell(sheet, "Mass of crucible, lid and magnesium / g", 1).CellValue!.CloneNode(true);
                cell(sheet, after, 2).CellValue = null;
            }
        });
        using SpreadsheetDocument file = Sheets.Open(await Office.Recalculated(changed, TestContext.Current.CancellationToken));
        using SpreadsheetDocument was = Sheets.Open(changed);
        Worksheet headings = Sheets.Named(was, "Class results");
        string Shown(string heading, int group) =>
            Sheets.TextOf(file, Sheets.Cell(Sheets.Named(file, "Class results"), Sheets.ColumnOf(headings, heading), FilledWorkbook.RowOf(group)));
        Assert.Equal("", Shown("Calculated mass of magnesium / g", 0));
        Assert.Equal("", Shown("Calculated ratio Mg : O", 0));
        Assert.NotEqual("", Shown("Calculated mass of oxygen / g", 0));
        Assert.Equal("0", Shown("Calculated mass of oxygen / g", 1));
        Assert.Equal("–", Shown("Calculated ratio Mg : O", 1));
        Assert.Equal("", Shown("Calculated mass of oxygen / g", 2));
    }

    /// <summary>The formula of the warning, put into a cell beside each reading. 0.29 × 100 is 28.999999999999996 in binary arithmetic: a
    /// check that cuts decimals off would refuse it.</summary>
    [Fact]
    public async Task The_check_asks_about_what_the_balance_cannot_have_shown()
    {
        (string Written, bool Passes)[] readings =
            [("28.31", true), ("28.3", true), ("28", true), ("0.29", true), ("99999.99", true), ("28.312", false), ("28.310001", false), ("-28.31", false), ("0", false)];
        byte[] changed = Changed(new FilledWorkbook("magnesium-oxide", seed: 7).Bytes, (sheet, cell) =>
        {
            for (int i = 0; i < readings.Length; i++)
            {
                Cell reading = cell(sheet, "Mass of empty crucible and lid / g", i);
                reading.CellValue = new CellValue(readings[i].Written);
                Row row = (Row)reading.Parent!;
                row.Append(new Cell { CellReference = $"Z{row.RowIndex!.Value}", CellFormula = new CellFormula(ReadingCheck.Passes(reading.CellReference!.Value!, isMass: true)) });
            }
        });
        using SpreadsheetDocument file = Sheets.Open(await Office.Recalculated(changed, TestContext.Current.CancellationToken));
        Worksheet table = Sheets.Named(file, "Class results");
        Assert.Equal(readings.Select(r => r.Passes ? "1" : "0"), readings.Select((_, i) => Sheets.Cell(table, "Z", FilledWorkbook.RowOf(i)).CellValue!.Text));
        // It was understood as a check too: the program saves it again, with 0 for FALSE.
        Assert.Equal(ReadingCheck.Passes("C6", isMass: true).Replace("FALSE", "0", StringComparison.Ordinal), table.Descendants<DataValidation>().First().Formula1!.Text.Replace(" ", "", StringComparison.Ordinal));
    }

    /// <summary>Saved by another program, every reading still stands in its cell as it was written, and no formula is said to lack a value.</summary>
    [Fact]
    public async Task A_saved_workbook_is_read_as_it_was_written()
    {
        var filled = new FilledWorkbook("copper-sulfate-hydrate", seed: 3);
        byte[] saved = await Office.Recalculated(filled.Bytes, TestContext.Current.CancellationToken);
        string[] Readings(byte[] workbook, out string notes)
        {
            TableFile.Opened opened = Assert.IsType<TableFile.Opened>(TableFile.Read(new MemoryStream(workbook)));
            notes = string.Join('\n', opened.Notes);
            ClassReadings read = Assert.IsType<ClassReading.Taken>(ClassTableReader.Read(opened.Sheets, filled.Class.Practical)).Readings;
            Assert.Empty(read.Rejected);
            return [.. read.Groups.SelectMany(g => g.Readings.Select(r => $"{g.Name} {r.Id} {r.Value}"))];
        }

        string[] written = [.. filled.Class.Groups.SelectMany(g => g.Readings.Select(r => $"{g.Number} {r.Weighing.Id} {r.Written}"))];
        Assert.Equal(written, Readings(filled.Bytes, out _));
        Assert.Equal(written, Readings(saved, out string notes));
        Assert.DoesNotContain("without a stored value", notes, StringComparison.Ordinal);
    }

    private static byte[] Changed(byte[] workbook, Action<Worksheet, Func<Worksheet, string, int, Cell>> change)
    {
        using var stream = new MemoryStream();
        stream.Write(workbook);
        using (var file = SpreadsheetDocument.Open(stream, isEditable: true))
        {
            change(Sheets.Named(file, "Class results"), (sheet, heading, group) => Sheets.Cell(sheet, Sheets.ColumnOf(sheet, heading), FilledWorkbook.RowOf(group)));
        }

        return stream.ToArray();
    }

    private static double Number(Worksheet sheet, string column, int row) =>
        double.Parse(Sheets.Cell(sheet, column, row).CellValue!.Text, CultureInfo.InvariantCulture);

    private static string Heading(AnswerDefinition answer, bool capital)
    {
        string label = capital ? char.ToUpperInvariant(answer.Label[0]) + answer.Label[1..] : answer.Label;
        return answer.Unit == "1" ? label : $"{label} / {answer.Unit}";
    }

    /// <summary>The answers of a group from its own readings, a repeated one by its last.</summary>
    private static Dictionary<string, double> Answers(Practical practical, SimulatedGroup group)
    {
        var known = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (SimulatedReading reading in group.Readings)
        {
            known[reading.Weighing.Reading] = (double)reading.Written.Value;
        }

        foreach (AnswerDefinition answer in practical.Answers)
        {
            known[answer.Id] = answer.Formula.Evaluate((string name) => known[name], (string f) => Calx.Chemistry.Formulas.Formula.Parse(f).Value!.MolarMass(AtomicWeights.Iupac2024).Value);
        }

        return known;
    }
}
