namespace Calx.App.Demo;

/// <summary>The real time, or another while the demo's earlier hours are written.</summary>
public sealed class ShiftedClock : TimeProvider
{
    private DateTimeOffset? pretended;

    /// <summary>Pretends a time.</summary>
    public void Pretend(DateTimeOffset time) => pretended = time;

    /// <summary>Goes on with the real one.</summary>
    public void GoOn() => pretended = null;

    public override DateTimeOffset GetUtcNow() => pretended ?? base.GetUtcNow();
}
