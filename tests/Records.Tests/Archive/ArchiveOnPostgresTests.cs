using Calx.Records.Archive;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Archive;

public sealed class ArchiveOnPostgresTests(PostgresPlace place, SqlitePlace other) : ArchiveTests(place), IClassFixture<PostgresPlace>, IClassFixture<SqlitePlace>
{
    protected override Place Other => other;

    /// <summary>A backup of PostgreSQL is an archive.</summary>
    protected override async Task<RecordStore> Restored(string path)
    {
        RecordStore store = await other.OpenFresh();
        await using FileStream file = File.OpenRead(path);
        await LessonArchive.Read(store, file, Sample.By, TestContext.Current.CancellationToken);
        return store;
    }
}
