using System.Globalization;
using Calx.App.Output;
using Calx.Papers.Tables;
using Calx.Practicals.Definition;
using Calx.Practicals.Readings;

namespace Calx.App.Input;

/// <summary>Reads a class's file of weighings.</summary>
internal static class ClassFile
{
    /// <summary>The class's readings, or null after telling the fault of the file on standard error.</summary>
    public static ClassReadings? Read(string path, Practical practical, BalanceOptions balance, Surroundings surroundings) =>
        Taken(TableFile.Read(surroundings.FullPath(path)), path, practical, balance, surroundings);

    /// <summary>The same from bytes that the program brings along.</summary>
    public static ClassReadings? Read(
        Stream stream, string name, Practical practical, BalanceOptions balance, Surroundings surroundings) =>
        Taken(TableFile.Read(stream), name, practical, balance, surroundings);

    private static ClassReadings? Taken(
        TableFile file, string name, Practical practical, BalanceOptions balance, Surroundings surroundings)
    {
        switch (file)
        {
            case TableFile.Fault fault:
                surroundings.Error.WriteLine($"{name}:1:1: {fault.Reason}");
                return null;
            case TableFile.Opened opened:
                return Taken(ClassTableReader.Read(opened.Sheets, practical, balance), name, surroundings);
            default:
                throw new InvalidOperationException("No other case of a table file exists.");
        }
    }

    private static ClassReadings? Taken(ClassReading reading, string name, Surroundings surroundings)
    {
        switch (reading)
        {
            case ClassReading.Unreadable unreadable:
                string place = string.Create(
                    CultureInfo.InvariantCulture, $"{unreadable.Cell?.Row ?? 1}:{unreadable.Cell?.Column ?? 1}");
                surroundings.Error.WriteLine($"{name}:{place}: {unreadable.Reason}");
                return null;
            case ClassReading.Taken { Readings: ClassReadings readings }:
                if (readings.Groups.Any(g => g.Readings.Count + g.DerivedColumns.Count > 0))
                {
                    return readings;
                }

                foreach (RejectedCell cell in readings.Rejected)
                {
                    surroundings.Error.WriteLine(RejectedLine(name, cell));
                }

                surroundings.Error.WriteLine($"{name}:1:1: no group has a reading that can be used; expected a mass in at least one cell");
                return null;
            default:
                throw new InvalidOperationException("No other case of a class's table exists.");
        }
    }

    /// <summary>A rejected cell on one line: <c>file:row:column: 'text': reason</c>.</summary>
    public static string RejectedLine(string name, RejectedCell cell) => string.Create(
        CultureInfo.InvariantCulture, $"{name}:{cell.Cell.Row}:{cell.Cell.Column}: '{cell.Text}': {cell.Reason}");
}
