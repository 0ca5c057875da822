namespace Calx.App.Tests.Pages.Teachers;

/// <summary>A clock that stands still, in a place without summer time.</summary>
internal sealed class FixedClock(DateTimeOffset now) : TimeProvider
{
    public override TimeZoneInfo LocalTimeZone => TimeZoneInfo.Utc;

    public override DateTimeOffset GetUtcNow() => now;
}
