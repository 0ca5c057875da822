using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Inference.Posterior;

/// <summary>
/// Groups invented by another model of the same bench, with mechanisms and sizes that ours does not know
/// (tests/reference/scripts/other_bench.py, written without sight of ours): 600 groups of magnesium at 0.01 g, 300 each of
/// magnesium at 0.001 g, hydrate and hydrogencarbonate at 0.01 g. The short run takes the first of each.
/// </summary>
public class OtherBenchTests
{
    private static readonly int Most = LongProofs.Cases(96, 1000);

    [Fact]
    public void Causes_of_another_bench_are_named()
    {
        Seen[] seen =
        [
            .. Run("magnesium-0.01", Given.Magnesium, 0.01m),
            .. Run("magnesium-0.001", Given.Magnesium, 0.001m),
            .. Run("hydrate-0.01", Given.Hydrate, 0.01m),
            .. Run("hydrogencarbonate-0.01", Given.Hydrogencarbonate, 0.01m),
        ];
        double gross = Share(seen.Where(s => s.Gross), s => s.First == s.True);
        double within = Share(seen, s => s.Within);
        double falseAlarm = Share(seen.Where(s => s.True == Causes.AsExpected), s => s.First != s.True);

        Assert.True(gross >= 0.95, $"a gross fault comes first in {gross:P1}");
        Assert.True(within >= LongProofs.Cases(840, 880) / 1000.0, $"the true cause lies in the smallest set of 90 % in {within:P1}");
        Assert.True(falseAlarm <= 0.08, $"a sound group is called faulty in {falseAlarm:P1}");
        Assert.True(seen.Average(s => s.Size) < 3.5, "the sets stay small");
    }

    private static double Share(IEnumerable<Seen> groups, Func<Seen, bool> has)
    {
        Seen[] all = [.. groups];
        Assert.True(all.Length >= 20);
        return all.Count(has) / (double)all.Length;
    }

    private static Seen[] Run(string set, Practical practical, decimal division)
    {
        string[][] rows = Lines($"{set}.csv");
        Dictionary<string, string[]> truths = Lines($"{set}.truth.csv").ToDictionary(r => r[0], StringComparer.Ordinal);
        var model = new CauseModel(new Circumstances(practical), Given.Weights);
        var balance = new BalanceReport(new BalanceOptions(division, null), new Dictionary<string, decimal>());
        (GroupReadings[] Class, Classmates Mates)[] classes =
        [
            .. rows.Take(Most).Select(Group).GroupBy(g => g.Name[..3], StringComparer.Ordinal)
                .Select(c => (c.ToArray(), model.ClassmatesOf([.. c]))),
        ];
        (GroupReadings Group, Classmates Mates)[] groups = [.. classes.SelectMany(c => c.Class.Select(g => (g, c.Mates)))];
        var seen = new Seen[groups.Length];
        Parallel.For(0, groups.Length, i => seen[i] = Judge(model.Of(groups[i].Group, balance, groups[i].Mates), truths[groups[i].Group.Name]));
        return seen;
    }

    private static Seen Judge(CausePosterior posterior, string[] truth)
    {
        int size = 0;
        double held = 0;
        bool within = false;
        foreach (CauseProbability cause in posterior.Causes)
        {
            within |= cause.Cause == truth[1];
            held += cause.Probability;
            size++;
            if (held >= 0.9)
            {
                break;
            }
        }

        return new Seen(truth[1], truth[5] == "yes", posterior.Causes[0].Cause, within, size);
    }

    private static GroupReadings Group(string[] row)
    {
        string[] ids = ["empty", "before", "after", "after2", "after3"];
        return Given.Group(row[0], [.. ids.Zip(row[1..]).Where(c => c.Second.Length > 0).Select(c => (c.First, c.Second))]);
    }

    /// <summary>Rows behind the heading; no cell but a heading holds a comma.</summary>
    private static string[][] Lines(string file) =>
    [
        .. File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "reference", "computed", "other-bench", file))
            .Where(l => !l.StartsWith('#')).Skip(1).Select(l => l.Split(',')),
    ];

    private sealed record Seen(string True, bool Gross, string First, bool Within, int Size);
}
