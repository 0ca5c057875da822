using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class SameTableOnPostgresTests(PostgresPlace place) : SameTableTests(place), IClassFixture<PostgresPlace>;
