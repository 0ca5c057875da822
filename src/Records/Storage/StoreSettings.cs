namespace Calx.Records.Storage;

/// <summary>Where records are kept, and whose they are.</summary>
public sealed record StoreSettings
{
    /// <summary>Longest name of a school.</summary>
    public const int LongestSchool = 80;

    /// <summary>Takes settings.</summary>
    /// <param name="connection">Path of an SQLite file, or a PostgreSQL connection string that begins with <c>Host=</c>,
    /// <c>postgres://</c> or <c>postgresql://</c>.</param>
    /// <param name="school">The school whose records they are: schools of one database see nothing of each other.</param>
    /// <param name="patienceInSeconds">How long a change waits for a lock that another program holds, from 1 to 60.</param>
    /// <exception cref="ArgumentException">A text is blank, or the patience out of its range.</exception>
    public StoreSettings(string connection, string school = "school", int patienceInSeconds = 5)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(connection);
        ArgumentOutOfRangeException.ThrowIfLessThan(patienceInSeconds, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(patienceInSeconds, 60);
        (Connection, PatienceInSeconds) = (connection, patienceInSeconds);
        School = KeptText.Needed(school, LongestSchool, nameof(school));
    }

    /// <summary>Path of an SQLite file, or a PostgreSQL connection string.</summary>
    public string Connection { get; }

    /// <summary>The school whose records they are.</summary>
    public string School { get; }

    /// <summary>How long a change waits for a lock that another program holds.</summary>
    public int PatienceInSeconds { get; }

    /// <summary>Whether the connection is to a PostgreSQL server.</summary>
    public bool IsPostgres => PostgresAddress.Describes(Connection);

    /// <summary>Where, without the password that a connection string may hold.</summary>
    public override string ToString() => IsPostgres ? "PostgreSQL" : Connection;
}
