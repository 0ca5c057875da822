using System.Text.Json;

namespace Calx.App.Tests.Commands;

/// <summary>What <c>calx analyse</c> says of causes: the shape of its answer, and its options.</summary>
public class AnalyseCausesTests
{
    private const string Class = """
        Group,Empty crucible and lid,Before heating,After heating,After reheating,Observations
        1,24.51,24.75,24.90,24.91,
        2,24.51,24.75,24.84,24.84,"smoke; grey"
        3,24.51,24.75,25.90,,
        =4+4,24.51,24.75,24.79,24.83,
        <b>,24.51,24.75,12.47,,cracked

        """;

    [Fact]
    public void Every_group_has_causes_that_add_up_to_one_and_a_decision()
    {
        JsonElement answer = Json();

        foreach (JsonElement group in answer.GetProperty("groups").EnumerateArray())
        {
            JsonElement[] causes = [.. group.GetProperty("causes").EnumerateArray()];
            Assert.Equal(11, causes.Length);
            Assert.Equal(1, causes.Sum(c => c.GetProperty("probability").GetDouble()), 1e-9);
            Assert.Equal(JsonValueKind.Null, group.GetProperty("causesReason").ValueKind);
            Assert.NotEmpty(group.GetProperty("forTeacher").GetString()!);
        }

        Assert.Equal(
            ["constant-mass", "check-reading", "reheat", "stop-tell-your-teacher"],
            new[] { 0, 2, 3, 4 }.Select(i => answer.GetProperty("groups")[i].GetProperty("decision").GetProperty("verdict").GetString()));
        Assert.Equal("misread", answer.GetProperty("groups")[2].GetProperty("causes")[0].GetProperty("cause").GetString());
        Assert.Equal("24.90", answer.GetProperty("groups")[2].GetProperty("decision").GetProperty("probableDigits").GetString());
        Assert.DoesNotContain("24.90", answer.GetProperty("groups")[2].GetProperty("forStudent").GetString()!, StringComparison.Ordinal);
        Assert.Empty(answer.GetProperty("class").GetProperty("sharedCauses").EnumerateArray());
    }

    [Fact]
    public void Without_causes_their_keys_are_null_with_a_reason()
    {
        JsonElement group = Json("--no-causes").GetProperty("groups")[0];

        Assert.All(
            (string[])["causes", "pairs", "tied", "next", "decision", "forTeacher", "forStudent"],
            key => Assert.Equal(JsonValueKind.Null, group.GetProperty(key).ValueKind));
        Assert.Contains("not asked for", group.GetProperty("causesReason").GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_careful_class_is_given_more_credit()
    {
        double Expected(params string[] options) => Json(options).GetProperty("groups")[1].GetProperty("causes").EnumerateArray()
            .Single(c => c.GetProperty("cause").GetString() == "not-all-reacted").GetProperty("probability").GetDouble();

        Assert.True(Expected("--condition", "careful") < Expected());
    }

    [Fact]
    public void A_condition_that_the_practical_does_not_have_is_told_with_the_nearest()
    {
        Terminal run = Run("--condition", "fird");

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains("no condition 'fird'", run.Error, StringComparison.Ordinal);
        Assert.Contains("did you mean fired?", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_text_tells_of_groups_where_something_happened()
    {
        string text = Run().Output;

        Assert.Contains("What may have happened", text, StringComparison.Ordinal);
        Assert.Contains("more probably showed 24.90", string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.DoesNotContain("What may have happened", Run("--no-causes").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Names_from_the_file_stay_text_in_the_report()
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "class.csv"), Class);
        Terminal.RunIn(folder.FullName, "analyse", "class.csv", "--practical", "magnesium-oxide", "--html", "report.html");

        string report = File.ReadAllText(Path.Combine(folder.FullName, "report.html"));
        Assert.Contains("<th scope=\"row\">&lt;b&gt;</th>", report, StringComparison.Ordinal);
        Assert.Contains("What may have happened", report, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", report, StringComparison.Ordinal);
    }

    private static JsonElement Json(params string[] options) => Schemas.Check("analysis", Run([.. options, "--json"]).Output);

    private static Terminal Run(params string[] options)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "class.csv"), Class);
        return Terminal.RunIn(folder.FullName, ["analyse", "class.csv", "--practical", "magnesium-oxide", .. options]);
    }
}
