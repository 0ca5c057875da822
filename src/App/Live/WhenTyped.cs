using Calx.Records.Journal;

namespace Calx.App.Live;

/// <summary>
/// When something happened, as far as a device's clock can be believed. An entry that waited on a phone without a connection
/// was typed before it was received; a clock that is ahead, or hours behind, says nothing.
/// </summary>
public static class WhenTyped
{
    /// <summary>Longer than any lesson's lost connection.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromHours(3);

    /// <summary>The time typed where it lies in the three hours before it was received, else the time received.</summary>
    public static DateTimeOffset Of(KeptEntry kept)
    {
        TimeSpan waited = kept.ReceivedAt - kept.Entry.TypedAt;
        return waited > TimeSpan.Zero && waited < Longest ? kept.Entry.TypedAt : kept.ReceivedAt;
    }
}
