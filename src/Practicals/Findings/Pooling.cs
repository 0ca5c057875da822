using Calx.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;

namespace Calx.Practicals.Findings;

/// <summary>Pools a quantity over the groups of a class (docs/methods/class-result.md).</summary>
internal static class Pooling
{
    /// <summary>The class's value of a quantity, or null where no group that is not set aside has it.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="groups">The groups.</param>
    /// <param name="expectedBetween">How much groups of the practical differ in it; 0 where that is not known.</param>
    /// <param name="common">What all groups share.</param>
    public static ClassQuantity? Of(QuantityDefinition quantity, IReadOnlyList<GroupFindings> groups, double expectedBetween, CommonPart common)
    {
        GroupFindings[] having = [.. groups.Where(g => g.Find(quantity.Id) is not null)];
        GroupFindings[] kept = [.. having.Where(g => !g.IsSetAside(quantity.Id))];
        if (kept.Length == 0)
        {
            return null;
        }

        double median = Summary.Median([.. having.Select(g => g.Find(quantity.Id)!.Value)]);
        ClassQuantity.Pool? withAll = kept.Length == having.Length ? null : Pool(quantity.Id, having, expectedBetween).With(common);
        return new ClassQuantity(quantity, Pool(quantity.Id, kept, expectedBetween).With(common), withAll, median);
    }

    private static ClassQuantity.Pool Pool(string id, GroupFindings[] groups, double expectedBetween)
    {
        QuantityEstimate[][] byGroup =
        [
            .. groups.GroupBy(g => g.Readings.Name, StringComparer.Ordinal)
                .Select(trials => trials.Select(g => g.Find(id)!).ToArray()),
        ];
        bool repeated = byGroup.Length > 1 && byGroup.Any(trials => trials.Length > 1);
        return repeated ? FromTrials(byGroup, expectedBetween) : FromBalance(byGroup.SelectMany(trials => trials), expectedBetween);
    }

    /// <summary>Groups with several trials: the trials themselves say how much one group scatters. That they agree by luck
    /// does not make the balance better, so the uncertainty is never less than the balance alone leaves in the mean.</summary>
    private static ClassQuantity.Pool FromTrials(QuantityEstimate[][] byGroup, double expectedBetween)
    {
        double[][] values = [.. byGroup.Select(trials => trials.Select(e => e.Value).ToArray())];
        if (RandomEffects.FromGroups(values) is not GroupSpreadResult.Separated { Spread: GroupSpread spread })
        {
            return FromBalance(byGroup.SelectMany(trials => trials), expectedBetween);
        }

        PooledResult pooled = RandomEffects.FromKnownUncertainties(
            [.. values.Select(trials => trials.Average())], [.. byGroup.Select(OfMean)], expectedBetween);
        return new ClassQuantity.Pool(
            pooled.Value, pooled.StandardUncertainty, spread.Repeatability, spread.Between, byGroup.Length, pooled.DegreesOfFreedom, FromTrials: true);

        double OfMean(QuantityEstimate[] trials) => Math.Sqrt(
            Math.Max(spread.Repeatability * spread.Repeatability, trials.Average(e => e.StandardUncertainty * e.StandardUncertainty)) / trials.Length);
    }

    /// <summary>One trial a group: what the balance allows is the scatter within a group.</summary>
    private static ClassQuantity.Pool FromBalance(IEnumerable<QuantityEstimate> estimates, double expectedBetween)
    {
        QuantityEstimate[] all = [.. estimates];
        PooledResult pooled = RandomEffects.FromKnownUncertainties(
            [.. all.Select(e => e.Value)], [.. all.Select(e => e.StandardUncertainty)], expectedBetween);
        if (all is [QuantityEstimate one])
        {
            return new ClassQuantity.Pool(one.Value, one.StandardUncertainty, one.StandardUncertainty, 0, 1, double.PositiveInfinity, FromTrials: false)
            {
                Own = one.Interval,
                AsClass = (pooled.StandardUncertainty, pooled.DegreesOfFreedom),
            };
        }

        return new ClassQuantity.Pool(
            pooled.Value, pooled.StandardUncertainty, pooled.Within, pooled.Between, pooled.Count, pooled.DegreesOfFreedom, FromTrials: false);
    }
}
