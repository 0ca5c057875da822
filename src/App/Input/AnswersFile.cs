using System.Globalization;
using Calx.App.Output;
using Calx.Papers.Tables;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Tables;
using Calx.Practicals.Readings;

namespace Calx.App.Input;

/// <summary>Reads a class's file of readings and answers.</summary>
internal static class AnswersFile
{
    /// <summary>What the students handed in, or null after telling the fault of the file on standard error.</summary>
    public static MarkingTable.Taken? Read(string path, Practical practical, Surroundings surroundings)
    {
        switch (TableFile.Read(surroundings.FullPath(path)))
        {
            case TableFile.Fault fault:
                surroundings.Error.WriteLine($"{path}:1:1: {fault.Reason}");
                return null;
            case TableFile.Opened opened:
                return Taken(MarkingTableReader.Read(opened.Sheets, practical), path, surroundings);
            default:
                throw new InvalidOperationException("No other case of a table file exists.");
        }
    }

    /// <summary>Tells on standard error what could not be taken.</summary>
    public static void Tell(string path, MarkingTable.Taken table, Surroundings surroundings)
    {
        foreach (RejectedCell cell in table.Rejected)
        {
            surroundings.Error.WriteLine(ClassFile.RejectedLine(path, cell));
        }

        foreach (string note in table.Notes)
        {
            surroundings.Error.WriteLine($"{path}: {note}");
        }
    }

    private static MarkingTable.Taken? Taken(MarkingTable table, string path, Surroundings surroundings)
    {
        if (table is MarkingTable.Unreadable unreadable)
        {
            surroundings.Error.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{path}:{unreadable.Cell?.Row ?? 1}:{unreadable.Cell?.Column ?? 1}: {unreadable.Reason}"));
        }

        return table as MarkingTable.Taken;
    }
}
