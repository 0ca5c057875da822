using Calx.Practicals.Readings;

namespace Calx.Practicals.Marking.Tables;

/// <summary>What came of reading a class's answers. The cases are here, and no others.</summary>
public abstract record MarkingTable
{
    private MarkingTable()
    {
    }

    /// <summary>The table was read, if not all of its cells.</summary>
    /// <param name="Works">What each student handed in, in the order of the file.</param>
    /// <param name="Rejected">Cells that could not be taken, in the order of the file.</param>
    /// <param name="Told">What else a person should know, such as columns that were not read.</param>
    public sealed record Taken(IReadOnlyList<StudentWork> Works, IReadOnlyList<RejectedCell> Rejected, IReadOnlyList<string> Told) : MarkingTable
    {
        /// <summary>Why there are no readings in it, or null where there are some.</summary>
        public string? NoReadings { get; init; }

        /// <summary>Everything that a person should know.</summary>
        public IReadOnlyList<string> Notes => NoReadings is null ? Told : [NoReadings, .. Told];
    }

    /// <summary>Nothing can be taken from it.</summary>
    /// <param name="Reason">What is wrong and what was expected, a sentence without a full stop.</param>
    /// <param name="Cell">The cell it is about, or null where it is the whole table.</param>
    public sealed record Unreadable(string Reason, CellPosition? Cell) : MarkingTable;
}
