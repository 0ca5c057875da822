namespace Calx.App.Live;

/// <summary>What a group decided itself after a weighing.</summary>
/// <param name="Weighing">Id of the weighing.</param>
/// <param name="HeatsAgain">Whether it heats again.</param>
/// <param name="At">When.</param>
public sealed record GroupDecision(string Weighing, bool HeatsAgain, DateTimeOffset At)
{
    /// <summary>The words by which a group sends it.</summary>
    public const string Reheat = "reheat";

    /// <summary>The group stops.</summary>
    public const string Stop = "stop";
}
