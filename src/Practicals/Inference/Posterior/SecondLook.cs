using Calx.Practicals.Model.Faults;

namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// When readings single out so few points that these stand for too little of what may have happened: sizes would be told too
/// narrowly. Then the sets of faults that bear the group are looked at once more, with more points. (One group in ten or so.)
/// </summary>
internal static class SecondLook
{
    /// <summary>Effective number of points below which they are too few: from here on ranges hold what they say (docs/methods/causes.md).</summary>
    private const double Enough = 30;

    /// <summary>A share of the group below which nobody asks how large a cause was.</summary>
    private const double LeastShare = 0.1;

    /// <summary>More sets than this are not singled out.</summary>
    private const int MostSets = 3;

    /// <summary>The sets to look at again; empty where there is no need.</summary>
    /// <param name="atoms">What the first look found, with weights.</param>
    public static IReadOnlyCollection<FaultSet> SetsFor(IReadOnlyList<Atom> atoms) =>
    [
        .. atoms.GroupBy(a => (a.Set, Disturbed: a.Disturbance is not null))
            .Select(set => (set.Key.Set, Share: set.Sum(a => a.Weight), Squares: set.Sum(a => a.Weight * a.Weight)))
            .Where(set => set.Share >= LeastShare && set.Share * set.Share < Enough * set.Squares)
            .OrderByDescending(set => set.Share).Select(set => set.Set).Distinct().Take(MostSets),
    ];
}
