using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Readings;

// All classes, groups and numbers here are invented.
public class ClassTableReaderTests
{
    [Fact]
    public void One_row_a_group_under_a_title_and_notes()
    {
        ClassReadings read = Bench.Read("""
            Burning magnesium, class 9b
            Masses on balance B after cooling|||Monday

            Group|Empty / g|Before / g|After / g|Notes
            Ash|30.10|30.34|30.49|white smoke; glow, lid up
            Birch|28.77|29.02|29.18

            Cedar|31.00|31.23|31.38 g
            """);
        Assert.Equal(["Ash", "Birch", "Cedar"], read.Groups.Select(g => g.Name));
        Assert.Equal("empty 30.10, before 30.34, after 30.49", Bench.Of(read.Groups[0]));
        Assert.Equal(["white smoke", "glow", "lid up"], read.Groups[0].Remarks.Observations);
        Assert.Equal("31.38 g", read.Groups[2].Find("after")!.AsWritten);
        Assert.Equal("D8", read.Groups[2].Find("after")!.Cell!.ToString());
        Assert.Equal(8, read.Groups[2].Row);
        Assert.Empty(read.Rejected);
    }

    [Fact]
    public void A_rejected_cell_is_named_and_the_rest_of_its_group_kept()
    {
        ClassReadings read = Bench.Read([Bench.Table("""
            Group|empty|before|after
            1|30.10|-30.34|30.49
            2|28.77|29.02|1e400
            3|spilt|NaN|
            4|31.00|31.23|31.38
            """, "Monday")]);
        Assert.Equal(
            ["Monday, C2 '-30.34'", "Monday, D3 '1e400'", "Monday, B4 'spilt'", "Monday, C4 'NaN'"],
            read.Rejected.Select(r => $"{r.Cell} '{r.Text}'"));
        Assert.Equal(["before", "after", "empty", "before"], read.Rejected.Select(r => r.Heading));
        Assert.Equal("empty 30.10, after 30.49", Bench.Of(read.Groups[0]));
        Assert.Equal(4, read.Groups.Count);
        Assert.Empty(read.Groups[2].Readings);
    }

    [Fact]
    public void A_blank_and_a_dash_are_no_reading_and_are_not_rejected()
    {
        ClassReadings read = Bench.Read("Group|empty|before|after\n1|-|30.34|—\n2||30.31|30.47");
        Assert.Empty(read.Rejected);
        Assert.Equal("before 30.34", Bench.Of(read.Groups[0]));
    }

    [Fact]
    public void A_group_may_be_called_anything()
    {
        ClassReadings read = Bench.Read("Group|empty|before|after\n=1+1|30.10|30.34|30.49\n  Zoë & Łukasz  |30.11|30.35|30.50\n42|30.12|30.36|30.51");
        Assert.Equal(["=1+1", "Zoë & Łukasz", "42"], read.Groups.Select(g => g.Name));
    }

    [Fact]
    public void A_group_without_a_name_gets_a_number_and_is_told()
    {
        ClassReadings read = Bench.Read("Group|empty|before|after\n|30.10|30.34|30.49\nunnamed 1|30.1|30.3|30.4\n|30.11|30.35|30.50");
        Assert.Equal(["unnamed 1", "unnamed 1", "unnamed 2"], read.Groups.Select(g => g.Name));
        Assert.Contains(read.Notes, n => n.Text == "rows 2, 4: no group is written, so a number was given");
    }

