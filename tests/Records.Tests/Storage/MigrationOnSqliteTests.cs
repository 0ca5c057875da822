using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class MigrationOnSqliteTests(SqlitePlace place) : MigrationTests(place, "sqlite"), IClassFixture<SqlitePlace>;
