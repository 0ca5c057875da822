using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class KeptNumbersOnSqliteTests(SqlitePlace place, PostgresPlace other) : KeptNumbersTests(place), IClassFixture<SqlitePlace>, IClassFixture<PostgresPlace>
{
    protected override Place Other => other;
}
