using System.Collections.Concurrent;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;

namespace Calx.Engine.Tests.Practicals.Inference.Posterior;

/// <summary>
/// Where a true number lies in what is said of it. Points stand for shares of a law, so that between one that bears some
/// probability and the next the probability rises evenly.
/// </summary>
internal static class PosteriorRank
{
    private const int Shares = 4096;
    private static readonly ConcurrentDictionary<ParameterLaw, double[]> Quantiles = new();

    /// <summary>Posterior probability below the true first number of a parameter.</summary>
    public static double Below(CausePosterior posterior, int parameter, double truth)
    {
        HiddenGroups hidden = posterior.Hidden;
        int at = hidden.Program.Dimensions.IndexOf(parameter, 0);
        return posterior.Atoms.GroupBy(a => a.Set).Sum(block =>
        {
            ParameterLaw law = hidden.Space.LawOf(block.Key, parameter);
            return Below(block.Select(a => (ShareBelow(law, hidden.ValuesOf(a.Point)[at]), a.Weight)), ShareBelow(law, truth));
        });
    }

    private static double Below(IEnumerable<(double Share, double Weight)> points, double truth)
    {
        (double Share, double Sum) last = (0, 0);
        double before = 0;
        foreach ((double share, double weight) in points.GroupBy(p => p.Share).OrderBy(p => p.Key).Select(p => (p.Key, p.Sum(x => x.Weight))).Append((1, 0)))
        {
            (double Share, double Sum) next = (share, before + (weight / 2));
            if (truth <= share)
            {
                return share > last.Share ? last.Sum + ((next.Sum - last.Sum) * (truth - last.Share) / (share - last.Share)) : next.Sum;
            }

            last = next;
            before += weight;
        }

        return before;
    }

    /// <summary>Share of a law below a value.</summary>
    private static double ShareBelow(ParameterLaw law, double value) => law switch
    {
        ParameterLaw.Fixed known => value > known.Value ? 1 : value < known.Value ? 0 : 0.5,
        ParameterLaw.Mixture mixture => mixture.Components.Sum(c => c.Share * ShareBelow(c.Law, value)),
        _ => ShareBelow(Quantiles.GetOrAdd(law, l => [.. Enumerable.Range(0, Shares).Select(i => LawQuantile.Of(l, (i + 0.5) / Shares))]), value),
    };

    private static double ShareBelow(double[] quantiles, double value)
    {
        int found = Array.BinarySearch(quantiles, value);
        int above = found >= 0 ? found : ~found;
        double between = found >= 0 ? 0.5 : above switch
        {
            0 => 0.25,
            Shares => -0.25,
            _ => ((value - quantiles[above - 1]) / (quantiles[above] - quantiles[above - 1])) - 0.5,
        };
        return (above + between) / Shares;
    }
}
