using System.Globalization;
using Calx.Chemistry.Elements;
using Calx.Measurement.Weighing;
using Calx.Papers.Handouts;
using Calx.Papers.Spreadsheets;
using Calx.Papers.Tests.Handouts;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace Calx.Papers.Tests.Spreadsheets;

/// <summary>A results workbook with the readings of an invented class written into it, as a teacher would.</summary>
internal sealed class FilledWorkbook
{
    private const int FirstRow = 6;

    public FilledWorkbook(string practical, ulong seed)
    {
        PaperSetting setting = StudentSheetTests.Setting(StudentSheetTests.Plans[practical]);
        Class = SimulatedClass.Draw(
            new Circumstances(setting.Practical, []), AtomicWeights.Iupac2024, new SimulationPlan(setting.Plan.Settings.Groups, new Balance(0.01)), seed, threads: 1);
        Bytes = Fill(ResultsWorkbook.Of(setting).Bytes());
    }

    public SimulatedClass Class { get; }

    /// <summary>The workbook; what its formulas give has not been worked out.</summary>
    public byte[] Bytes { get; }

    /// <summary>Row of a group in the class's table.</summary>
    public static int RowOf(int group) => FirstRow + group;

    private byte[] Fill(byte[] empty)
    {
        using var stream = new MemoryStream();
        stream.Write(empty);
        using (var file = SpreadsheetDocument.Open(stream, isEditable: true))
        {
            Worksheet table = Sheets.Named(file, "Class results");
            Worksheet one = Sheets.Named(file, "One group");
            for (int g = 0; g < Class.Groups.Count; g++)
            {
                foreach (SimulatedReading reading in Class.Groups[g].Readings)
                {
                    string heading = WeighingLabel.Heading(Class.Practical, reading.Weighing);
                    Write(Sheets.Cell(table, Sheets.ColumnOf(table, heading), RowOf(g)), reading);
                    if (g == 0)
                    {
                        Write(Sheets.Cell(one, "B", Sheets.RowOf(one, heading)), reading);
                    }
                }
            }
        }

        return stream.ToArray();
    }

    private static void Write(Cell cell, SimulatedReading reading) =>
        cell.CellValue = new CellValue(reading.Written.Value.ToString(CultureInfo.InvariantCulture));
}
