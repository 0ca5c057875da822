using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Model.Simulation;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Inference.Posterior;

/// <summary>A cause that most groups share is found as one, and an ordinary class shares none.</summary>
public class SharedCauseTests
{
    [Fact]
    public void A_class_that_weighed_on_a_shifted_balance_shares_that_cause()
    {
        // One balance reads 0.09 g high from the second weighing on; the other half of the class used another.
        ClassFindings found = Analyse(Enumerable.Range(0, 10).Select(i => Shifted(i, i % 2 == 0 ? 0.09 : 0)));

        SharedCause shared = Assert.Single(found.Class.SharedCauses, s => s.Balance == "A");
        Assert.Equal("zero-shifted", shared.Cause);
        Assert.InRange(shared.Probability, 0.5, 1);
        Assert.DoesNotContain(found.Class.SharedCauses, s => s.Balance == "B");
    }

    [Fact]
    public void Twelve_groups_that_stopped_too_early_share_it()
    {
        ClassFindings found = Draw("not-all-reacted", seed: 11);

        SharedCause shared = Assert.Single(found.Class.SharedCauses);
        Assert.Equal("not-all-reacted", shared.Cause);
        Assert.Contains("not all of the magnesium", shared.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1UL)]
    [InlineData(2UL)]
    [InlineData(3UL)]
    public void An_ordinary_class_shares_nothing(ulong seed) => Assert.Empty(Draw(null, seed).Class.SharedCauses);

    private static ClassFindings Draw(string? cause, ulong seed)
    {
        var plan = new SimulationPlan(12, rounds: 2, cause: cause, notesObservations: false);
        var drawer = new GroupDrawer(new Circumstances(Given.Magnesium), Given.Weights, plan);
        return Analyse(Enumerable.Range(1, 12).Select(n => drawer.Draw(seed, (ulong)n, n).HandedIn()));
    }

    private static GroupReadings Shifted(int number, double grams)
    {
        double empty = 24.5 + (number * 0.37);
        double sample = 0.23 + (number * 0.004);
        GroupReadings group = Given.Group(
            $"{number}",
            ("empty", Text(empty)),
            ("before", Text(empty + sample)),
            ("after", Text(empty + (sample * 1.64) + grams)),
            ("after2", Text(empty + (sample * 1.64) + grams)));
        return new GroupReadings(group.Name, null, group.Readings, [], new GroupRemarks(balance: grams > 0 ? "A" : "B"));
    }

    private static string Text(double grams) => grams.ToString("F2", System.Globalization.CultureInfo.InvariantCulture);

    private static ClassFindings Analyse(IEnumerable<GroupReadings> groups) =>
        ClassAnalysis.Of(Given.Magnesium, Given.Class(Given.Magnesium, [.. groups]), Given.Weights);
}
