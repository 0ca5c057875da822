using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Inference.Posterior;

/// <summary>Laws of evidence, whatever the model.</summary>
public class EvidenceTests
{
    private static readonly CauseModel Model = new(new Circumstances(Given.Magnesium), Given.Weights);

    [Fact]
    public void The_order_of_readings_and_observations_does_not_matter()
    {
        (string, string)[] readings = [("empty", "24.51"), ("before", "24.75"), ("after", "24.83"), ("after2", "24.86")];
        GroupReadings forwards = With(Given.Group("1", readings), "smoke", "grey");
        GroupReadings backwards = With(Given.Group("1", [.. readings.Reverse()]), "grey", "smoke");

        CausePosterior one = Of(forwards);
        CausePosterior other = Of(backwards);

        Assert.Equal(one.AsExpected, other.AsExpected, 1e-9);
        Assert.All(one.Causes, c => Assert.Equal(c.Probability, other.Causes.Single(o => o.Cause == c.Cause).Probability, 1e-9));
        Assert.Equal(one.LogEvidence, other.LogEvidence, 1e-6);
    }

    /// <summary>Without any evidence the prior comes back: what the model run forwards makes of its own faults.</summary>
    [Fact]
    public void No_evidence_gives_the_prior_back()
    {
        CausePosterior nothing = Of(new GroupReadings("1", null, []));
        int draws = LongProofs.Cases(4000, 40_000);
        var drawer = new GroupDrawer(new Circumstances(Given.Magnesium), Given.Weights, new SimulationPlan(draws, rounds: 1));
        SimulatedGroup[] groups = [.. Enumerable.Range(1, draws).Select(n => drawer.Draw(77, (ulong)n, n))];

        Assert.Equal(1, nothing.Causes.Sum(c => c.Probability), 1e-9);
        foreach (CauseProbability cause in nothing.Causes)
        {
            double drawn = groups.Count(g => g.Truth.Causes.DefaultIfEmpty(Causes.AsExpected).Contains(cause.Cause)) / (double)draws;
            // A slip or a missing part that nothing shows yet is taken to count; a slip of the last digit will not.
            double slack = cause.Cause is "misread" ? 0.03 : 0.012;
            Assert.InRange(cause.Present, drawn - slack - LongProofs.ThreeErrors(0.1, draws), drawn + slack + LongProofs.ThreeErrors(0.1, draws));
        }
    }

    [Fact]
    public void Readings_come_in_one_by_one_while_the_lesson_runs()
    {
        (string, string)[] readings = [("empty", "24.51"), ("before", "24.75"), ("after", "24.83"), ("after2", "24.86")];
        for (int taken = 0; taken <= readings.Length; taken++)
        {
            CausePosterior posterior = Of(Given.Group("1", readings[..taken]));

            Assert.Equal(1, posterior.Causes.Sum(c => c.Probability), 1e-9);
            Assert.All(posterior.Causes, c => Assert.InRange(c.Present, c.Probability - 1e-9, 1));
        }
    }

    [Fact]
    public void What_was_seen_moves_its_own_causes()
    {
        GroupReadings silent = Given.Group("1", ("empty", "24.51"), ("before", "24.75"), ("after", "24.84"));

        double without = Of(silent).Causes.Single(c => c.Cause == "product-lost").Present;
        double with = Of(With(silent, "white smoke when the lid was lifted")).Causes.Single(c => c.Cause == "product-lost").Present;
        double denied = Of(With(silent, "no white smoke")).Causes.Single(c => c.Cause == "product-lost").Present;

        Assert.True(with > without + 0.05, $"{with} against {without}");
        Assert.True(denied < with - 0.05, $"{denied} against {with}");
    }

    /// <summary>30 g of porcelain with its lid is still about 80 K above the room after 6 minutes and 3 K after 26 (cooling law
    /// of still air, computed): 16 mg low against nothing.</summary>
    [Fact]
    public void Minutes_since_the_flame_was_put_out_tell_of_warmth()
    {
        GroupReadings group = Given.Group("1", ("empty", "24.51"), ("before", "24.75"), ("after", "24.87"));

        double Warm(string noted) => Of(With(group, noted)).Causes.Single(c => c.Cause == "weighed-warm").Present;

        Assert.True(Warm("flame out 6 min") > 2 * Warm("flame out 26 min"), $"{Warm("flame out 6 min")} against {Warm("flame out 26 min")}");
    }

    [Fact]
    public void A_ready_made_mass_stands_in_for_a_reading_that_is_missing()
    {
        CausePosterior readings = Of(Given.Group("1", ("empty", "24.51"), ("before", "24.75"), ("after", "24.83")));
        CausePosterior column = Of(Given.Group("1", ("before", "24.75"), ("after", "24.83"), ("sampleColumn", "0.24")));

        // The column says as much of the sample; only slips of the empty vessel's own digits are out of sight.
        Assert.Equal(readings.AsExpected, column.AsExpected, 0.05);
    }

    private static CausePosterior Of(GroupReadings group) =>
        Model.Of(group, Given.Class(Given.Magnesium, group).Balance, Model.UsualAmounts(1), group.Remarks.Observations.Count > 0);

    private static GroupReadings With(GroupReadings group, params string[] seen) =>
        new(group.Name, null, group.Readings, group.DerivedColumns, new GroupRemarks(observations: seen));
}
