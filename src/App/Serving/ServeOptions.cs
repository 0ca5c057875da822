namespace Calx.App.Serving;

/// <summary>How the program serves its pages.</summary>
/// <param name="DataFolder">Where the database and a teacher's own files stand; made where it is missing.</param>
/// <param name="Database">Path of a SQLite file or connection string of PostgreSQL; null takes a file in the data folder.</param>
/// <param name="School">The school whose records these are, where several share a database.</param>
public sealed record ServeOptions(string DataFolder, string? Database = null, string School = "school")
{
    /// <summary>The port tried first; where it is taken, the next free one of the twenty after it is used. 0 takes any.</summary>
    public const int UsualPort = 8370;

    /// <summary>The port to listen on.</summary>
    public int Port { get; init; } = UsualPort;

    /// <summary>Whether the next free port is taken where that one is not free.</summary>
    public bool MayTakeNextPort { get; init; }

    /// <summary>Whether other devices may reach it; then the teacher has a passphrase.</summary>
    public bool OpenToRoom { get; init; }

    /// <summary>A certificate file (PFX, or PEM with its key) for HTTPS, or null.</summary>
    public string? Certificate { get; init; }

    /// <summary>The key file of a PEM certificate, or null.</summary>
    public string? CertificateKey { get; init; }

    /// <summary>Whether all data are invented, which every page then says.</summary>
    public bool Invented { get; init; }

    /// <summary>The database to open.</summary>
    public string Connection => Database ?? Path.Combine(DataFolder, "calx.db");
}
