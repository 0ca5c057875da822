using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class MigrationOnPostgresTests(PostgresPlace place) : MigrationTests(place, "postgres"), IClassFixture<PostgresPlace>;
