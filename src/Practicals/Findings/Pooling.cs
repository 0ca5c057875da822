using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;

namespace Calx.Practicals.Findings;

/// <summary>Pools a quantity over the groups of a class (docs/methods/class-result.md).</summary>
internal static class Pooling
{
    /// <summary>The class's value of a quantity, or null where no group that is not set aside has it.</summary>
    public static ClassQuantity? Of(QuantityDefinition quantity, IReadOnlyList<GroupFindings> groups)
    {
        GroupFindings[] having = [.. groups.Where(g => g.Find(quantity.Id) is not null)];
        GroupFindings[] kept = [.. having.Where(g => !g.IsAnomalous)];
        if (kept.Length == 0)
        {
            return null;
        }

        double median = Summary.Median([.. having.Select(g => g.Find(quantity.Id)!.Value)]);
        ClassQuantity.Pool? withAll = kept.Length == having.Length ? null : Pool(quantity.Id, having);
        return new ClassQuantity(quantity, Pool(quantity.Id, kept), withAll, median);
    }

    private static ClassQuantity.Pool Pool(string id, GroupFindings[] groups)
    {
        QuantityEstimate[][] byGroup =
        [
            .. groups.GroupBy(g => g.Readings.Name, StringComparer.Ordinal)
                .Select(trials => trials.Select(g => g.Find(id)!).ToArray()),
        ];
        bool repeated = byGroup.Length > 1 && byGroup.Any(trials => trials.Length > 1);
        return repeated ? FromTrials(byGroup) : FromBalance(byGroup.SelectMany(trials => trials));
    }

    /// <summary>Groups with several trials: the trials themselves say how much one group scatters. That they agree by luck
    /// does not make the balance better, so the uncertainty is never less than the balance alone leaves in the mean.</summary>
    private static ClassQuantity.Pool FromTrials(QuantityEstimate[][] byGroup)
    {
        double[][] values = [.. byGroup.Select(trials => trials.Select(e => e.Value).ToArray())];
        if (RandomEffects.FromGroups(values) is not GroupSpreadResult.Separated { Spread: GroupSpread spread })
        {
            return FromBalance(byGroup.SelectMany(trials => trials));
        }

        QuantityEstimate[] all = [.. byGroup.SelectMany(trials => trials)];
        double balance = Math.Sqrt(all.Sum(e => e.StandardUncertainty * e.StandardUncertainty)) / all.Length;
        return new ClassQuantity.Pool(
            spread.Mean,
            Math.Max(spread.StandardUncertainty, balance),
            spread.Repeatability,
            spread.Between,
            byGroup.Length,
            byGroup.Length - 1,
            FromTrials: true);
    }

    /// <summary>One trial a group: what the balance allows is the scatter within a group.</summary>
    private static ClassQuantity.Pool FromBalance(IEnumerable<QuantityEstimate> estimates)
    {
        QuantityEstimate[] all = [.. estimates];
        PooledResult pooled = RandomEffects.FromKnownUncertainties(
            [.. all.Select(e => e.Value)], [.. all.Select(e => e.StandardUncertainty)]);
        return new ClassQuantity.Pool(
            pooled.Value, pooled.StandardUncertainty, pooled.Within, pooled.Between, pooled.Count, pooled.DegreesOfFreedom, FromTrials: false);
    }
}
