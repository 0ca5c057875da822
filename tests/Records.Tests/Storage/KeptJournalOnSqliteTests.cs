using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class KeptJournalOnSqliteTests(SqlitePlace place) : KeptJournalTests(place), IClassFixture<SqlitePlace>;
