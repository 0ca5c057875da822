namespace Calx.Practicals.Clock;

/// <summary>Where one group is when the rest of a lesson is run.</summary>
internal sealed class GroupStart
{
    /// <summary>When it begins its own work, where it has not; null where it has.</summary>
    public double? BeginsAt { get; set; }

    /// <summary>Whether it has begun, or takes no part.</summary>
    public bool IsUnderWay => BeginsAt is null;

    /// <summary>Whether it takes no part at all.</summary>
    public bool IsAway { get; set; }

    /// <summary>Which part of the route.</summary>
    public RoutePart Part { get; set; }

    /// <summary>The step of that part, from 0; the part is over where it has no such step.</summary>
    public int At { get; set; }

    /// <summary>The trial, from 0.</summary>
    public int Trial { get; set; }

    /// <summary>The heating, from 0.</summary>
    public int Round { get; set; }

    /// <summary>Heatings of the trial.</summary>
    public int Rounds { get; set; }

    /// <summary>Minutes left of that step; null where it has not begun and takes its own time.</summary>
    public double? Rest { get; set; }

    /// <summary>The lesson whose numbers it goes on with; null for those of the lesson that is run.</summary>
    public int? Draws { get; set; }

    /// <summary>Puts a group there.</summary>
    public void Put(RouteState group)
    {
        group.GoTo(IsAway ? RoutePart.Over : Part);
        (group.At, group.Trial, group.Round, group.Rounds) = (IsAway ? 0 : At, Trial, Round, Rounds);
    }

    /// <summary>What the group is doing, or null where it has yet to begin.</summary>
    /// <param name="group">The group, put there.</param>
    /// <param name="steps">The steps of its part.</param>
    public Activity? Resumed(RouteState group, RouteStep[] steps)
    {
        if (IsAway)
        {
            return Activity.Done;
        }

        if (Rest is not double rest || At >= steps.Length || steps[At].Together)
        {
            return null;
        }

        group.Now = steps[At];
        group.At++;
        return Activity.Work(rest, steps[At].Need, steps[At].Index);
    }
}
