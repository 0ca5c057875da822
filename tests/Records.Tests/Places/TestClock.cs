namespace Calx.Records.Tests.Places;

/// <summary>A clock that goes on by a second at each look, from noon of the class's day.</summary>
public sealed class TestClock : TimeProvider
{
    private long looks;

    public override DateTimeOffset GetUtcNow() => Sample.Noon.AddSeconds(Interlocked.Increment(ref looks));
}
