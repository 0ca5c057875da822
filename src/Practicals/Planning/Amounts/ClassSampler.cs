using Calx.Measurement.Distributions;
using Calx.Measurement.Statistics;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Model;
using Calx.Practicals.Model.Simulation;

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
    private const int MostTrialsOfOne = 8;
    private const int SpreadGroups = 4000;

    /// <summary>Streams of random numbers from here on are those of planned classes.</summary>
    private const ulong FirstStream = 1UL << 48;

    private readonly PlanSettings settings;
    private readonly IReadOnlyList<ConclusionRule> rules;
    private readonly ConclusionRule[] numbers;
    private readonly ImpossibleRule impossibleRule;
    private readonly QuantityLines? key;
    private readonly double accepted;
    private readonly GroupDrawer[] drawers;
    private readonly GroupBench[] benches;
    private readonly int[][][] lastAt;
    private readonly double[][] rows;
    private readonly bool[] oddRows;
    private readonly MeasuredValue[] judgedBy;
    private readonly double[] mean;
    private readonly bool[] odd;
    private readonly MeasuredValue[][] found;
    private readonly QuantityLines judged;
    private readonly ClassVerdict verdict;

    /// <summary>Prepares it.</summary>
    /// <param name="settings">The plan.</param>
    /// <param name="tables">What plans have in common.</param>
    /// <param name="rules">The conclusions to count.</param>
    /// <param name="keyIsFound">Whether the planned table gives the key quantity.</param>
    public ClassSampler(PlanSettings settings, PlanTables tables, IReadOnlyList<ConclusionRule> rules, bool keyIsFound)
    {
        Practical practical = settings.Practical;
        this.settings = settings;
        this.rules = rules;
        drawers = tables.DrawersOf(settings);
        benches = [.. drawers.Select(d => new GroupBench(d))];
        impossibleRule = new ImpossibleRule(practical, tables.Weights, keyIsFound);
        key = keyIsFound ? new QuantityLines(practical, practical.Quantities.First(q => q.Id == practical.Findings.Key), tables.Weights) : null;
        judged = key ?? new QuantityLines(practical, practical.Quantities.First(q => q.Id == practical.Findings.Change), tables.Weights);
        accepted = key is null ? 0 : new IdealRun(practical, tables.Weights).Accepted(practical.Findings.Key);
        numbers = [.. rules.Where(r => r.Test is ConclusionTest.Chooses or ConclusionTest.Within).DistinctBy(r => r.Test.Quantity)];
        string[] readings = [.. practical.Readings.Select(r => r.Id)];
        lastAt = [.. drawers.Select(d => d.Views.Select(view => readings.Select(r => LastOf(view, r)).ToArray()).ToArray())];
        int all = settings.Groups * settings.Trials;
        rows = [.. Enumerable.Range(0, all).Select(_ => new double[readings.Length])];
        (oddRows, judgedBy, mean) = (new bool[all], new MeasuredValue[all], new double[readings.Length]);
        found = [.. rules.Select(_ => new MeasuredValue[settings.Groups])];
        odd = new bool[settings.Groups];
        verdict = new ClassVerdict(all);
    }

    /// <summary>Draws classes and counts.</summary>
    /// <param name="seed">Which of the possible classes.</param>
    /// <param name="cancellation">Gives the work up.</param>
    public AmountPoint Count(ulong seed, CancellationToken cancellation)
    {
        var tally = new Tally(rules.Count);
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
            classKeys.Count == 0 ? null : (Summary.Median(classKeys.ToArray()) / accepted) - 1,
            classes);
    }

    private void DrawClass(ulong seed, int number, Tally tally, List<double> groupKeys)
    {
        for (int g = 0; g < settings.Groups; g++)
        {
            for (int trial = 0; trial < settings.Trials; trial++)
            {
                DrawTrial(seed, number, g, trial);
            }
        }

        verdict.MarkOdd(judgedBy, oddRows);
        for (int g = 0; g < settings.Groups; g++)
        {
            Balance balance = settings.Balances[g % drawers.Length];
            double u = balance.ReadingStandardUncertainty() / Math.Sqrt(Average(g));
            for (int r = 0; r < rules.Count; r++)
            {
                found[r][g] = rules[r].Lines.Of(mean, u);
                tally.Group(r, rules[r].OfGroup(mean, u, balance.ResolutionInGrams));
            }

            if (groupKeys.Count < SpreadGroups && key?.Of(mean, u) is { IsFound: true } value)
            {
                groupKeys.Add(value.Value);
            }
        }
    }

    private void DrawTrial(ulong seed, int number, int group, int trial)
    {
        int at = group % drawers.Length;
        ulong stream = FirstStream + ((ulong)number * PlanSettings.MostGroups * MostTrialsOfOne) + (ulong)((group * MostTrialsOfOne) + trial);
        var random = new RandomStream(seed, stream);
        while (!benches[at].Draw(drawers[at].NextSet(random), random))
        {
            // The bench has no answer to some numbers, such as nothing over nothing: another group takes its place.
        }

        int row = (group * settings.Trials) + trial;
        int[] places = lastAt[at][benches[at].View.Rounds - 1];
        for (int r = 0; r < places.Length; r++)
        {
            rows[row][r] = places[r] < 0 ? 0 : benches[at].WrittenInGrams(places[r]);
        }

        double u = settings.Balances[at].ReadingStandardUncertainty();
        oddRows[row] = impossibleRule.Holds(rows[row], u);
        judgedBy[row] = judged.Of(rows[row], u);
    }

    /// <summary>The last weighing of each reading, averaged over the group's trials that are not odd. A group with one trial, or with
    /// none that is ordinary, takes what it has, and is odd in the class where that is.</summary>
    /// <returns>How many trials were averaged.</returns>
    private int Average(int group)
    {
        Span<bool> marks = oddRows.AsSpan(group * settings.Trials, settings.Trials);
        odd[group] = !marks.Contains(false);
        int kept = 0;
        Array.Clear(mean);
        for (int trial = 0; trial < marks.Length; trial++)
        {
            if (marks[trial] && !odd[group])
            {
                continue;
            }

            kept++;
            double[] row = rows[(group * settings.Trials) + trial];
            for (int r = 0; r < mean.Length; r++)
            {
                mean[r] += row[r];
            }
        }

        for (int r = 0; r < mean.Length; r++)
        {
            mean[r] /= kept;
        }

        return kept;
    }

    private void JudgeClass(Tally tally, List<double> classKeys)
    {
        double coarsest = settings.Balances.Max(b => b.ResolutionInGrams);
        for (int r = 0; r < rules.Count; r++)
        {
            if (rules[r].Test is ConclusionTest.Moves or ConclusionTest.Stays)
            {
                tally.Class(r, verdict.Of(rules[r], found[r], odd, coarsest));
            }
        }

        foreach (ConclusionRule number in numbers)
        {
            int first = IndexOf(number);
            (MeasuredValue pooled, double factor) = verdict.Pool(found[first], odd);
            for (int r = 0; r < rules.Count; r++)
            {
                if (rules[r].Test is ConclusionTest.Chooses or ConclusionTest.Within && rules[r].Test.Quantity == number.Test.Quantity)
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
        if (values.Count < 20)
        {
            return null;
        }

        double[] sorted = [.. values.Order()];
        return (Summary.QuantileOfSorted(sorted, 0.84) - Summary.QuantileOfSorted(sorted, 0.16)) / 2 / Math.Abs(accepted);
    }

    private static int LastOf(RoundsView view, string reading)
    {
        int found = -1;
        for (int i = 0; i < view.Weighings.Count; i++)
        {
            found = view.Weighings[i].Reading == reading ? i : found;
        }

        return found;
    }

    /// <summary>What was counted.</summary>
    private sealed class Tally(int conclusions)
    {
        private readonly int[] groupRight = new int[conclusions];
        private readonly int[] groupWrong = new int[conclusions];
        private readonly int[] classRight = new int[conclusions];
        private readonly int[] classWrong = new int[conclusions];

        public void Group(int conclusion, Bearing bearing)
        {
            groupRight[conclusion] += bearing == Bearing.Right ? 1 : 0;
            groupWrong[conclusion] += bearing == Bearing.Wrong ? 1 : 0;
        }

        public void Class(int conclusion, Bearing bearing)
        {
            classRight[conclusion] += bearing == Bearing.Right ? 1 : 0;
            classWrong[conclusion] += bearing == Bearing.Wrong ? 1 : 0;
        }

        public double LargestError(int classes)
        {
            double largest = 0;
            foreach (int count in classRight.Concat(classWrong))
            {
                largest = Math.Max(largest, Share.Of(count, classes).StandardError);
            }

            return largest;
        }

        public ConclusionChance Chance(ConclusionDefinition conclusion, int r, int classes, int groups) => new(
            conclusion,
            Share.Of(groupRight[r], groups),
            Share.Of(groupWrong[r], groups),
            Share.Of(classRight[r], classes),
            Share.Of(classWrong[r], classes));
    }
}
