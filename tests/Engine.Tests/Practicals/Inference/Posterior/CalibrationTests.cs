using Calx.Measurement.Distributions;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Inference.Posterior;

/// <summary>
/// Simulation-based calibration (S. Talts and others, Validating Bayesian inference algorithms with simulation-based
/// calibration, 2018): groups drawn from the model, held against what the model read backwards says of them. The short run
/// has wide bounds; figures of the full one stand in docs/methods/causes.md.
/// </summary>
public class CalibrationTests(ITestOutputHelper figures)
{
    /// <summary>Chance of a true program failing a chi-square test here.</summary>
    private const double Level = 0.001;

    /// <summary>How uneven ranks may be, root mean square over the bins, where all is judged and in the others: there a number that the readings
    /// hardly tell can have its points in a few places only, once the others are told (docs/methods/causes.md).</summary>
    private const double Uneven = 0.05, UnevenElsewhere = 0.4;

    /// <summary>Probability of a cause from which on its size is judged.</summary>
    private const double LeastTold = 0.3;

    /// <summary>The three that are calibrated in full; all others in short.</summary>
    private static readonly string[] InFull = ["magnesium-oxide", "copper-sulfate-hydrate", "sodium-hydrogencarbonate"];

    public static TheoryData<string> Ids => [.. BuiltInPracticals.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Causes_come_true_as_often_as_they_are_probable_and_numbers_lie_where_they_are_said_to(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        int groups = InFull.Contains(id) ? LongProofs.Cases(160, 20_000) : LongProofs.Cases(80, 800);
        var circumstances = new Circumstances(practical);
        var model = new CauseModel(circumstances, Given.Weights);
        var drawer = new GroupDrawer(circumstances, Given.Weights, new SimulationPlan(groups, rounds: 2, notesObservations: false));
        IReadOnlyList<AmountPrior> amounts = model.UsualAmounts(1);
        BalanceReport balance = Given.Class(practical).Balance;
        // What differs from group to group by a law without lumps, so that a true number has a rank of its own.
        string[] putIn = [.. model.Hidden.Rule.Amounts.Parameters.Select(p => practical.Parameters[p].Id)];
        int[] watched = [.. Enumerable.Range(0, practical.Parameters.Count).Where(p => !putIn.Contains(practical.Parameters[p].Id) && !practical.Parameters[p].Shared && practical.Parameters[p].Law is not (ParameterLaw.Fixed or ParameterLaw.Normal)).Take(3)];
        int amount = IndexOf(model, model.Hidden.Rule.Amounts.Parameters[0]);
        var judged = new Judged[groups];
        Parallel.For(0, groups, g =>
        {
            SimulatedGroup group = drawer.Draw(2018, (ulong)g, g + 1);
            CausePosterior posterior = model.Of(group.HandedIn(), balance, amounts, silenceCounts: false);
            judged[g] = new Judged(
                [.. posterior.Causes.Select(c => (c.Probability, True(group, c.Cause)))],
                [.. watched.Select(w => PosteriorRank.Below(posterior, w, group.Truth.Values[IndexOf(model, w)])), BelowAmount(posterior, group.Truth.Values[amount])],
                [.. SizesHold(posterior, practical, group)]);
        });

        double error = ExpectedCalibrationError(judged);
        double score = judged.Average(j => j.Causes.Sum(c => c.True * Math.Log(Math.Max(c.Probability, 1e-9))));
        figures.WriteLine($"{id}: {groups} groups: expected calibration error {error:F4}, mean log score {score:F3}");
        Assert.InRange(error, 0, LongProofs.Cases(60, 30) / 1000.0);
        Assert.InRange(score, -1.6, 0);
        for (int number = 0; number <= watched.Length; number++)
        {
            double[] ranks = [.. judged.Select(j => j.Ranks[number])];
            int bins = LongProofs.Cases(8, 20);
            double due = groups / (double)bins;
            double chi = Enumerable.Range(0, bins).Sum(b => Math.Pow(ranks.Count(r => (int)Math.Min(bins - 1, r * bins) == b) - due, 2) / due);
            double covered = ranks.Count(r => r is > 0.025 and < 0.975) / (double)groups;
            figures.WriteLine($"{NameOf(number)}: chi-square {chi:F1} with {bins - 1} degrees of freedom, 95 % interval holds {covered:P2}");
            // A hundred numbers of the shelf are looked at: each may fail by chance once in a hundred times as many runs. Beyond chance the bins
            // may be uneven by what the points leave open.
            double bound = ChiSquared.UpperQuantile(InFull.Contains(id) ? Level : Level / 100, bins - 1) + (groups * Math.Pow(InFull.Contains(id) ? Uneven : UnevenElsewhere, 2));
            Assert.True(chi < bound, $"{NameOf(number)}: chi-square {chi:F1} with {bins - 1} degrees of freedom");
            double error95 = 4 * Math.Sqrt(0.95 * 0.05 / groups);
            Assert.InRange(covered, 0.93 - error95, 0.97 + error95);
        }

        string NameOf(int number) => number < watched.Length ? practical.Parameters[watched[number]].Id : "amount";

        bool[] held = [.. judged.SelectMany(j => j.Sizes)];
        double share = held.Count(h => h) / (double)Math.Max(1, held.Length);
        figures.WriteLine($"{held.Length} sizes: 95 % range holds {share:P2}");
        Assert.InRange(share, 0.92 - (4 * Math.Sqrt(0.92 * 0.08 / Math.Max(1, held.Length))), 1);
    }

    /// <summary>Place of a parameter's first number among those of the walk.</summary>
    private static int IndexOf(CauseModel model, int parameter) => model.Hidden.Program.Dimensions.IndexOf(parameter, 0);

    /// <summary>Of each cause that is true and probable enough to have its size told: whether the true size lies in the middle 95 %.</summary>
    private static IEnumerable<bool> SizesHold(CausePosterior posterior, Practical practical, SimulatedGroup group)
    {
        foreach (int fault in group.Truth.Counting.Faults.Where(f => practical.Faults[f].Effect is not FaultEffect.Pen))
        {
            Atom[] with = [.. posterior.Atoms.Where(a => a.Counting.Has(fault))];
            double present = with.Sum(a => a.Weight);
            if (present > LeastTold)
            {
                double below = with.Where(a => a.Moved[fault] < group.Truth.MovedInGrams[fault]).Sum(a => a.Weight) / present;
                yield return below is > 0.025 and < 0.975;
            }
        }
    }

    /// <summary>1 for the true cause, a half for each of a true pair.</summary>
    private static double True(SimulatedGroup group, string cause)
    {
        IReadOnlyList<string> causes = group.Truth.Causes;
        return causes.Count == 0 ? (cause == Causes.AsExpected ? 1 : 0) : causes.Contains(cause) ? 1.0 / causes.Count : 0;
    }

    /// <summary>Posterior probability below the true first amount that is put in, which is integrated out by itself.</summary>
    private static double BelowAmount(CausePosterior posterior, double truth)
    {
        GroupProblem problem = posterior.Problem;
        var fit = new PointFit(problem.View.Table, problem.Unknowns, problem.Rows);
        double sum = 0;
        double[] line = new double[problem.Unknowns.Count];
        line[problem.Unknowns.Parts] = 1;
        foreach (Atom atom in posterior.Atoms)
        {
            fit.Fit(atom.Point, problem.Grams);
            double deviation = Math.Sqrt(fit.VarianceOf(line));
            sum += atom.Weight * StandardNormal.Cumulative((truth - atom.Estimates[problem.Unknowns.Parts]) / deviation);
        }

        return sum;
    }

    /// <summary>Over all causes of all groups in ten bins of probability: how far the share that came true lies from the
    /// probability, weighed by the bins.</summary>
    private static double ExpectedCalibrationError(Judged[] judged)
    {
        (double Probability, double True)[] all = [.. judged.SelectMany(j => j.Causes)];
        return all.GroupBy(c => (int)Math.Min(9, c.Probability * 10))
            .Sum(bin => bin.Count() / (double)all.Length * Math.Abs(bin.Average(c => c.Probability) - bin.Average(c => c.True)));
    }

    private sealed record Judged((double Probability, double True)[] Causes, double[] Ranks, bool[] Sizes);
}
