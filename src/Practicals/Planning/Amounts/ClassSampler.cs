using Calx.Measurement.Statistics;
using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Model;

namespace Calx.Practicals.Planning.Amounts;

/// <summary>
/// Draws classes of a plan from the model, faults and all, and counts how often a group and a class reach each conclusion,
/// until chance in the counting moves none of them by a hundredth. The random numbers of a group do not depend on the plan, so
/// that plans are compared on the same classes. One belongs to one thread.
/// </summary>
internal sealed class ClassSampler
{
    /// <summary>The counting ends when every standard error is at most this.</summary>
    public const double LargestError = 0.0098;

    /// <summary>Most classes drawn: at a probability of ½ the standard error is then just small enough.</summary>
    public const int MostClasses = 2600;

    private const int Batch = 200;
    private const int SpreadGroups = 4000;

    private readonly PlanSettings settings;
    private readonly IReadOnlyList<ConclusionRule> rules;
    private readonly ConclusionRule[] numbers;
    private readonly QuantityLines? key;
    private readonly double accepted; // 0 where the scatter is no share of anything
    private readonly bool hasAccepted;
    private readonly TrialTable trials;
    private readonly TrialTable.SetAside[] leftOut; // of each conclusion's quantity
    private readonly TrialTable.SetAside leftOutOfKey;
    private readonly MeasuredValue[][] found;
    private readonly Bearing[] one;
    private readonly ClassVerdict verdict;

    /// <summary>Prepares it.</summary>
    /// <param name="settings">The plan.</param>
    /// <param name="tables">What plans have in common.</param>
    /// <param name="rules">The conclusions to count.</param>
    /// <param name="gives">Whether the planned table gives a quantity.</param>
    public ClassSampler(PlanSettings settings, PlanTables tables, IReadOnlyList<ConclusionRule> rules, Func<string, bool> gives)
    {
        Practical practical = settings.Practical;
        this.settings = settings;
        this.rules = rules;
        trials = new TrialTable(settings, tables, gives);
        leftOut = [.. rules.Select(r => trials.LeftOutOf(r.Lines.Quantity))];
        leftOutOfKey = trials.LeftOutOf(trials.Judged.Quantity);
        key = gives(practical.Findings.Key) ? trials.Judged : null;
        accepted = key is null ? 0 : new IdealRun(practical, tables.Weights).Accepted(practical.Findings.Key);
        hasAccepted = accepted != 0 && practical.Findings.NoAccepted is null;
        numbers = [.. rules.Where(r => r.IsOfNumber).DistinctBy(r => r.Test.Quantity)];
        found = [.. rules.Select(_ => new MeasuredValue[settings.Groups])];
        one = new Bearing[rules.Count];
        verdict = new ClassVerdict(settings.Groups);
    }

    /// <summary>Draws classes and counts.</summary>
    /// <param name="seed">Which of the possible classes.</param>
    /// <param name="cancellation">Gives the work up.</param>
    public AmountPoint Count(ulong seed, CancellationToken cancellation)
    {
        var tally = new ConclusionTally(rules.Count);
        var groupKeys = new List<double>();
        var classKeys = new List<double>();
        int classes = 0;
        do
        {
            cancellation.ThrowIfCancellationRequested();
            for (int i = 0; i < Batch; i++)
            {
                DrawClass(seed, classes++, tally, groupKeys);
                JudgeClass(tally, classKeys);
            }
        }
        while (classes < MostClasses && tally.LargestError(classes) > LargestError);
        return new AmountPoint(
            settings.SampleInGrams,
            [.. rules.Select((rule, r) => tally.Chance(rule.Conclusion, r, classes, classes * settings.Groups))],
            SpreadOf(groupKeys),
            SpreadOf(classKeys),
            classKeys.Count == 0 || !hasAccepted ? null : (Summary.Median(classKeys.ToArray()) / accepted) - 1,
            classes);
    }

    private void DrawClass(ulong seed, int number, ConclusionTally tally, List<double> groupKeys)
    {
        trials.Draw(seed, number);
        for (int g = 0; g < settings.Groups; g++)
        {
            Balance balance = settings.Balances[g % settings.Balances.Count];
            double u = 0;
            for (int r = 0; r < rules.Count; r++)
            {
                if (r == 0 || leftOut[r] != leftOut[r - 1])
                {
                    u = Uncertainty(balance, g, leftOut[r]);
                }

                found[r][g] = rules[r].Lines.Of(trials.Mean, u);
                one[r] = rules[r].OfGroup(trials.Mean, u, balance.ResolutionInGrams);
                tally.Group(r, one[r]);
            }

            if (key is not null && groupKeys.Count < SpreadGroups)
            {
                double ofKey = Uncertainty(balance, g, leftOutOfKey);
                MeasuredValue value = key.Of(trials.Mean, ofKey);
                if (value.IsFound)
                {
                    groupKeys.Add(value.Value);
                }
            }
        }
    }

    /// <summary>Averages a group's trials; the standard uncertainty of one averaged reading.</summary>
    private double Uncertainty(Balance balance, int group, TrialTable.SetAside leftOut) =>
        balance.ReadingStandardUncertainty() / Math.Sqrt(trials.Average(group, leftOut));

    private void JudgeClass(ConclusionTally tally, List<double> classKeys)
    {
        if (settings.Groups == 1)
        {
            // A demonstration is no class: what its one group says is all there is.
            for (int r = 0; r < rules.Count; r++)
            {
                tally.Class(r, one[r]);
            }

            return;
        }

        double coarsest = settings.Balances.Max(b => b.ResolutionInGrams);
        for (int r = 0; r < rules.Count; r++)
        {
            if (rules[r].Test is ConclusionTest.Moves or ConclusionTest.Stays)
            {
                tally.Class(r, verdict.Of(rules[r], found[r], leftOut[r].Odd, coarsest));
            }
        }

        foreach (ConclusionRule number in numbers)
        {
            int first = IndexOf(number);
            (MeasuredValue pooled, double factor) = verdict.Pool(found[first], leftOut[first].Odd, number.ExpectedBetween, number.Common);
            for (int r = 0; r < rules.Count; r++)
            {
                if (rules[r].IsOfNumber && rules[r].Test.Quantity == number.Test.Quantity)
                {
                    tally.Class(r, rules[r].OfPooled(pooled, factor));
                }
            }

            if (key is not null && number.Test.Quantity == key.Quantity.Id && pooled.IsFound)
            {
                classKeys.Add(pooled.Value);
            }
        }
    }

    private int IndexOf(ConclusionRule rule)
    {
        int index = 0;
        while (rules[index] != rule)
        {
            index++;
        }

        return index;
    }

    private double? SpreadOf(List<double> values)
    {
        if (values.Count < 20 || accepted == 0)
        {
            return null;
        }

        double[] sorted = [.. values.Order()];
        return (Summary.QuantileOfSorted(sorted, 0.84) - Summary.QuantileOfSorted(sorted, 0.16)) / 2 / Math.Abs(accepted);
    }
}
