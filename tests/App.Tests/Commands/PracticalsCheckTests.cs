using System.Text.Json;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx practicals check</c>: exit codes, the document, and words where a use fails.</summary>
public sealed class PracticalsCheckTests
{
    private static readonly string Magnesium = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "practicals", "magnesium-oxide.yaml"));

    [Fact]
    public void A_file_in_order_gives_its_theory_values_and_was_tried_out()
    {
        Terminal run = Check(Magnesium, "--json");

        JsonElement found = Schemas.Check("practical-check", run.Output);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.True(found.GetProperty("inOrder").GetBoolean());
        Assert.Equal(["simulate", "read", "analyse", "mark"], found.GetProperty("trial").EnumerateArray().Select(t => t.GetProperty("what").GetString()));
        JsonElement ratio = Assert.Single(found.GetProperty("theory").EnumerateArray(), t => t.GetProperty("id").GetString() == "moleRatio");
        Assert.Equal(1, ratio.GetProperty("value").GetDouble(), 1e-9);   // the formula MgO
    }

    [Fact]
    public void Faults_of_several_sections_are_told_in_one_go_and_the_file_cannot_be_used()
    {
        string wrong = Magnesium.Replace("equation: 2Mg + O2 -> 2MgO", "equation: Mg + O2 -> MgO", StringComparison.Ordinal)
            .Replace("hazard: nuisance dust, control: do not blow on the powder,", "hazard: nuisance dust,", StringComparison.Ordinal)
            .Replace("aliases: [empty,", "aliases: [before heating, empty,", StringComparison.Ordinal);

        Terminal run = Check(wrong, "--json");

        JsonElement found = Schemas.Check("practical-check", run.Output);
        Assert.Equal(2, run.ExitCode);
        Assert.Equal(JsonValueKind.Null, found.GetProperty("practical").ValueKind);
        Assert.Equal(3, found.GetProperty("findings").GetArrayLength());
        Assert.Contains("did you mean 2Mg + O2 -> 2MgO?", run.Error, StringComparison.Ordinal);
        Assert.Contains("lacks the key 'control'", run.Error, StringComparison.Ordinal);
        Assert.Contains("means the reading 'empty' already", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void What_can_be_used_but_cannot_come_out_ends_with_1()
    {
        Terminal run = Check(Magnesium.Replace("expect: rises", "expect: falls", StringComparison.Ordinal));

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("the mass is expected to fall", run.Error, StringComparison.Ordinal);
        Assert.Contains("not everything is in order", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_use_that_fails_is_told_in_words()
    {
        // A law that never gives an amount: nothing can be drawn from it.
        Terminal run = Check(Magnesium.Replace("law: { normal: [0.24, 0.048] }", "law: { fixed: -1 }", StringComparison.Ordinal));

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("inventing a class fails", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_class_that_cannot_be_analysed_is_told_by_its_quantity_and_in_no_words_of_programmers()
    {
        Terminal run = Check(Magnesium.Replace("formula: before - empty }", "formula: empty - empty }", StringComparison.Ordinal));

        Assert.Equal(1, run.ExitCode);
        Assert.Contains("'sampleMass', the sample, is 0: look at the weighings and at the formulas", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("Parameter", run.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", run.Error, StringComparison.Ordinal);
    }

    private static Terminal Check(string text, params string[] more)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "mine.yaml"), text);
        return Terminal.RunIn(folder.FullName, ["practicals", "check", "mine.yaml", .. more]);
    }
}
