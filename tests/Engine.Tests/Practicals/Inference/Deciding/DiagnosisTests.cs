using Calx.Measurement.Weighing;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Model.Faults;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Inference.Deciding;

/// <summary>What a group is told to do, and how it is told. The readings are worked out by hand from 0.24 g of magnesium, which
/// should gain 0.158 g.</summary>
public class DiagnosisTests
{
    private static readonly CauseModel Magnesium = new(new Circumstances(Given.Magnesium), Given.Weights);

    [Fact]
    public void Constant_and_full_gain_is_constant_mass()
    {
        GroupDiagnosis found = Of(("empty", "24.51"), ("before", "24.75"), ("after", "24.90"), ("after2", "24.90"));

        Assert.Equal("constant-mass", Taken(found).Word);
        Assert.Equal(Causes.AsExpected, found.First.Cause);
        Assert.InRange(Taken(found).ProbabilitySpoiled, 0, 0.1);
    }

    [Fact]
    public void A_mass_that_still_rises_far_below_what_is_due_is_heated_again()
    {
        GroupDiagnosis found = Of(("empty", "24.51"), ("before", "24.75"), ("after", "24.79"), ("after2", "24.83"));

        Assert.Equal("reheat", Taken(found).Word);
        Assert.Equal("not-all-reacted", found.First.Cause);
        Assert.Contains("18 min", Taken(found).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void No_heating_is_asked_for_beyond_those_that_the_practical_plans() => Assert.NotEqual(
        "reheat",
        Taken(Of(("empty", "24.51"), ("before", "24.75"), ("after", "24.77"), ("after2", "24.79"), ("after3", "24.82"))).Word);

    [Theory]
    [InlineData("25.90", "24.90", "misread")]
    [InlineData("14.90", "24.90", "misread")]
    [InlineData("24.09", "24.90", "misread")]
    [InlineData("13.47", null, "part-left-off")]
    public void A_gross_reading_is_looked_at_again(string after, string? shown, string cause)
    {
        GroupDiagnosis found = Of(("empty", "24.51"), ("before", "24.75"), ("after", after));

        Assert.Equal("check-reading", Taken(found).Word);
        Assert.Equal(cause, found.First.Cause);
        Assert.Equal("after", Taken(found).Reading);
        Assert.Equal(shown, Taken(found).ProbableDigits);
        // The student is not told the digits.
        Assert.Equal("Your balance shows two decimals. Look again and type all you see.", found.ForStudent);
    }

    [Fact]
    public void A_balance_too_coarse_for_the_change_cannot_tell()
    {
        GroupReadings group = Given.Group("1", ("empty", "24.5"), ("before", "24.7"), ("after", "24.9"));
        var balance = new BalanceReport(new BalanceOptions(0.1m, null), new Dictionary<string, decimal>());

        GroupDiagnosis found = Diagnosis.Of(Magnesium.Of(group, balance), null, Given.Weights);

        Assert.Equal("cannot-tell", Taken(found).Word);
    }

    [Fact]
    public void A_cracked_crucible_comes_before_all_arithmetic()
    {
        GroupReadings group = Given.Group("1", ("empty", "24.51"), ("before", "24.75"), ("after", "24.90"));
        group = new GroupReadings(group.Name, null, group.Readings, [], new GroupRemarks(observations: ["crucible cracked", "cracked"]));

        GroupDiagnosis found = Diagnosis.Of(Magnesium.Of(group, Given.Class(Given.Magnesium, group).Balance), null, Given.Weights);

        Assert.Equal("stop-tell-your-teacher", Taken(found).Word);
        Assert.StartsWith("Stop", found.ForStudent, StringComparison.Ordinal);
        Assert.IsType<NextStep.None>(found.Next);
    }

    [Fact]
    public void Before_anything_is_heated_there_is_nothing_to_decide() =>
        Assert.IsType<Decision.NotYet>(Of(("empty", "24.51"), ("before", "24.75")).Decision);

    /// <summary>One low final mass: product lost, water driven off and unburnt metal predict the same; the trade's facts
    /// (common practice, no source) say that a reheat tells unburnt metal by its rise.</summary>
    [Fact]
    public void Causes_that_masses_cannot_separate_stay_tied_and_a_step_is_named()
    {
        GroupDiagnosis found = Of(("empty", "24.51"), ("before", "24.75"), ("after", "24.84"));

        Assert.Contains(found.Tied, t => t.Causes.Contains("product-lost"));
        NextStep.Do step = Assert.IsType<NextStep.Do>(found.Next);
        Assert.InRange(step.InformationBits, 0.03, 3);
        Assert.Contains(Given.Magnesium.Actions, a => a.Id == step.Action && a.Minutes == step.Minutes);
    }

    [Fact]
    public void Nobody_is_told_to_touch_smell_or_wet_anything()
    {
        string[] words = ["touch", "smell", "taste", "acid", "water on"];
        foreach (Practical practical in BuiltInPracticals.All)
        {
            Assert.All(practical.Actions.Where(a => !a.TeacherOnly), a =>
                Assert.DoesNotContain(words, w => a.Label.Contains(w, StringComparison.OrdinalIgnoreCase)));
        }
    }

    /// <summary>E. Blade's coefficient, 0.19 mg for each kelvin: a crucible 53 K too warm reads one division of 0.01 g low.</summary>
    [Fact]
    public void Warmth_of_53_K_is_one_division_of_a_centigram_balance() =>
        Assert.Equal(0.010, WarmVessel.LowReadingInGrams(53), 2e-4);

    private static Decision.Taken Taken(GroupDiagnosis diagnosis) => Assert.IsType<Decision.Taken>(diagnosis.Decision);

    private static GroupDiagnosis Of(params (string Id, string Digits)[] readings)
    {
        GroupReadings group = Given.Group("1", readings);
        return Diagnosis.Of(Magnesium.Of(group, Given.Class(Given.Magnesium, group).Balance), null, Given.Weights);
    }
}
