namespace Calx.Practicals.Readings;

/// <summary>What a class weighed: the groups, what each column was taken for, and what could not be taken.</summary>
public sealed class ClassReadings
{
    /// <summary>Takes a class's readings, from a file or from a lesson.</summary>
    /// <param name="practicalId">Id of the practical.</param>
    /// <param name="groups">Groups in the order of the file or lesson.</param>
    /// <param name="balance">Resolution and repeatability with their origin.</param>
    /// <param name="columns">Columns of the file; empty for a lesson.</param>
    /// <param name="rejected">Cells that could not be taken, in the order of the file.</param>
    /// <param name="notes">What else a person should know.</param>
    /// <param name="sheet">The sheet that was read; empty for a file without sheets and for a lesson.</param>
    /// <param name="isSimulated">Whether all of it is simulated and not measured.</param>
    /// <param name="uncounted">Groups whose readings are not their own and stand in no result of the class.</param>
    /// <exception cref="ArgumentException"><paramref name="practicalId"/> is empty.</exception>
    public ClassReadings(
        string practicalId,
        IReadOnlyList<GroupReadings> groups,
        BalanceReport balance,
        IReadOnlyList<ColumnMatch>? columns = null,
        IReadOnlyList<RejectedCell>? rejected = null,
        IReadOnlyList<ReadingNote>? notes = null,
        string sheet = "",
        bool isSimulated = false,
        IReadOnlyList<UncountedGroup>? uncounted = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(practicalId);
        ArgumentNullException.ThrowIfNull(groups);
        ArgumentNullException.ThrowIfNull(balance);
        PracticalId = practicalId;
        Groups = groups;
        Balance = balance;
        Columns = columns ?? [];
        Rejected = rejected ?? [];
        Notes = notes ?? [];
        Sheet = sheet;
        IsSimulated = isSimulated;
        Uncounted = uncounted ?? [];
    }

    /// <summary>Id of the practical.</summary>
    public string PracticalId { get; }

    /// <summary>Groups in the order of the file or lesson.</summary>
    public IReadOnlyList<GroupReadings> Groups { get; }

    /// <summary>Resolution and repeatability with their origin.</summary>
    public BalanceReport Balance { get; }

    /// <summary>Columns of the file and what each was taken for; empty for a lesson.</summary>
    public IReadOnlyList<ColumnMatch> Columns { get; }

    /// <summary>Cells that could not be taken.</summary>
    public IReadOnlyList<RejectedCell> Rejected { get; }

    /// <summary>What else a person should know of how the table was read.</summary>
    public IReadOnlyList<ReadingNote> Notes { get; }

    /// <summary>The sheet that was read; empty where there is none.</summary>
    public string Sheet { get; }

    /// <summary>Whether all of it is simulated and not measured: whatever is said of it has to say so.</summary>
    public bool IsSimulated { get; }

    /// <summary>Groups whose readings are not their own; they are not among <see cref="Groups"/>.</summary>
    public IReadOnlyList<UncountedGroup> Uncounted { get; }
}
