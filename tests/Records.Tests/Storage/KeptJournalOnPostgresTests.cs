using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class KeptJournalOnPostgresTests(PostgresPlace place) : KeptJournalTests(place), IClassFixture<PostgresPlace>;
