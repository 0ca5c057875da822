using Calx.Practicals.Clock;

namespace Calx.Papers.Slips;

/// <summary>What record slips are printed for.</summary>
public sealed class SlipSettings
{
    /// <summary>Most decimals of a balance that a slip has boxes for.</summary>
    public const int MostDecimals = 6;

    /// <summary>Says for whom.</summary>
    /// <param name="groups">How many groups, 1 to <see cref="PlanSettings.MostGroups"/>; numbered from 1.</param>
    /// <param name="decimals">Decimals of a gram that the balances show, 0 to <see cref="MostDecimals"/>; the most, where they
    /// differ.</param>
    /// <param name="trials">Trials of a group, 1 to <see cref="PlanSettings.MostTrials"/>: each has a slip of its own.</param>
    /// <param name="unread">Ids of the practical's readings that are not taken; null for none.</param>
    /// <exception cref="ArgumentOutOfRangeException">A number is out of range.</exception>
    public SlipSettings(int groups, int decimals, int trials = 1, IReadOnlyCollection<string>? unread = null)
    {
        Groups = Within(groups, 1, PlanSettings.MostGroups, nameof(groups));
        Decimals = Within(decimals, 0, MostDecimals, nameof(decimals));
        Trials = Within(trials, 1, PlanSettings.MostTrials, nameof(trials));
        Unread = unread ?? [];
    }

    /// <summary>How many groups.</summary>
    public int Groups { get; }

    /// <summary>Decimals of a gram that the balances show.</summary>
    public int Decimals { get; }

    /// <summary>Trials of a group.</summary>
    public int Trials { get; }

    /// <summary>Ids of the readings that are not taken.</summary>
    public IReadOnlyCollection<string> Unread { get; }

    /// <summary>For a lesson as it is planned.</summary>
    public static SlipSettings Of(PlanSettings plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return new SlipSettings(plan.Groups, Math.Min(MostDecimals, plan.Balances.Max(b => b.Decimals)), plan.Trials, plan.Unread);
    }

    private static int Within(int value, int least, int most, string name) => value >= least && value <= most
        ? value : throw new ArgumentOutOfRangeException(name, value, $"{least} to {most} is expected.");
}
