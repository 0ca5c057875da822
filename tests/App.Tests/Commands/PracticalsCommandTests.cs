using System.Text.Json;

namespace Calx.App.Tests.Commands;

public sealed class PracticalsCommandTests
{
    private static readonly string Shipped = Path.Combine(AppContext.BaseDirectory, "practicals");

    [Theory]
    [InlineData("magnesium-oxide", "moleRatio")]
    [InlineData("copper-sulfate-hydrate", "moleRatio")]
    [InlineData("sodium-hydrogencarbonate", "residueFraction")]
    public void A_practical_is_listed_with_the_readings_and_quantities_that_scripts_rely_on(string id, string key)
    {
        Terminal run = Terminal.Run("practicals", "--json");

        JsonElement list = Schemas.Check("practicals", run.Output);
        JsonElement practical = Assert.Single(list.EnumerateArray(), p => p.GetProperty("id").GetString() == id);
        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.Equal(["empty", "before", "after"], Ids(practical, "readings").Take(3));
        Assert.Superset(
            new HashSet<string> { "sampleMass", "massChange", "massRatio", key },
            Ids(practical, "quantities").ToHashSet());
    }

    [Theory]
    [InlineData("magnesium-oxide", "2Mg + O2")]
    [InlineData("copper-sulfate-hydrate", "CuSO4")]
    [InlineData("sodium-hydrogencarbonate", "Na2CO3")]
    public void Reactions_are_named(string id, string part)
    {
        JsonElement list = Schemas.Check("practicals", Terminal.Run("practicals", "--json").Output);

        JsonElement practical = Assert.Single(list.EnumerateArray(), p => p.GetProperty("id").GetString() == id);
        string reactions = practical.GetProperty("reactions").ToString().Normalize(System.Text.NormalizationForm.FormKC);
        Assert.Contains(part.Replace(" ", "", StringComparison.Ordinal), reactions.Replace(" ", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void The_list_for_a_person_names_every_id()
    {
        Terminal run = Terminal.Run("practicals");

        Assert.Equal(0, run.ExitCode);
        Assert.All(
            ["magnesium-oxide", "copper-sulfate-hydrate", "sodium-hydrogencarbonate"],
            id => Assert.Contains(id, run.Output, StringComparison.Ordinal));
    }

    // A heated hydrate has a flame; one hour is enough for copper sulfate's crystals without what others can take over (the file's likely minutes).
    [Theory]
    [InlineData(0, "copper-sulfate-hydrate", "--happens", "loses", "--minutes", "60", "--step", "0.01")]
    [InlineData(0, "zinc-chloride", "--demonstration", "--about", "zinc")]
    [InlineData(0, "precipitation-in-closed-flask", "--no-flame", "--no-fume-cupboard", "--happens", "same")]
    [InlineData(1, "None of the ", "--happens", "loses", "--no-flame")]
    public void The_list_is_narrowed_by_what_happens_and_what_it_needs(int code, string told, params string[] words)
    {
        Terminal run = Terminal.Run(["practicals", .. words]);

        Assert.Equal((code, ""), (run.ExitCode, run.Error));
        Assert.Contains(told, run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("magnesium-oxide:", run.Output, StringComparison.Ordinal);
        JsonElement list = Schemas.Check("practicals", Terminal.Run(["practicals", .. words, "--json"]).Output);
        Assert.Equal(code == 0, list.GetArrayLength() > 0);
    }

    [Theory]
    [InlineData("--happens: 'lose' is nothing that happens here; expected gains, loses", "--happens", "lose")]
    [InlineData("--minutes: '0' is not a number from 1 to 600", "--minutes", "0")]
    [InlineData("--step: '0,01' is not a number", "--step", "0,01")]
    public void A_wish_that_is_not_understood_is_bad_input(string sentence, params string[] words)
    {
        Terminal run = Terminal.Run(["practicals", .. words]);

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Contains(sentence, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("magnesium-oxide.yaml")]
    [InlineData("copper-sulfate-hydrate.yaml")]
    [InlineData("sodium-hydrogencarbonate.yaml")]
    public void The_practicals_that_come_along_pass_their_own_check(string file)
    {
        Terminal run = Terminal.RunIn(Shipped, "practicals", "check", file);

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
    }

    [Fact]
    public void A_misspelt_key_is_told_with_its_line_and_column()
    {
        string text = File.ReadAllText(Path.Combine(Shipped, "magnesium-oxide.yaml"));
        string wrong = text.Replace("\nmaterials:", "\nmaterialls:", StringComparison.Ordinal);
        int line = wrong[..wrong.IndexOf("materialls:", StringComparison.Ordinal)].Count(c => c == '\n') + 1;

        Terminal run = Check(wrong);

        Assert.NotEqual(text, wrong);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"mine.yaml:{line}:1: ", run.Error, StringComparison.Ordinal);
        Assert.Contains("materialls", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("kind: reweigh,", "kind: rewigh,", "rewigh,", "did you mean reweigh?")]
    [InlineData("part: lid, minutes", "part: lit, minutes", "lit, minutes", "there is no part 'lit'")]
    [InlineData("[9.3, 38]", "[9.3, 98]", "[9.3, 98]", "kelvins above 0 that fall")]
    public void A_wrong_action_or_cooling_is_told_where_it_stands(string from, string to, string marker, string reason)
    {
        string text = File.ReadAllText(Path.Combine(Shipped, "magnesium-oxide.yaml"));
        string wrong = text.Replace(from, to, StringComparison.Ordinal);
        int at = wrong.IndexOf(marker, StringComparison.Ordinal);
        int line = wrong[..at].Count(c => c == '\n') + 1;

        Terminal run = Check(wrong);

        Assert.Equal(2, run.ExitCode);
        Assert.Contains($"mine.yaml:{line}:{at - wrong.LastIndexOf('\n', at)}: ", run.Error, StringComparison.Ordinal);
        Assert.Contains(reason, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("id: [")]
    [InlineData("- 1\n- 2\n")]
    [InlineData("id: &a x\ntitle: *a\n")]
    [InlineData("a\0b")]
    public void A_file_that_is_no_practical_is_bad_input(string text)
    {
        Terminal run = Check(text);

        Assert.Equal(2, run.ExitCode);
        Assert.All(run.Error.TrimEnd('\n').Split('\n'), line => Assert.StartsWith("mine.yaml:", line, StringComparison.Ordinal));
    }

    private static Terminal Check(string text)
    {
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "mine.yaml"), text);
        return Terminal.RunIn(folder.FullName, "practicals", "check", "mine.yaml");
    }

    private static IEnumerable<string> Ids(JsonElement practical, string list) =>
        practical.GetProperty(list).EnumerateArray().Select(entry => entry.GetProperty("id").GetString()!);
}
