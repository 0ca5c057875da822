using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class SameTableOnSqliteTests(SqlitePlace place) : SameTableTests(place), IClassFixture<SqlitePlace>;
