namespace Calx.Records.Storage;

/// <summary>Why records cannot be opened or kept. A closed set.</summary>
public enum StoreTrouble
{
    /// <summary>The disk is full. Passes when there is room.</summary>
    DiskFull,

    /// <summary>Another program holds the lock. Passes when it lets go.</summary>
    Locked,

    /// <summary>The database does not answer. Passes when it does.</summary>
    ConnectionLost,

    /// <summary>The file or its folder may not be written.</summary>
    ReadOnly,

    /// <summary>There is no such folder or database, or the user may not open it.</summary>
    CannotOpen,

    /// <summary>The file is no database, or another program's.</summary>
    NotOurDatabase,

    /// <summary>The file is a database of ours and cannot be read.</summary>
    Damaged,

    /// <summary>A newer version of the program made the database.</summary>
    NewerVersion,

    /// <summary>Anything else that the database reports.</summary>
    Failed,
}