    [Fact]
    public void Group_and_trial_and_a_group_written_once_for_its_trials()
    {
        ClassReadings read = Bench.Read("Group|Trial|empty|before|after\nA|1|30.10|30.34|30.49\n|2|30.10|30.35|30.51\nB|1|28.77|29.02|29.18");
        Assert.Equal(["A 1", "A 2", "B 1"], read.Groups.Select(g => $"{g.Name} {g.Trial}"));
        Assert.Contains(read.Notes, n => n.Text.StartsWith("row 3: no group is written", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_group_and_trial_twice_is_told()
    {
        ClassReadings read = Bench.Read("Group|Trial|empty|after\nA|1|30.10|30.49\na|1|30.11|30.50\nA|2|30.12|30.51");
        Assert.Equal(3, read.Groups.Count);
        Assert.Contains(read.Notes, n => n.Text == "group 'A', trial 1 is there 2 times, in rows 2, 3");
    }

    [Fact]
    public void One_row_a_reading()
    {
        ClassReadings read = Bench.Read("""
            Group|Reading|Mass / g
            1|empty|30.10
            1|before heating|30.34
            1|after|30.49
            1|after reheating|30.50
            2|Mass of empty crucible and lid|28.77
            2|bfore|29.02
            2|after|29.18
            2|after|29.19
            2|lid|12.00
            2||3.00
            """);
        Assert.Equal("empty 30.10, before 30.34, after 30.49, after2 30.50", Bench.Of(read.Groups[0]));
        Assert.Equal("empty 28.77, before 29.02, after 29.18, after2 29.19", Bench.Of(read.Groups[1]));
        Assert.Equal(["B10", "C10", "C11"], read.Rejected.Select(r => r.Cell.ToString()));
        Assert.Equal("group reading value", Bench.Meanings(read));
    }

    [Fact]
    public void One_row_a_reading_with_trials_and_units_in_its_names()
    {
        ClassReadings read = Bench.Read("""
            Weighing|Group|Trial|Value
            empty / mg|1|1|30100
            before|1|1|30.34
            empty|1|2|30.11
            before|1|2|30.35
            before|1|2|30.36
            """);
        Assert.Equal(["empty 30.100, before 30.34", "empty 30.11, before 30.35"], read.Groups.Select(Bench.Of));
        Assert.Equal("D6", Assert.Single(read.Rejected).Cell.ToString());
    }

    [Fact]
    public void Rows_of_means_and_headings_repeated_are_no_groups()
    {
        ClassReadings read = Bench.Read("""
            Group|empty|before|after
            1|30.10|30.34|30.49
            Group|empty|before|after
            2|28.77|29.02|29.18
            Mean|29.44|29.68|29.84
            Max|29.44|29.68|29.84
            """);
        Assert.Equal(["1", "2", "Max"], read.Groups.Select(g => g.Name));
        Assert.Equal(["B5", "C5", "D5"], read.Rejected.Select(r => r.Cell.ToString()));
        Assert.Contains(read.Notes, n => n.ToString() == "A3: the headings again; passed over");
    }

    [Fact]
    public void A_group_without_readings_is_told()
    {
        ClassReadings read = Bench.Read("Group|empty|before|after|Notes\n1|30.10|30.34|30.49\n2||||absent");
        Assert.Single(read.Groups);
        Assert.Contains(read.Notes, n => n.ToString() == "A3: no readings beside '2, absent'");
    }

    [Fact]
    public void A_row_of_units_and_headings_over_two_rows()
    {
        ClassReadings read = Bench.Read("Group|Mass||||\n|empty|before|after\n|mg|mg|g\n1|30100|30340|30.49");
        Assert.Equal("group empty before after", Bench.Meanings(read));
        Assert.Equal("empty 30.100, before 30.340, after 30.49", Bench.Of(read.Groups[0]));
    }

    [Fact]
    public void Units_are_converted_exactly_and_the_text_is_kept()
    {
        ClassReadings read = Bench.Read("Group|empty / kg|before / mg|after\n1|0.03010|30340|30490 mg");
        Assert.Equal("empty 30.10, before 30.340, after 30.490", Bench.Of(read.Groups[0]));
        Assert.Equal("30490 mg", read.Groups[0].Find("after")!.AsWritten);
        Assert.Equal(0.01m, read.Groups[0].Find("empty")!.LastDigit);
    }

    [Fact]
    public void A_first_column_without_a_heading_names_the_groups()
    {
        ClassReadings read = Bench.Read("|empty|before|after\nAsh|30.10|30.34|30.49|aside");
        Assert.Equal("Ash", read.Groups[0].Name);
        Assert.Equal("group empty before after ignored", Bench.Meanings(read));
        Assert.Equal(MatchedBy.Order, read.Columns[0].MatchedBy);
    }

    [Fact]
    public void Ready_made_masses_stand_beside_the_readings()
    {
        ClassReadings read = Bench.Read("Group|Mass of Mg / g|Mass of MgO / g|gain / g\n1|0.24|0.39|0.15\n2|0.25|0.24|-0.01\n3|-0.25|0.24|0.15");
        Assert.Empty(read.Groups[0].Readings);
        Assert.Equal("sampleColumn 0.24, productColumn 0.39, gainColumn 0.15", Bench.Of(read.Groups[0]));
        Assert.Equal("-0.01", read.Groups[1].Find("gainColumn")!.Value.ToString());
        Assert.Equal("B4", Assert.Single(read.Rejected).Cell.ToString());
        Assert.Equal(0.01m, read.Balance.ResolutionInGrams);
    }

    [Fact]
    public void The_first_sheet_with_a_readable_heading_is_read_and_the_others_are_named()
    {
        CellTable cover = Bench.Table("Notes for 9b", "Cover");
        CellTable monday = Bench.Table("Group|empty|after\n1|30.10|30.49", "Monday");
        CellTable tuesday = Bench.Table("Group|empty|after\n1|30.11|30.50", "Tuesday");
        ClassReadings read = Bench.Read([cover, monday, tuesday]);
        Assert.Equal("Monday", read.Sheet);
        Assert.Equal(["sheet 'Cover' was not read", "sheet 'Tuesday' also has a heading row with readings; it was not read"],
            read.Notes.Select(n => n.Text));
    }

    [Fact]
    public void An_empty_table_is_at_fault() =>
        Assert.Equal("there is nothing in the table", Assert.IsType<ClassReading.Unreadable>(
            ClassTableReader.Read([new CellTable("", [])], Bench.Magnesium)).Reason);

    [Fact]
    public void A_lesson_builds_its_readings_without_a_file()
    {
        GroupReadings group = new("Ash", null, [
            new TakenReading("empty", 1, new(30.10m)), new TakenReading("after", 1, new(30.49m)), new TakenReading("after", 2, new(30.50m))]);
        ClassReadings lesson = new("magnesium-oxide", [group], new BalanceReport(new BalanceOptions(0.01m), new Dictionary<string, decimal>()));
        Assert.Equal("after2 30.50 g", lesson.Groups[0].LastOf("after")!.ToString());
        Assert.Equal(2, group.RepeatsOf("after").Count());
        Assert.Equal(0.01m, group.Find("empty")!.LastDigit);
        Assert.Throws<ArgumentException>(() => new GroupReadings("Ash", null, [
            new TakenReading("empty", 1, new(30.10m)), new TakenReading("empty", 1, new(30.10m))]));
    }
}
