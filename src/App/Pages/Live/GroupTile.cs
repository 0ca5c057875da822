using Calx.Practicals.Watching;

namespace Calx.App.Pages.Live;

/// <summary>What the live view shows of a group.</summary>
public sealed record GroupTile
{
    /// <summary>The group's number.</summary>
    public required int Number { get; init; }

    /// <summary>Where it stands.</summary>
    public required GroupNow Now { get; init; }

    /// <summary>What needs the teacher, or null.</summary>
    public required string? Need { get; init; }

    /// <summary>What kind of need that is.</summary>
    public required AttentionKind Kind { get; init; }

    /// <summary>Whether the teacher is needed at once.</summary>
    public bool IsUrgent => Kind <= AttentionKind.StillHeating;

    /// <summary>What it is to do, in two or three words, or null where nothing is to decide.</summary>
    public required string? Decision { get; init; }

    /// <summary>Why, with causes: opened on demand; null where there is nothing to say.</summary>
    public required string? Why { get; init; }

    /// <summary>Its step in words.</summary>
    public required string Step { get; init; }

    /// <summary>The last reading with its unit, or null.</summary>
    public required string? LastReading { get; init; }

    /// <summary>Which reading that is, or null.</summary>
    public required string? LastLabel { get; init; }

    /// <summary>How many points of mass against time it has, in words; null where it has none.</summary>
    public required string? Points { get; init; }

    /// <summary>Since when it is at its step, or null.</summary>
    public required DateTimeOffset? Since { get; init; }

    /// <summary>When what was heated is cool enough to weigh, or null.</summary>
    public required DateTimeOffset? CoolAt { get; init; }

    /// <summary>Names of its students that are here.</summary>
    public required IReadOnlyList<string> Names { get; init; }

    /// <summary>How many devices type for it.</summary>
    public required int Devices { get; init; }

    /// <summary>What the clock expects of it, or null.</summary>
    public required string? Outlook { get; init; }
}
