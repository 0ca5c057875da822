namespace Calx.Practicals.Clock;

/// <summary>Where a group is in its route.</summary>
internal sealed class RouteState
{
    /// <summary>Which part of the route.</summary>
    public RoutePart Part { get; set; }

    /// <summary>Which step of that part comes next.</summary>
    public int At { get; set; }

    /// <summary>The trial, from 0.</summary>
    public int Trial { get; set; }

    /// <summary>The heating of the trial, from 0.</summary>
    public int Round { get; set; }

    /// <summary>Heatings of this trial.</summary>
    public int Rounds { get; set; }

    /// <summary>How often it has started again.</summary>
    public int NewStarts { get; set; }

    /// <summary>The trial in which its vessel breaks, or -1.</summary>
    public int BreaksInTrial { get; set; }

    /// <summary>The heating at the end of which it breaks.</summary>
    public int BreaksInRound { get; set; }

    /// <summary>The step that it is at, or null.</summary>
    public RouteStep? Now { get; set; }

    /// <summary>Whether it has joined another group's data.</summary>
    public bool HasJoined { get; set; }

    /// <summary>Back to the beginning of the route.</summary>
    public void Clear()
    {
        (Part, At, Trial, Round, Rounds, NewStarts) = (RoutePart.Start, 0, 0, 0, 1, 0);
        (BreaksInTrial, BreaksInRound, Now, HasJoined) = (-1, 0, null, false);
    }

    /// <summary>On to a part of the route.</summary>
    public void GoTo(RoutePart part) => (Part, At) = (part, 0);
}
