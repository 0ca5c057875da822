namespace Calx.Records.Journal;

/// <summary>What a cell of the table holds, with everything that was ever typed there.</summary>
public sealed class CellState
{
    internal CellState(JournalCell cell, IReadOnlyList<KeptEntry> history, IReadOnlyList<KeptEntry> standing)
    {
        Cell = cell;
        History = history;
        Standing = standing;
    }

    /// <summary>Which cell.</summary>
    public JournalCell Cell { get; }

    /// <summary>All entries of the cell in the order of the journal, those replaced too.</summary>
    public IReadOnlyList<KeptEntry> History { get; }

    /// <summary>Entries that none replaces, in the order of the journal; never empty.</summary>
    public IReadOnlyList<KeptEntry> Standing { get; }

    /// <summary>The entry that counts: the first of those that stand. A second one typed for the same cell does not push it aside.</summary>
    public KeptEntry Current => Standing[0];

    /// <summary>Whether several entries stand, so that somebody has to decide.</summary>
    public bool IsContested => Standing.Count > 1;
}
