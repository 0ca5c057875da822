using Calx.Engine.Tests.Practicals.Inference;
using Calx.Measurement.Numbers;
using Calx.Practicals.CatchUp;
using Calx.Practicals.Model;

namespace Calx.Engine.Tests.Practicals.CatchUp;

/// <summary>What follows from a student's readings, by hand.</summary>
public class PackWorkingTests
{
    private static readonly PackTruth Nothing = new([], 0);

    /// <summary>0.24 g of magnesium, 0.10 g and then 0.15 g of oxygen: IUPAC, Mg 24.305 and O 15.999 g/mol, to five figures.</summary>
    [Fact]
    public void Answers_are_worked_from_the_own_readings_for_every_place_to_stop()
    {
        CatchUpPack pack = Of("24.51", "24.75", "24.85", "24.90");

        Assert.Equal(0.24, Value(1, "massMagnesium"), 10);
        Assert.Equal(0.10, Value(1, "massOxygen"), 10);
        Assert.Equal(0.15, Value(2, "massOxygen"), 10);
        Assert.Equal(0.24 / 24.305, Value(2, "molesMagnesium"), 1e-6);
        Assert.Equal(0.24 / 24.305 / (0.15 / 15.999), Value(2, "ratio"), 2e-4);
        Assert.Equal(10, pack.Answers.Count);

        double Value(int heating, string id) => pack.Answers.Single(a => a.Heating == heating && a.Answer.Id == id).Value;
    }

    /// <summary>By hand: with 24.3 and 16.0 and steps of two figures, 0.0099 mol to 0.0094 mol, a ratio of 1.05; with whole molar masses
    /// 0.010 mol to 0.0094 mol, 1.06, which is 1.1 in two figures; rounded down, 0.0099 to 0.0094 is 1.05.</summary>
    [Fact]
    public void A_right_working_that_rounds_on_the_way_lies_in_the_accepted_range()
    {
        CatchUpPack pack = Of("24.51", "24.75", "24.90");
        PackAnswer ratio = pack.Answers.Single(a => a.Answer.Id == "ratio");
        PackAnswer mass = pack.Answers.Single(a => a.Answer.Id == "massOxygen");

        Assert.Equal(1.1, ratio.High, 10);
        Assert.InRange(ratio.Value, ratio.Low, ratio.High);
        Assert.InRange(1.053, ratio.Low, ratio.High);
        // A difference of readings is exact: nothing is rounded in it.
        Assert.Equal((0.15, 0.15), (Math.Round(mass.Low, 10), Math.Round(mass.High, 10)));
    }

    /// <summary>0.24 g of magnesium is due to gain 0.158 g (from the molar masses).</summary>
    [Fact]
    public void A_gain_that_still_grows_is_heated_again_and_one_that_is_whole_and_stays_is_not()
    {
        CatchUpPack grows = Of("24.51", "24.75", "24.79", "24.83", "24.90");
        CatchUpPack stays = Of("24.51", "24.75", "24.90", "24.90", "24.90");

        Assert.Equal(["reheat", "reheat"], grows.Decisions.Take(2).Select(d => d.Verdict));
        Assert.Equal("constant-mass", stays.Decisions[1].Verdict);
        Assert.True(stays.SensibleHeatings <= 2);
        // The practical plans three heatings: a fourth is never asked for.
        Assert.All((CatchUpPack[])[grows, stays], p => Assert.NotEqual("reheat", p.Decisions[2].Verdict));
        Assert.All(grows.Decisions, d => Assert.NotEqual("", d.Why));
    }

    /// <summary>A lid of 10 g that is not on the pan is seen at once.</summary>
    [Fact]
    public void A_part_that_was_left_off_is_looked_into_first() =>
        Assert.Equal("check-reading", Of("24.51", "24.75", "14.90", "24.90", "24.90").Decisions[0].Verdict);

    [Fact]
    public void A_pack_made_again_from_what_was_kept_is_the_same()
    {
        CatchUpPack drawn = Packs.Of(Packs.Plan(Given.Magnesium), Packs.Students(1)).Single();
        CatchUpPack again = new PackWorking(Packs.Plan(Given.Magnesium), Given.Weights).Of(drawn.Student, drawn.Readings, drawn.Truth, drawn.Decisions);

        Assert.Equal(Packs.Text(drawn), Packs.Text(again));
    }

    private static CatchUpPack Of(string empty, string before, params string[] after) => new PackWorking(Packs.Plan(Given.Magnesium), Given.Weights).Of(
        CatchUpStudent.Named("A"),
        [Reading("empty", 1, empty), Reading("before", 1, before), .. after.Select((a, i) => Reading("after", i + 1, a))],
        Nothing);

    private static PackReading Reading(string id, int occurrence, string shown)
    {
        Assert.True(WrittenNumber.TryParse(shown, out WrittenNumber number));
        return new PackReading(new Weighing(id, occurrence), number, number.AsDouble, 0);
    }
}
