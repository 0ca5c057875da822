using Calx.Engine.Tests.Practicals.Inference;
using Calx.Measurement.Distributions;
using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;

namespace Calx.Engine.Tests.Practicals.Model.Simulation;

/// <summary>Invented classes: the same from the same seed, and drawn as the practical says. Chances of a true program failing
/// are 1 in 1000 a test, and the seeds are fixed.</summary>
public class SimulatedClassTests
{
    private const double Chance = 0.001;

    public static TheoryData<string> Practicals => [.. BuiltInPracticals.Ids];

    public static TheoryData<string> Repeated => [.. BuiltInPracticals.All.Where(p => p.Findings.ConstantMass is not null).Select(p => p.Id)];

    [Fact]
    public void A_class_depends_on_its_seed_and_on_nothing_else()
    {
        string[] one = Lines(Draw(Given.Magnesium, new SimulationPlan(40), seed: 5, threads: 1));
        Assert.Equal(one, Lines(Draw(Given.Magnesium, new SimulationPlan(40), seed: 5, threads: 4)));
        Assert.Equal(one[..7], Lines(Draw(Given.Magnesium, new SimulationPlan(7), seed: 5)));
        Assert.NotEqual(one, Lines(Draw(Given.Magnesium, new SimulationPlan(40), seed: 6)));
        Assert.Equal(40, one.Distinct().Count());
    }

    [Theory]
    [MemberData(nameof(Practicals))]
    public void Sets_of_faults_come_as_often_as_the_practical_says(string id)
    {
        int draws = LongProofs.Cases(4000, 40_000);
        var circumstances = new Circumstances(BuiltInPracticals.Find(id)!);
        IReadOnlyList<SimulatedGroup> groups = Draw(circumstances.Practical, new SimulationPlan(draws), seed: 3).Groups;
        // Sets of which fewer than ten are due are held together.
        (double Expected, int Seen)[] each = [.. new FaultPrior(circumstances).Sets
            .Select(s => (s.Probability * draws, groups.Count(g => g.Truth.Faults == s.Set)))];
        (double Expected, int Seen)[] classes = [.. each.Where(e => e.Expected >= 10)];
        Assert.True(classes.Length > 15);
        classes = [.. classes, (draws - classes.Sum(c => c.Expected), draws - classes.Sum(c => c.Seen))];
        Assert.InRange(
            classes.Sum(c => Math.Pow(c.Seen - c.Expected, 2) / c.Expected),
            0,
            ChiSquared.UpperQuantile(Chance, classes.Length - 1));
    }

    [Theory]
    [MemberData(nameof(Practicals))]
    public void A_cause_that_is_asked_for_counts_alone_in_every_group(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        foreach (FaultDefinition fault in practical.Faults)
        {
            SimulatedClass drawn = Draw(practical, new SimulationPlan(5, new Balance(0.001), cause: fault.Cause), seed: 1);
            Assert.All(drawn.Groups, g => Assert.Equal([fault.Cause], g.Truth.Causes));
            Assert.All(drawn.Groups, g => Assert.Equal(fault.Cause, practical.Faults[Assert.Single(g.Truth.Faults.Faults)].Cause));
        }
    }

    // The film that ribbon can carry moves the gain by at most 0.66 x 0.6 of some 0.25 g: two steps of 0.5 g hide it.
    [Fact]
    public void A_cause_that_the_balance_cannot_show_is_said_to_be_so()
    {
        var plan = new SimulationPlan(3, new Balance(0.5), cause: "tarnished-sample");
        CannotSimulateException fault = Assert.Throws<CannotSimulateException>(() => Draw(Given.Magnesium, plan, seed: 1));
        Assert.StartsWith("'tarnished-sample' alone moved no result by enough to count", fault.Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => Draw(Given.Magnesium, new SimulationPlan(3, cause: "overheated"), seed: 1));
    }

    [Theory]
    [MemberData(nameof(Repeated))]
    public void Groups_heat_again_while_the_last_two_weighings_differ(string id)
    {
        Practical practical = BuiltInPracticals.Find(id)!;
        string repeated = practical.Findings.ConstantMass!.Reading;
        decimal tolerance = 0.01m * (decimal)practical.Findings.ConstantMass.ToleranceInDivisions;
        int most = practical.Reading(repeated).Repeats;
        SimulatedClass drawn = Draw(practical, new SimulationPlan(500), seed: 8);
        foreach (SimulatedGroup group in drawn.Groups)
        {
            decimal[] weighed = [.. group.Readings.Where(r => r.Weighing.Reading == repeated).Select(r => r.Written.Value)];
            bool[] same = [.. weighed.Skip(1).Select((w, i) => Math.Abs(w - weighed[i]) <= tolerance)];
            Assert.InRange(weighed.Length, 2, most);
            Assert.DoesNotContain(true, same[..^1]);
            Assert.True(same[^1] || weighed.Length == most);
        }

        Assert.Contains(drawn.Groups, g => g.Readings.Count == practical.Readings.Count + 1);
        Assert.All(Draw(practical, new SimulationPlan(5, rounds: 1), seed: 8).Groups, g => Assert.Equal(practical.Readings.Count, g.Readings.Count));
        Assert.All(Draw(practical, new SimulationPlan(5, rounds: 9), seed: 8).Groups, g => Assert.Equal(practical.Readings.Count + most - 1, g.Readings.Count));
    }

