using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Readings;

// Headings as classes write them: common practice, no source.
public class HeadingTests
{
    [Theory]
    [InlineData("Group|Mass of empty crucible and lid / g|Mass of crucible, lid and magnesium / g|Mass after heating / g")]
    [InlineData("group|empty|before|after")]
    [InlineData("Group|m1|m2|m3")]
    [InlineData("GROUP NAME|Empty crucible (g)|Crucible + magnesium (g)|Crucible + magnesium oxide (g)")]
    [InlineData("Team|weight of empty crucible and lid in g|Weight before heating in g|WEIGHT AFTER HEATING IN G")]
    [InlineData("Names|Crucible & lid / g|Crucible, lid & Mg / g|Crucible, lid & MgO / g")]
    [InlineData("Group|Mass of lid and empty crucible [g]|Mass of magnesium, lid and crucible [g]|Mass when heated, after [g]")]
    [InlineData("Goup|Mass of emtpy crucible and lid / g|Mass of crucibel, lid and magnesuim / g|Mass after heatign / g")]
    [InlineData("Group|Empty  crucible/g|Before heating/g|After burning/g")]
    [InlineData("Group|Mass of empty crucible and lid before heating / g|Mass before heating / g|Mass of crucible, lid and MgO after heating / g")]
    [InlineData("Group|Mass 1 / g|Mass 2 / g|Mass 3 / g")]
    [InlineData("Group|1st weighing|2nd weighing|3rd weighing")]
    [InlineData("Group|empty / g ± 0.01|before / g ± 0.01|after / g (± 0.01 g)")]
    [InlineData("Group|Empty crucible, grams|Before, grams|After, grams")]
    public void Three_weighings_are_recognised(string headings) =>
        Assert.Equal("group empty before after", Bench.MeaningsOf(headings));

    [Theory]
    [InlineData("empty|before|after|after2|after3", "empty before after after2 after3")]
    [InlineData("empty|before|after|after 2|after 3", "empty before after after2 after3")]
    [InlineData("empty|before|Mass after heating / g|Mass after reheating / g", "empty before after after2")]
    [InlineData("empty|before|after heating|after reheating|after reheating 2", "empty before after after2 after3")]
    [InlineData("empty|before|after heating|after reheating 1|after reheating 2", "empty before after after2 after3")]
    [InlineData("empty|before|after heating|after reheating 2|after reheating 3", "empty before after after2 after3")]
    [InlineData("empty|before|after first heating|after second heating|after third heating", "empty before after after2 after3")]
    [InlineData("empty|before|after 1|after 2", "empty before after after2")]
    [InlineData("empty|before|after 3|after 1|after 2", "empty before after3 after after2")]
    [InlineData("empty|before|after heating|after heating again", "empty before after after2")]
    [InlineData("empty|before|after heating|reheated", "empty before after after2")]
    [InlineData("empty|before|after heating|Re-heated mass / g", "empty before after after2")]
    [InlineData("empty|before|reheated", "empty before after")]
    [InlineData("empty|before|after heating|after 3", "empty before after after3")]
    [InlineData("Mass 1|Mass 2|Mass 3|Mass 4", "empty before after after2")]
    public void Repeats_are_numbered(string headings, string meanings) =>
        Assert.Equal("group " + meanings, Bench.MeaningsOf("Group|" + headings));

    [Theory]
    [InlineData("Mass of magnesium / g|Mass of magnesium oxide / g|Mass of oxygen / g", "sampleColumn productColumn gainColumn")]
    [InlineData("Mg (g)|MgO (g)|gain (g)", "sampleColumn productColumn gainColumn")]
    [InlineData("Mass of Mg|Mass of MgO formed|Increase in mass", "sampleColumn productColumn gainColumn")]
    [InlineData("mass of magnesium ribbon used / g|product / g|mass gained / g", "sampleColumn productColumn gainColumn")]
    public void Masses_already_subtracted_have_columns_of_their_own(string headings, string meanings) =>
        Assert.Equal("group " + meanings, Bench.MeaningsOf("Group|" + headings));

