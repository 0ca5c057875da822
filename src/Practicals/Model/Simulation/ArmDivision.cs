using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Simulation;

/// <summary>How the groups of a class are divided among the ways in which a practical is done: the ordinary one and its arms. Groups
/// of different ways stand mixed, so that any run of them has of each as many as it should.</summary>
public sealed class ArmDivision
{
    private readonly (Arm? Arm, double Share)[] ways;
    private readonly int[] wayOf;

    private ArmDivision((Arm? Arm, double Share)[] ways, int groups)
    {
        this.ways = ways;
        int[] counts = new int[ways.Length];
        wayOf = new int[groups];
        for (int g = 0; g < groups; g++)
        {
            int next = 0;
            for (int w = 1; w < ways.Length; w++)
            {
                // A millionth lets the earlier one come first where both lack as much.
                next = Lacks(w) > Lacks(next) + 1e-6 ? w : next;
            }

            wayOf[g] = next;
            counts[next]++;

            double Lacks(int way) => (ways[way].Share * (g + 1)) - counts[way];
        }
    }

    /// <summary>The ways that some group does, the ordinary one (null) first.</summary>
    public IReadOnlyList<Arm?> Ways => [.. ways.Select(w => w.Arm)];

    /// <summary>By the shares of the practical's file, or evenly among the ordinary way and its arms.</summary>
    /// <param name="practical">The practical.</param>
    /// <param name="groups">How many groups.</param>
    /// <returns>Null where the practical has no arms.</returns>
    public static ArmDivision? Of(Practical practical, int groups)
    {
        ArgumentNullException.ThrowIfNull(practical);
        ArgumentOutOfRangeException.ThrowIfLessThan(groups, 1);
        double even = 1.0 / (practical.Arms.Count + 1);
        double ordinary = 1 - practical.Arms.Sum(a => a.Share ?? even);
        (Arm?, double)[] ways = [(null, ordinary), .. practical.Arms.Select(a => ((Arm?)a, a.Share ?? even))];
        return practical.Arms.Count == 0 ? null : new ArmDivision([.. ways.Where(w => w.Item2 > 1e-9)], groups);
    }

    /// <summary>So many groups in each way.</summary>
    /// <param name="ways">The ways, null for the ordinary one, no way twice; each with at least one group.</param>
    public static ArmDivision Counted(IReadOnlyList<(Arm? Arm, int Groups)> ways)
    {
        ArgumentNullException.ThrowIfNull(ways);
        int groups = ways.Sum(w => w.Groups);
        ArgumentOutOfRangeException.ThrowIfLessThan(groups, 1);
        return new ArmDivision([.. ways.Select(w => (w.Arm, (double)w.Groups / groups))], groups);
    }

    /// <summary>What a group does, by its place among <see cref="Ways"/>.</summary>
    /// <param name="group">From 1; beyond the class it begins anew.</param>
    public int WayOf(int group) => wayOf[(group - 1) % wayOf.Length];

    /// <summary>How many groups do each of <see cref="Ways"/>.</summary>
    public IReadOnlyList<int> Counts => [.. ways.Select((_, w) => wayOf.Count(x => x == w))];
}