    [Fact]
    public void Slips_befall_every_weighing_alike_and_only_where_a_group_misreads()
    {
        var plan = new SimulationPlan(LongProofs.Cases(3000, 30_000), rounds: 2, notesObservations: false);
        SimulatedClass drawn = Draw(Given.Magnesium, plan, seed: 2);
        int misread = Given.Magnesium.Faults.Select((f, i) => (f, i)).Single(x => x.f.Cause == "misread").i;
        int[] slips = new int[4];
        foreach (SimulatedGroup group in drawn.Groups)
        {
            int[] at = [.. Enumerable.Range(0, 4).Where(i => group.Readings[i].IsSlip)];
            Assert.True(at.Length == 0 || group.Truth.Faults.Has(misread));
            foreach (int i in at)
            {
                slips[i]++;
            }
        }

        // The vessel's own mass, with a zero at its end, slips as often as any other.
        double expected = slips.Sum() / 4.0;
        Assert.InRange(slips.Sum(), 100, 0.12 * plan.Groups);
        Assert.InRange(slips.Sum(s => Math.Pow(s - expected, 2) / expected), 0, ChiSquared.UpperQuantile(Chance, 3));
    }

    [Fact]
    public void Observations_are_noted_as_often_as_the_causes_that_count_make_them()
    {
        Practical practical = Given.Magnesium;
        IReadOnlyList<SimulatedGroup> groups = Draw(practical, new SimulationPlan(LongProofs.Cases(3000, 30_000)), seed: 4).Groups;
        int compared = 0;
        foreach (Observation observation in practical.Observations.Where(o => !o.Stop && !o.TeacherOnly))
        {
            double[] due = [.. groups.Select(g => Math.Exp(new SeenEvidence(practical, [observation.Id], silenceCounts: false).LogLikelihood(g.Truth.Counting)))];
            double spread = Math.Sqrt(due.Sum(p => p * (1 - p)));
            int seen = groups.Count(g => g.Observations.Contains(observation.Id));
            Assert.InRange(seen, due.Sum() - (4 * spread), due.Sum() + (4 * spread));
            compared++;
        }

        Assert.True(compared >= 3);
        Assert.DoesNotContain(groups, g => g.Observations.Any(id => practical.Observations.Single(o => o.Id == id) is { Stop: true } or { TeacherOnly: true }));
        Assert.All(
            Draw(practical, new SimulationPlan(50, notesObservations: false), seed: 4).Groups, g => Assert.Empty(g.Observations));
    }

    [Theory]
    [InlineData(0.1)]
    [InlineData(0.01)]
    [InlineData(0.001)]
    [InlineData(0.02)]
    public void Every_display_is_the_nearest_step_to_what_stands_on_the_pan(double step)
    {
        var balance = new Balance(step, repeatabilityInDivisions: 0);
        foreach (SimulatedReading reading in Draw(Given.Hydrate, new SimulationPlan(200, balance), seed: 9).Groups.SelectMany(g => g.Readings))
        {
            double onPan = reading.TrueMassInGrams + reading.ShiftInGrams;
            Assert.InRange(Math.Abs(reading.Displayed.AsDouble - onPan), 0, (step / 2) + 1e-9);
            Assert.Equal(balance.Decimals, reading.Displayed.Decimals);
        }
    }

    [Fact]
    public void A_sample_that_is_given_is_the_middle_of_the_class()
    {
        SimulatedClass drawn = Draw(Given.Magnesium, new SimulationPlan(2000, sampleInGrams: 0.12), seed: 7);
        double[] samples = [.. drawn.Groups.Select(g => g.Readings[1].TrueMassInGrams - g.Readings[0].TrueMassInGrams)];
        // Normal with a spread of a fifth: the standard error of the median is 1.253 x 0.2 x 0.12 g / sqrt(2000).
        Assert.Equal(0.12, samples.Order().ElementAt(1000), 4 * 1.253 * 0.024 / Math.Sqrt(2000));
        Assert.All(samples, s => Assert.True(s > 0));
    }

    private static SimulatedClass Draw(Practical practical, SimulationPlan plan, ulong seed, int threads = 0) =>
        SimulatedClass.Draw(new Circumstances(practical), Given.Weights, plan, seed, threads, TestContext.Current.CancellationToken);

    private static string[] Lines(SimulatedClass drawn) =>
    [
        .. drawn.Groups.Select(g => string.Join(' ', g.Readings.Select(r => $"{r.Written} {r.TrueMassInGrams:R}"))
            + string.Join(',', g.Observations) + string.Join(',', g.Truth.Causes) + g.Name),
    ];
}
