using Calx.Engine.Tests.Practicals.Definition;
using Calx.Practicals.Choosing;
using Calx.Practicals.Definition;

namespace Calx.Engine.Tests.Practicals.Choosing;

/// <summary>What happens in a practical and what it needs, as its file tells it.</summary>
public sealed class PracticalFactsTests
{
    // What happens is plain to a chemist from the title: common practice, no source.
    [Theory]
    [InlineData(PracticalFamily.Gains, "magnesium-oxide", "copper-in-air", "iron-wool-in-air")]
    [InlineData(PracticalFamily.Loses, "copper-sulfate-hydrate", "magnesium-sulfate-hydrate", "basic-copper-carbonate", "basic-zinc-carbonate", "sodium-hydrogencarbonate", "calcium-carbonate", "copper-oxide-reduction")]
    [InlineData(PracticalFamily.Same, "precipitation-in-closed-flask", "tablet-in-water", "candle-open-and-closed")]
    [InlineData(PracticalFamily.OverTime, "marble-and-acid", "hydrogen-peroxide")]
    [InlineData(PracticalFamily.Product, "copper-by-iron", "copper-by-zinc", "silver-by-copper", "zinc-iodide", "barium-sulfate", "zinc-chloride")]
    [InlineData(PracticalFamily.Analysed, "carbonate-purity", "solubility-by-evaporation", "moisture-and-ash")]
    [InlineData(PracticalFamily.OtherReadings, "copper-electrolysis", "alcohol-combustion")]
    public void Each_practical_of_the_shelf_is_of_the_family_that_its_title_says(PracticalFamily family, params string[] ids) =>
        Assert.All(ids, id => Assert.Equal(family, BuiltInPracticals.Find(id)!.Family));

    [Theory]
    [InlineData("family: gas-leaves", PracticalFamily.GasLeaves)]
    [InlineData("", PracticalFamily.Gains)]
    public void A_file_may_say_its_family_itself(string line, PracticalFamily family)
    {
        string text = Files.Changed(Files.Magnesium, "title: Burning", $"{line}\ntitle: Burning");

        Assert.Equal(family, PracticalReader.Read(text, "f.yaml").Practical!.Family);
    }

    [Fact]
    public void A_family_that_there_is_not_is_told_with_the_nearest() =>
        Files.AssertFault(Files.Magnesium, "title: Burning", "family: gain\ntitle: Burning", "gain\n", "'gain' is not understood; expected gains, loses, gas-leaves, same, over-time, product, analysed, other-readings; did you mean gains?");

    // Added up by hand from the likely minutes of the file: cooling and the last weighing twice, writing the row while it cools. The
    // shortest is without briefing, firing and its cooling, cleaning, working out and clearing up.
    [Fact]
    public void Minutes_are_the_likely_ones_of_one_group()
    {
        LessonMinutes minutes = LessonMinutes.Of(BuiltInPracticals.Find("magnesium-oxide")!);

        Assert.Equal(103.5, minutes.Whole, 1e-9);
        Assert.Equal(103.5 - 8 - 5 - 10 - 3 - 8 - 8, minutes.Shortest, 1e-9);
    }

    // 0.24 g of Mg takes up 0.24 * 15.999 / 24.305 g of oxygen; 2.50 g of MgSO4.7H2O (246.47 g/mol) loses 2.50 * 126.11 / 246.47 g of water: atomic
    // weights of IUPAC 2021, abridged. A balance of 0.1 g shows ten steps of the second and not two of the first.
    [Theory]
    [InlineData("magnesium-oxide", 0.1580, 0.01)]
    [InlineData("magnesium-sulfate-hydrate", 1.279, 0.1)]
    public void The_change_of_mass_says_how_fine_a_balance_must_be(string id, double change, double balance)
    {
        var facts = PracticalFacts.Of(BuiltInPracticals.Find(id)!);

        Assert.Equal(change, facts.ChangeInGrams!.Value, 0.001 * change);
        Assert.InRange(facts.CoarsestStepInGrams!.Value, balance, 10 * balance);
    }

    // As the files' titles and notes say: common practice, no source.
    [Theory]
    [InlineData("magnesium-oxide", true, false, false)]
    [InlineData("zinc-chloride", true, true, true)]
    [InlineData("zinc-iodide", false, true, false)]
    [InlineData("precipitation-in-closed-flask", false, false, false)]
    [InlineData("copper-oxide-reduction", true, false, true)]
    public void Flame_fume_cupboard_and_demonstration_are_told(string id, bool flame, bool fumes, bool demonstration)
    {
        var facts = PracticalFacts.Of(BuiltInPracticals.Find(id)!);

        Assert.Equal((flame, fumes, demonstration), (facts.HasFlame, facts.NeedsFumeCupboard, facts.IsDemonstration));
    }
}
