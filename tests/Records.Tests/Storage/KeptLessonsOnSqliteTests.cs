using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class KeptLessonsOnSqliteTests(SqlitePlace place) : KeptLessonsTests(place), IClassFixture<SqlitePlace>;
