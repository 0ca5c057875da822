using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Storage;

public sealed class KeptLessonsOnPostgresTests(PostgresPlace place) : KeptLessonsTests(place), IClassFixture<PostgresPlace>;
