namespace Calx.Practicals.Clock;

/// <summary>Parts of a group's route, in order.</summary>
internal enum RoutePart
{
    /// <summary>Not there yet.</summary>
    Start,

    /// <summary>Before the trials.</summary>
    Before,

    /// <summary>The beginning of a trial.</summary>
    TrialBefore,

    /// <summary>A heating.</summary>
    Heating,

    /// <summary>The end of a trial.</summary>
    TrialAfter,

    /// <summary>After the trials.</summary>
    After,

    /// <summary>Nothing is left.</summary>
    Over,
}
