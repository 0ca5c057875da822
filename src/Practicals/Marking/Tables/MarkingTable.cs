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
    /// <param name="Notes">What else a person should know: columns that were not read, a student without readings.</param>
    public sealed record Taken(IReadOnlyList<StudentWork> Works, IReadOnlyList<RejectedCell> Rejected, IReadOnlyList<string> Notes) : MarkingTable;

    /// <summary>Nothing can be taken from it.</summary>
    /// <param name="Reason">What is wrong and what was expected, a sentence without a full stop.</param>
    /// <param name="Cell">The cell it is about, or null where it is the whole table.</param>
    public sealed record Unreadable(string Reason, CellPosition? Cell) : MarkingTable;
}
