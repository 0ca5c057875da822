using Calx.Chemistry.Elements;
using Calx.Practicals.Definition;
using Calx.Practicals.Findings;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Readings;

public class PlausibilityTests
{
    [Fact]
    public void Whole_weighings_under_a_heading_of_the_sample_are_set_aside()
    {
        ClassReadings read = Bench.Read("Group|sample / g|after\n1|30.34|30.49\n2|29.02|29.18\n3|31.23|31.38");
        Assert.Equal("group ignored after", Bench.Meanings(read));
        Assert.Contains(read.Notes, n => n.Text.Contains("column B ('sample / g') holds masses about 30.34 g, as heavy as the vessel", StringComparison.Ordinal));
        Assert.Equal("after 30.49", Bench.Of(read.Groups[0]));
    }

    [Fact]
    public void Subtracted_masses_under_a_heading_of_a_weighing_are_set_aside()
    {
        ClassReadings read = Bench.Read("Group|empty|before|after\n1|30.10|0.24|30.49\n2|28.77|0.25|29.18\n3|31.00|oops|31.38");
        Assert.Equal("group empty ignored after", Bench.Meanings(read));
        Assert.Empty(read.Rejected);
        Assert.Contains("less than the vessel alone", ((ColumnMeaning.Ignored)read.Columns[2].Meaning).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Milligrams_without_a_unit_are_asked_about_and_not_converted()
    {
        ClassReadings read = Bench.Read("Group|empty|before|after\n1|30100|30340|30490");
        Assert.Equal("group ignored ignored ignored", Bench.Meanings(read));
        Assert.Contains(read.Notes, n => n.Text.Contains("is the unit mg?", StringComparison.Ordinal));
    }

    [Fact]
    public void Swapped_headings_are_told_and_neither_is_used()
    {
        ClassReadings read = Bench.Read("Group|before|empty|after\n1|30.10|30.34|30.49\n2|28.77|29.02|29.18\n3|31.00|31.23|31.38");
        Assert.Equal("group ignored ignored after", Bench.Meanings(read));
        Assert.Contains(read.Notes, n => n.Text.Contains("lighter than 'Mass of empty crucible and lid' in 3 of 3 groups: the two headings may be swapped", StringComparison.Ordinal));
    }

    // Once the file of a practical let the empty vessel's place stand on the pan, its own order was no longer seen.
    [Theory]
    [InlineData("magnesium-oxide")]
    [InlineData("copper-sulfate-hydrate")]
    [InlineData("sodium-hydrogencarbonate")]
    public void Swapped_headings_are_told_for_every_practical_that_weighs_the_empty_vessel(string id)
    {
        CellTable table = Bench.Table("Group|before|empty|after\n1|30.10|31.34|31.60\n2|28.77|30.02|30.28\n3|31.00|32.23|32.48");
        var taken = Assert.IsType<ClassReading.Taken>(ClassTableReader.Read([table], BuiltInPracticals.Find(id)!));

        Assert.Equal("group ignored ignored after", Bench.Meanings(taken.Readings));
    }

    // A lid of about 10 g was left off in most groups (the practical's lids weigh 3 to 20 g). What is in the crucible weighs a few tenths
    // of a gram, so that no swap of headings makes 10 g; and swapped headings would be so in every group.
    [Theory]
    [InlineData("Group|empty|before|after\n1|30.60|30.78|20.94\n2|31.60|31.79|22.10\n3|30.60|30.78|30.90\n4|29.57|29.76|20.88")]
    [InlineData("Group|empty|before|after\n1|30.60|30.78|20.94\n2|31.60|31.79|22.10\n3|30.60|30.78|21.90")]
    public void A_lid_left_off_by_most_groups_is_a_cause_and_no_swapped_heading(string table)
    {
        Practical practical = BuiltInPracticals.Find("magnesium-oxide")!;
        var taken = Assert.IsType<ClassReading.Taken>(ClassTableReader.Read([Bench.Table(table)], practical));
        Assert.Equal("group empty before after", Bench.Meanings(taken.Readings));
        ClassFindings found = ClassAnalysis.Of(practical, taken.Readings, AtomicWeights.Iupac2024);
        Assert.All(found.Groups, g => Assert.Equal(g.Find("massChange")!.Value < 0, g.Diagnosis!.First.Cause == "part-left-off"));
    }

    // Without a part that may be left off, or where it would weigh something else, the order tells of the headings as before.
    [Fact]
    public void What_no_part_explains_is_still_told_as_swapped()
    {
        CellTable table = Bench.Table("Group|empty|before|after\n1|30.60|30.78|29.94\n2|31.60|31.79|31.10\n3|30.60|30.78|30.90\n4|29.57|29.76|28.88");
        var taken = Assert.IsType<ClassReading.Taken>(ClassTableReader.Read([table], BuiltInPracticals.Find("magnesium-oxide")!));
        Assert.Equal("group ignored before ignored", Bench.Meanings(taken.Readings));
    }

    [Fact]
    public void One_slip_among_the_groups_sets_no_column_aside()
    {
        ClassReadings read = Bench.Read("Group|empty|before|after\n1|30.34|30.10|30.49\n2|28.77|29.02|29.18\n3|31.00|31.23|31.38");
        Assert.Equal("group empty before after", Bench.Meanings(read));
    }
}
