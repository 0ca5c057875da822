using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class KeptNumbersOnPostgresTests(PostgresPlace place, SqlitePlace other) : KeptNumbersTests(place), IClassFixture<PostgresPlace>, IClassFixture<SqlitePlace>
{
    protected override Place Other => other;
}
