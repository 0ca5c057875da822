using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Archive;

public sealed class ArchiveOnSqliteTests(SqlitePlace place, PostgresPlace other) : ArchiveTests(place), IClassFixture<SqlitePlace>, IClassFixture<PostgresPlace>
{
    protected override Place Other => other;

    protected override Task<RecordStore> Restored(string path) => place.Open(new StoreSettings(path, "Larkmoor School"));
}
