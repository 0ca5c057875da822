using Calx.Practicals.Inference;

namespace Calx.Engine.Tests.Practicals.Inference;

// Which quantities a table determines follows from what stands on the pan at each reading: worked out on paper here.
public class IdentifiabilityTests
{
    [Fact]
    public void The_full_table_determines_every_quantity()
    {
        Identifiability found = Identifiability.Of(Given.Magnesium, ["empty", "before", "after"], []);

        Assert.Empty(found.Undetermined);
        Assert.Equal(Given.Magnesium.Quantities, found.Determined);
    }

    [Fact]
    public void Without_the_empty_vessel_only_the_gain_is_found_and_the_missing_weighing_is_named()
    {
        Identifiability found = Identifiability.Of(Given.Magnesium, ["before", "after"], []);

        Assert.Equal(["massChange"], found.Determined.Select(q => q.Id));
        Assert.All(found.Undetermined, m => Assert.Equal(["empty"], m.Readings.Select(r => r.Id)));
        MissingReadings ratio = Assert.Single(found.Undetermined, m => m.Quantity.Id == "moleRatio");
        Assert.Contains("Mass of empty crucible and lid", ratio.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ready_made_sample_mass_stands_in_for_the_empty_vessel()
    {
        Identifiability found = Identifiability.Of(Given.Magnesium, ["before", "after"], ["sampleColumn"]);

        Assert.Contains("moleRatio", found.Determined.Select(q => q.Id));
    }

    [Fact]
    public void Masses_already_subtracted_are_enough_without_any_weighing_of_the_vessel()
    {
        Identifiability found = Identifiability.Of(Given.Magnesium, [], ["sampleColumn", "gainColumn"]);

        Assert.Contains("moleRatio", found.Determined.Select(q => q.Id));
        Assert.Contains("massChange", found.Determined.Select(q => q.Id));
    }

    [Fact]
    public void One_weighing_alone_determines_nothing_and_two_are_named_as_missing_for_the_ratio()
    {
        Identifiability found = Identifiability.Of(Given.Magnesium, ["after"], []);

        Assert.Empty(found.Determined);
        MissingReadings ratio = Assert.Single(found.Undetermined, m => m.Quantity.Id == "moleRatio");
        Assert.Equal(["empty", "before"], ratio.Readings.Select(r => r.Id));
    }

    [Fact]
    public void A_reheat_brings_no_new_quantity_but_moves_what_the_last_weighing_means()
    {
        Identifiability found = Identifiability.Of(Given.Magnesium, ["empty", "before", "after", "after2"], []);

        Assert.Empty(found.Undetermined);
    }

    [Fact]
    public void The_hydrate_without_its_empty_vessel_gives_only_the_loss()
    {
        Identifiability found = Identifiability.Of(Given.Hydrate, ["before", "after"], []);

        Assert.Contains("massChange", found.Determined.Select(q => q.Id));
        Assert.DoesNotContain("moleRatio", found.Determined.Select(q => q.Id));
    }
}
