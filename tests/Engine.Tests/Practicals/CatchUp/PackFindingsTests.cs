using Calx.Engine.Tests.Practicals.Inference;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Clock;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.CatchUp;

/// <summary>
/// Findings on catch-up data give back the truth at the rates of the diagnosis: among packs in which something went wrong, and among those
/// in which nothing did, the model read backwards names the true cause first, and scores it, as it does among plainly simulated groups of
/// the same kind, which another path draws. Bounds: three standard errors of the difference of the two samples.
/// </summary>
public class PackFindingsTests(ITestOutputHelper figures)
{
    private const double Share = 0.5;

    private static readonly int Count = LongProofs.Cases(150, 1000);

    private static readonly int Groups = LongProofs.Cases(400, 4000);

    [Theory]
    [InlineData("magnesium-oxide")]
    [InlineData("copper-sulfate-hydrate")]
    public void The_true_cause_is_found_as_often_as_in_groups_that_were_simulated_plainly(string id)
    {
        PlanSettings plan = Packs.Plan(BuiltInPracticals.Find(id)!);
        Practical practical = plan.Practical;
        var circumstances = new Circumstances(practical, plan.AllConditions);
        var model = new CauseModel(circumstances, Given.Weights);
        Judged[] packs = Judge(model, Packs.Drawn(plan, Count, Share).Select(d => (d.Truth.Cause, Handed(d))));
        Judged[] plain = Judge(model, Plain(plan, circumstances));
        foreach (bool odd in (bool[])[true, false])
        {
            Judged[] own = [.. packs.Where(j => j.IsOdd == odd)];
            Judged[] others = [.. plain.Where(j => j.IsOdd == odd)];
            double mine = own.Average(j => j.First ? 1.0 : 0), due = others.Average(j => j.First ? 1.0 : 0);
            double together = ((mine * own.Length) + (due * others.Length)) / (own.Length + others.Length);
            double bound = 3 * Math.Sqrt(together * (1 - together) * ((1.0 / own.Length) + (1.0 / others.Length)));
            double score = own.Average(j => j.Score), dueScore = others.Average(j => j.Score);
            double scoreBound = 3 * Math.Sqrt((Variance(own) / own.Length) + (Variance(others) / others.Length));
            figures.WriteLine(FormattableString.Invariant(
                $"{id}, {(odd ? "odd" : "as expected")}: first in {mine:P1} of {own.Length} packs and {due:P1} of {others.Length} groups (bound {bound:P1}); mean log score {score:F3} and {dueScore:F3} (bound {scoreBound:F3})"));
            Assert.InRange(mine, due - bound, due + bound);
            Assert.InRange(score, dueScore - scoreBound, dueScore + scoreBound);
        }
    }

    /// <summary>Groups drawn as a class is, without those that no pack may be.</summary>
    private static IEnumerable<(string Cause, GroupReadings Readings)> Plain(PlanSettings plan, Circumstances circumstances)
    {
        IReadOnlySet<string> never = NeverPlanted.Of(plan.Practical);
        SimulatedClass drawn = SimulatedClass.Draw(
            circumstances, Given.Weights, new SimulationPlan(Groups, plan.Balances[0], PlanSettings.MostHeatings(plan.Practical), notesObservations: false), seed: 77);
        return drawn.Groups
            .Where(g => !g.Truth.Faults.Faults.Concat(g.Truth.Counting.Faults).Any(f => never.Contains(plan.Practical.Faults[f].Cause)))
            .Select(g => (g.Truth.Cause, g.HandedIn()));
    }

    private static GroupReadings Handed(DrawnPack pack) =>
        new("pack", trial: null, [.. pack.Readings.Select(r => new TakenReading(r.Weighing.Reading, r.Weighing.Occurrence, r.Displayed))]);

    private static Judged[] Judge(CauseModel model, IEnumerable<(string Cause, GroupReadings Readings)> groups)
    {
        (string Cause, GroupReadings Readings)[] all = [.. groups];
        var judged = new Judged[all.Length];
        BalanceReport balance = Given.Class(model.Practical).Balance;
        IReadOnlyList<AmountPrior> amounts = model.UsualAmounts(2);
        Parallel.For(0, all.Length, i =>
        {
            IReadOnlyList<CauseProbability> causes = model.Of(all[i].Readings, balance, amounts, silenceCounts: false).Causes;
            judged[i] = new Judged(
                all[i].Cause != Causes.AsExpected, causes[0].Cause == all[i].Cause, Math.Log(Math.Max(causes.First(c => c.Cause == all[i].Cause).Probability, 1e-6)));
        });
        return judged;
    }

    private static double Variance(Judged[] judged)
    {
        double mean = judged.Average(j => j.Score);
        return judged.Sum(j => (j.Score - mean) * (j.Score - mean)) / (judged.Length - 1);
    }

    private sealed record Judged(bool IsOdd, bool First, double Score);
}