    [Fact]
    public void Optional_columns_are_recognised() => Assert.Equal(
        "group trial arm empty before after time observations balance",
        Bench.MeaningsOf("Group|Trial|Arm|empty|before|after|Heating time / min|Notes|Balance used"));

    [Theory]
    [InlineData("Calculated mass of magnesium oxide / g")]
    [InlineData("Expected mass of magnesium oxide / g")]
    [InlineData("Mass lost after heating / g")]
    [InlineData("Mass of crucible, lid and contents / g")]
    [InlineData("Colour after heating")]
    [InlineData("Temperature after heating / °C")]
    [InlineData("Mean mass after heating / g")]
    [InlineData("Mass before and after / g")]
    [InlineData("Mass of crucible after cleaning / g")]
    [InlineData("Percentage yield")]
    [InlineData("Ratio Mg : O")]
    public void A_heading_of_something_else_is_not_taken_for_a_reading(string heading)
    {
        string meanings = Bench.MeaningsOf("Group|empty|before|" + heading);
        Assert.Equal("group empty before ignored", meanings);
    }

    [Fact]
    public void A_tie_is_told_and_not_guessed()
    {
        ClassReadings tied = Bench.Read("Group|after heating|lid / g\n1");
        ColumnMeaning.Ignored ignored = Assert.IsType<ColumnMeaning.Ignored>(tied.Columns[2].Meaning);
        Assert.Contains("'Mass of empty crucible and lid' or 'Mass of crucible, lid and magnesium'", ignored.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tie_is_settled_when_a_surer_heading_takes_one_of_the_two() =>
        Assert.Equal("group before empty", Bench.MeaningsOf("Group|Mass of crucible, lid and magnesium|lid / g"));

    [Fact]
    public void How_each_heading_was_recognised_is_reported()
    {
        ClassReadings read = Bench.Read("Group|Mass of empty crucible and lid / g|before|Heated mass, after|Colour\n1");
        Assert.Equal(
            [MatchedBy.Label, MatchedBy.Label, MatchedBy.Label, MatchedBy.Words, MatchedBy.Nothing],
            read.Columns.Select(c => c.MatchedBy));
        Assert.Equal(["A", "B", "C", "D", "E"], read.Columns.Select(c => c.ColumnLetter));
        Assert.Equal("g", read.Columns[1].Unit);
        Assert.Equal(MatchedBy.Alias, Bench.Read("Group|m1|m2\n1").Columns[1].MatchedBy);
    }

    [Theory]
    [InlineData("Group|empty|before|before|after", "D")]
    [InlineData("Group|empty|Before|before |after", "D")]
    [InlineData("Group|group|empty|before", "B")]
    [InlineData("Group|Mass / g|Mass / g|before|empty|empty", "F")]
    [InlineData("Group|empty|m1|after", "C")]
    [InlineData("Group|empty|before|after 2|reheated 2", "E")]
    public void One_heading_twice_is_a_fault_of_the_file(string headings, string column)
    {
        ClassReading.Unreadable fault = Bench.Refused(headings + "\n1|2|3|4|5");
        Assert.Equal(column, fault.Cell!.ColumnLetter);
        Assert.Equal(1, fault.Cell.Row);
    }

    [Theory]
    [InlineData("Name|Height|Shoe size\nAnn|1.60|38")]
    [InlineData("1|2|3\n4|5|6")]
    [InlineData("Burning magnesium: mass after heating\n1|2|3")]
    public void Without_a_readable_heading_the_file_is_at_fault(string text) =>
        Assert.Contains("no heading row", Bench.Refused(text).Reason, StringComparison.Ordinal);

    [Fact]
    public void A_table_turned_on_its_side_is_told_how_to_turn() =>
        Assert.Contains("transpose", Bench.Refused("Class 9b\nempty|30.1|30.2\nbefore|30.3|30.4\nafter|30.5|30.6").Reason, StringComparison.Ordinal);

    [Fact]
    public void A_weighing_more_than_the_practical_has_is_told()
    {
        ClassReadings read = Bench.Read("Group|empty|before|after|after 2|after 3|after 4\n1");
        Assert.Contains("at most 3", Assert.IsType<ColumnMeaning.Ignored>(read.Columns[^1].Meaning).Reason, StringComparison.Ordinal);
    }
}
