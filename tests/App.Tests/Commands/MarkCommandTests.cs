using System.Text.Json;
using Calx.Practicals.Marking.Ideas;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx mark</c> as it is typed. Values worked out by hand with Mg 24.3, O 16.0.</summary>
public sealed class MarkCommandTests : IDisposable
{
    private const string Table = """
        student,empty,before,after,massMagnesium,massOxygen,molesMagnesium,molesOxygen,ratio
        Ada,30.00,30.24,30.38,0.24,0.14,0.00988,0.00875,1.13
        "=HYPERLINK(1)",28.11,28.37,28.55,0.26 g,"0,18",1.07 x 10^-2,0.00563,1.90:1
        Cy,30.00,30.24,30.38,0.24,0.14,0.0099,0.0088,0.886
        ,30.00,30.24,30.38,0.24,0.14,0.00988,0.00875,1.13
        Eve,30.00,30.24,30.38,,an essay about oxygen,,,
        """;

    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    public MarkCommandTests() => File.WriteAllText(PathOf("answers.csv"), Table);

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_json_keeps_to_its_schema_and_has_the_marks()
    {
        Terminal run = Run("--json");
        JsonElement document = Schemas.Check("marking", run.Output);
        JsonElement[] students = [.. document.GetProperty("students").EnumerateArray()];

        Assert.Equal(0, run.ExitCode);
        Assert.Equal(["Ada 5/5", "=HYPERLINK(1) 4/5", "Cy 4/5", "Eve 0/5"], students.Select(s => $"{s.GetProperty("student")} {s.GetProperty("total")}/{s.GetProperty("of")}"));
        JsonElement oxygen = students[1].GetProperty("answers")[3], ratio = students[1].GetProperty("answers")[4];
        Assert.Equal(("wrong", "molecule-for-atom"), (oxygen.GetProperty("verdict").GetString(), oxygen.GetProperty("ideas")[0].GetProperty("idea").GetString()));
        Assert.Equal(0.18 / 15.999, oxygen.GetProperty("expected").GetDouble(), 1e-4);
        Assert.True(ratio.GetProperty("carried").GetBoolean());
        Assert.Equal(0.0107 / 0.00563, ratio.GetProperty("own").GetDouble(), 1e-9);
        Assert.Equal("inverted", students[2].GetProperty("answers")[4].GetProperty("ideas")[0].GetProperty("idea").GetString());
        Assert.Equal("A5", document.GetProperty("rejected")[0].GetProperty("cell").GetString());
        Assert.Equal("unreadable", students[3].GetProperty("answers")[1].GetProperty("verdict").GetString());
    }

    [Fact]
    public void Marks_as_a_table_are_text_to_a_spreadsheet_and_never_replace_a_file()
    {
        string marks = PathOf("marks.csv");
        Assert.Equal(0, Run("--csv", marks).ExitCode);
        string[] lines = File.ReadAllLines(marks);
        Assert.Equal("student,massMagnesium,massOxygen,molesMagnesium,molesOxygen,ratio,total,of,feedback", lines[0]);
        Assert.StartsWith("Ada,1,1,1,1,1,5,5,", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("'=HYPERLINK(1),1,1,1,0,1,4,5,", lines[2], StringComparison.Ordinal);

        Terminal again = Run("--csv", marks);
        Assert.NotEqual(0, again.ExitCode);
        Assert.Contains("left as it is", again.Error, StringComparison.Ordinal);
        Assert.Equal(lines, File.ReadAllLines(marks));
    }

    [Fact]
    public void What_cannot_be_marked_is_told_with_its_place_and_the_rest_is_marked()
    {
        Terminal run = Run();
        Assert.Contains("4 students marked", run.Output, StringComparison.Ordinal);
        Assert.Contains("answers.csv:5:1:", run.Error, StringComparison.Ordinal);
        Assert.Contains("an essay about oxygen", Run("--json").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--ar-set", "school-9dp")]
    [InlineData("--early-rounding", "sometimes")]
    public void An_option_that_is_not_understood_is_a_fault(string option, string value)
    {
        Terminal run = Run(option, value);
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(value, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_without_students_is_a_fault_of_the_file()
    {
        File.WriteAllText(PathOf("answers.csv"), "group,empty,before,after\n1,30.00,30.24,30.38\n");
        Terminal run = Run();
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("answers.csv:1:1: no row of headings", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_guide_lists_every_idea()
    {
        string guide = File.ReadAllText(Checkout.PathOf("docs/guide/marking.md"));
        Assert.All(KnownIdeas.All, idea =>
        {
            Assert.Contains($"| `{idea.Id}` | {idea.Label} | {idea.Mend} |", guide, StringComparison.Ordinal);
        });
    }

    private string PathOf(string name) => Path.Combine(folder.FullName, name);

    private Terminal Run(params string[] options) => Terminal.Run(["mark", PathOf("answers.csv"), "--practical", "magnesium-oxide", .. options]);
}
