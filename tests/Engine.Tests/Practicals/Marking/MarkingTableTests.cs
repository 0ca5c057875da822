using Calx.Practicals.Definition;
using Calx.Practicals.Marking;
using Calx.Practicals.Marking.Tables;
using Calx.Practicals.Readings;

namespace Calx.Engine.Tests.Practicals.Marking;

/// <summary>A table of readings and answers, a row a student.</summary>
public class MarkingTableTests
{
    private static readonly string[] Headings =
        ["student", "empty", "before", "after", "massMagnesium", "massOxygen", "molesMagnesium", "molesOxygen", "ratio"];

    [Fact]
    public void Ids_and_labels_with_or_without_units_are_headings()
    {
        string[] labels =
        [
            "Name", "Mass of empty crucible and lid / g", "Mass of crucible, lid and magnesium (g)", "Mass after heating / g",
            "Mass of magnesium / g", "mass of oxygen", "Moles of magnesium / mol", "moles of oxygen atoms", "Ratio Mg : O",
        ];
        string[] row = ["Ada", "30.00", "30.24", "30.38", "0.24", "0.14", "0.00988", "0.00875", "1.13"];

        StudentWork byId = Taken(Headings, row).Works.Single(), byLabel = Taken(labels, row).Works.Single();

        Assert.Equal(["0.24", "0.14", "0.00988", "0.00875", "1.13"], byId.Answers.Values);
        Assert.Equal(byId.Answers, byLabel.Answers);
        Assert.Equal(["empty 30.00", "before 30.24", "after 30.38"], byId.Readings.Select(r => $"{r.Key} {r.Value.Single()}"));
        Assert.Equal(byId.Readings.Keys, byLabel.Readings.Keys);
    }

    [Fact]
    public void Formulas_for_names_and_a_word_for_a_judgement_are_headings_and_others_are_named()
    {
        MarkingTable.Taken taken = Taken(
            ["student", "empty", "before", "after", "Mass of Mg", "Mass of O", "moles of Mg (mol)", "Moles of O", "Was it complete?", "Cause", "Colour of the flame"],
            ["Ada", "30.00", "30.24", "30.38", "0.24", "0.14", "0.00988", "0.00875", "yes", "smoke", "white"]);

        Assert.Equal(["massMagnesium", "massOxygen", "molesMagnesium", "molesOxygen", "complete", "cause"], taken.Works.Single().Answers.Keys);
        Assert.Contains(taken.Notes, n => n.Contains("'Colour of the flame' (K)", StringComparison.Ordinal));
    }

    [Fact]
    public void A_repeated_weighing_is_kept_in_order()
    {
        MarkingTable.Taken taken = Taken(["student", "empty", "before", "after", "after 2", "massOxygen"], ["Ada", "30.00", "30.24", "30.30", "30.38", "0.14"]);

        Assert.Equal(["30.30", "30.38"], taken.Works.Single().Readings["after"].Select(r => r.ToString()));
    }

    [Fact]
    public void Titles_above_and_the_order_of_columns_do_not_matter()
    {
        MarkingTable.Taken taken = Taken(["Class 9F, Tuesday"], ["ratio", "after", "student", "before", "empty"], ["1.13", "30.38", "=1+1", "30.24", "30.00"]);

        StudentWork work = taken.Works.Single();
        Assert.Equal(("=1+1", "1.13", 3), (work.Student, work.Answers["ratio"], work.Row));
        Assert.Equal(3, work.Readings.Count);
    }

    [Fact]
    public void A_student_twice_or_without_a_name_and_an_essay_in_a_cell_are_named_and_the_rest_is_kept()
    {
        MarkingTable.Taken taken = Taken(
            Headings,
            ["Ada", "30.00", "30.24", "30.38", "0.24"],
            ["", "30.00", "30.24", "30.38", "0.24"],
            ["ada", "30.00", "30.24", "30.38", "0.25"],
            ["Ben", "thirty grams and a bit more", "30.24", "30.38", "0.24"],
            [new string('x', 101), "30.00", "30.24", "30.38", "0.24"]);

        Assert.Equal(["Ada", "Ben"], taken.Works.Select(w => w.Student));
        Assert.Equal(["A3", "A4", "B5", "A6"], taken.Rejected.Select(r => r.Cell.ToString()));
        Assert.Contains("row 2", taken.Rejected[1].Reason, StringComparison.Ordinal);
        Assert.Equal(["before", "after"], taken.Works[1].Readings.Keys);
    }

    [Fact]
    public void Answers_without_readings_are_kept_and_the_lack_is_noted()
    {
        MarkingTable.Taken taken = Taken(["student", "massMagnesium", "ratio"], ["Ada", "0.24", "1.13"]);

        Assert.Empty(taken.Works.Single().Readings);
        Assert.Contains("no readings", taken.Notes.Single(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("student,empty,before")]
    [InlineData("empty,before,after,ratio")]
    [InlineData("")]
    public void A_table_that_names_no_students_or_no_answers_cannot_be_marked(string headings)
    {
        var unreadable = Assert.IsType<MarkingTable.Unreadable>(Read([headings.Split(',')]));
        Assert.Contains("'student'", unreadable.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_columns_for_one_answer_are_a_fault_of_the_table()
    {
        var unreadable = Assert.IsType<MarkingTable.Unreadable>(Read([["student", "ratio", "Ratio Mg : O"], ["Ada", "1", "2"]]));
        Assert.Equal("C1", unreadable.Cell!.ToString());
    }

    [Theory]
    [InlineData("id")]
    [InlineData("sourcedId")]
    [InlineData("Student ID")]
    public void What_the_schools_system_calls_a_student_is_kept_as_written(string heading)
    {
        MarkingTable.Taken taken = Taken(
            [heading, "student", "empty", "before", "after", "ratio"],
            ["0042", "Ada", "30.00", "30.24", "30.38", "1.13"],
            ["=1+1", "Ben", "30.00", "30.24", "30.38", "1.13"],
            ["", "Cy", "30.00", "30.24", "30.38", "1.13"],
            ["0042", "Dee", "30.00", "30.24", "30.38", "1.13"],
            ["", "Ada", "30.00", "30.24", "30.38", "1.13"]);

        Assert.Equal(["0042", "=1+1", null, null], taken.Works.Select(w => w.SourcedId));
        Assert.Equal(["Ada", "Ben", "Cy", "Dee"], taken.Works.Select(w => w.Student));
        Assert.All(taken.Works, w => Assert.Equal(3, w.Readings.Count));
        Assert.Equal(["A5", "B6"], taken.Rejected.Select(r => r.Cell.ToString()));
        Assert.Contains("row 2", taken.Rejected[0].Reason, StringComparison.Ordinal);
        Assert.Empty(taken.Notes);
    }

    private static MarkingTable.Taken Taken(params string[][] rows) => Assert.IsType<MarkingTable.Taken>(Read(rows));

    private static MarkingTable Read(string[][] rows) =>
        MarkingTableReader.Read([new CellTable("", [.. rows.Select((r, i) => CellRow.Of(i + 1, r))])], BuiltInPracticals.Find("magnesium-oxide")!);
}
