using Calx.App.Live;

namespace Calx.App.Pages.Students;

/// <summary>One group as its own page, or a balance station, shows it.</summary>
/// <param name="Number">The group's number.</param>
/// <param name="State">What its happenings add up to.</param>
/// <param name="Places">What it does now and then; the last is the end.</param>
public sealed record GroupTable(int Number, GroupState State, IReadOnlyList<Place> Places)
{
    /// <summary>What the engine lets its students read now, or null.</summary>
    public string? Sentence { get; init; }

    /// <summary>Whether the class is still together: the group waits until the teacher starts its work.</summary>
    public bool WaitsForStart { get; init; }

    /// <summary>The weighing that the engine lets it take again when cool, or null.</summary>
    public WeighedWarm? Warm { get; init; }

    /// <summary>When what was heated is cool enough to weigh, or null.</summary>
    public DateTimeOffset? CoolAt { get; init; }

    /// <summary>Labels of the stop observations that it has noted.</summary>
    public IReadOnlyList<string> Stops { get; init; } = [];

    /// <summary>Vessel number that it gave, or empty.</summary>
    public string Vessel { get; init; } = "";

    /// <summary>Letter of the balance that it used last, or empty.</summary>
    public string Balance { get; init; } = "";

    /// <summary>Place of the last entry in the journal that its page shows.</summary>
    public long Mark { get; init; }

    /// <summary>Whether its flame burns, as far as it said.</summary>
    public bool IsLit => State.FlameOnAt is not null && State.FlameOutAt is null;

    /// <summary>Whether it takes readings of its own.</summary>
    public bool Weighs => State.JoinedGroup is null && !IsSimulated && !Waits;

    /// <summary>Whether it goes on with simulated readings.</summary>
    public bool IsSimulated => State.Condition == Acts.Conditions.Simulated;

    /// <summary>What the simulated balance shows, by the reading's id; empty where the group weighs itself.</summary>
    public IReadOnlyDictionary<string, string> SimulatedDisplays { get; init; } = new Dictionary<string, string>();

    /// <summary>Whether it has no step before it: it waits for the teacher's word, or is done.</summary>
    public bool Waits => State.Condition is Acts.Conditions.Finished or Acts.Conditions.Broken;
}
