using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Planning.Amounts;

/// <summary>Looks at a plan with other amounts of the sample, and with other balances, readings, trials and heatings.</summary>
internal sealed class AmountSearch(
    PlanSettings settings, PlanTables tables, IReadOnlyList<ConclusionRule> rules, IReadOnlyCollection<string> wanted, ulong seed, ParallelOptions parallel)
{
    /// <summary>The change to the finest of several kinds of balances.</summary>
    public const string FinestOnly = "finest-only";

    private const int Steps = 12;

    /// <summary>The advice.</summary>
    public AmountAdvice Advice()
    {
        double[] amounts = [.. Grid()];
        (string Id, string Label, PlanSettings Then)[] changes = [.. Changes()];
        PlanSettings[] plans = [settings, .. amounts.Select(settings.WithSample), .. changes.Select(c => c.Then)];
        var points = new AmountPoint[plans.Length];
        // The smallest amounts take longest to count, so they are begun first.
        Parallel.For(0, plans.Length, parallel, i => points[i] = PointOf(plans[i]));
        return new AmountAdvice(
            points[0],
            points[1..(amounts.Length + 1)],
            [.. changes.Select((c, i) => new AmountChange(c.Id, c.Label, points[1 + amounts.Length + i]))],
            PlanSettings.LargestSample(settings.Practical));
    }

    /// <summary>What a plan comes to.</summary>
    public AmountPoint PointOf(PlanSettings plan)
    {
        var table = new PlannedTable(plan, rules, wanted);
        return new ClassSampler(plan, tables, table.Allowed, table.Gives).Count(seed, parallel.CancellationToken);
    }

    /// <summary>Round amounts from the least to the most, none beyond; only the plan's own where the practical knows no others.</summary>
    private IEnumerable<double> Grid()
    {
        if (settings.Practical.Amounts is not AmountsDefinition amounts)
        {
            yield break;
        }

        decimal largest = (decimal)PlanSettings.LargestSample(settings.Practical);
        decimal step = Round(largest / Steps);
        // From below: the last step may be a shorter one, up to the most that is allowed.
        for (decimal amount = Math.Max(step, Math.Ceiling((decimal)amounts.LeastInGrams / step) * step); amount < largest; amount += step)
        {
            yield return (double)amount;
        }

        yield return (double)largest;
    }

    /// <summary>1, 2, 2.5 or 5 times a power of ten, the nearest not below.</summary>
    private static decimal Round(decimal step)
    {
        decimal power = 0.000001m;
        while (true)
        {
            foreach (decimal digit in (decimal[])[1, 2, 2.5m, 5])
            {
                if (digit * power >= step)
                {
                    return digit * power;
                }
            }

            power *= 10;
        }
    }

    private IEnumerable<(string Id, string Label, PlanSettings Then)> Changes()
    {
        var texts = new AmountTexts(settings.Language);
        Balance coarsest = settings.Balances.MaxBy(b => b.ResolutionInGrams)!;
        double finer = (double)((decimal)coarsest.ResolutionInGrams / 10);
        if (finer >= 0.0001)
        {
            yield return (
                "finer-balance",
                texts.FinerBalance(finer.InFigures()),
                settings.WithBalances([.. settings.Balances.Select(b => new Balance(Math.Min(finer, b.ResolutionInGrams), b.RepeatabilityInDivisions))]));
        }

        double finest = settings.Balances.Min(b => b.ResolutionInGrams);
        if (finest < coarsest.ResolutionInGrams)
        {
            yield return (
                FinestOnly,
                texts.OnlyFinest(finest.InFigures()),
                settings.WithBalances([.. settings.Balances.Where(b => b.ResolutionInGrams == finest)]));
        }

        foreach (string reading in settings.Unread)
        {
            yield return ($"reading-{reading}", texts.ReadingToo(settings.Practical.Reading(reading).Label), settings.WithRead(reading));
        }

        if (settings.Trials < PlanSettings.MostTrials)
        {
            yield return ("another-trial", texts.AnotherTrial, settings.WithTrials(settings.Trials + 1));
        }

        if (settings.Heatings < PlanSettings.MostHeatings(settings.Practical))
        {
            yield return ("another-heating", texts.AnotherHeating, settings.WithHeatings(settings.Heatings + 1));
        }

        if (settings.Heatings > 1)
        {
            yield return ("one-heating", texts.NoMoreHeating, settings.WithHeatings(1));
        }
    }
}
