namespace Calx.App.Tests.Commands;

/// <summary><c>calx practicals new</c>: asked, from a file, from words; and the file is found by its id afterwards.</summary>
public sealed class PracticalsNewTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Nobody_there_and_nothing_said_is_told_and_nothing_is_written()
    {
        Terminal run = Run("practicals", "new", "--data", "data");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("nobody is there to be asked", run.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(folder.FullName, "data")));
    }

    [Fact]
    public void Enter_alone_takes_every_default_and_what_is_not_understood_is_asked_again()
    {
        // The first question twice: once with a word that it does not know.
        Terminal run = Terminal.Typing("explodes\nheated\n" + new string('\n', 40), folder.FullName, "practicals", "new", "--data", "data");

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("'explodes' is not understood", run.Error, StringComparison.Ordinal);
        Assert.Contains("What is it called? (the title on the sheet) [Heating zinc carbonate]: ", run.Error, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder.FullName, "data", "practicals", "heating-zinc-carbonate.yaml")));
        Assert.Contains("hazard of zinc carbonate not known", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_title_that_is_offered_follows_from_the_equation()
    {
        Terminal run = Terminal.Typing("heated\nMgCO3 -> MgO + CO2\n" + new string('\n', 40), folder.FullName, "practicals", "new", "--data", "data");

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("[Heating MgCO3]: ", run.Error, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder.FullName, "data", "practicals", "heating-mgco3.yaml")));
    }

    [Fact]
    public void Leaving_half_way_writes_nothing()
    {
        Terminal run = Terminal.Typing("gas\nMine\n", folder.FullName, "practicals", "new", "--out", "mine.yaml");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("nothing was written", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(folder.FullName, "mine.yaml")));
    }

    [Fact]
    public void Answers_come_from_a_file_and_from_words_and_no_file_is_overwritten()
    {
        File.WriteAllText(Path.Combine(folder.FullName, "answers.txt"), "# of mine\ntitle: Burning magnesium again\nequation: Mg + O2 -> MgO\nusual: 0.24\n");
        string[] words = ["practicals", "new", "--answers", "answers.txt", "--set", "usual=0.2", "--out", "mine.yaml"];

        Terminal run = Run(words);
        string text = File.ReadAllText(Path.Combine(folder.FullName, "mine.yaml"));
        Terminal again = Run(words);

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("equation: '2Mg + O2 -> 2MgO'", text, StringComparison.Ordinal);
        Assert.Contains("law: { normal: [0.2, 0.012] }", text, StringComparison.Ordinal);
        Assert.Equal(2, again.ExitCode);
        Assert.Contains("mine.yaml:1:1: there is such a file already", again.Error, StringComparison.Ordinal);
        Assert.Equal(text, File.ReadAllText(Path.Combine(folder.FullName, "mine.yaml")));
    }

    [Theory]
    [InlineData("usual: 2.5\nusual: 3\n", "answers.txt:2:1: 'usual' is answered twice")]
    [InlineData("usual 2.5\n", "answers.txt:1:1: a question and its answer are expected")]
    [InlineData("usual: much\n", "usual: 'much' is not taken")]
    public void A_fault_of_the_answers_is_told_at_its_line(string answers, string expected)
    {
        File.WriteAllText(Path.Combine(folder.FullName, "answers.txt"), answers);

        Terminal run = Run("practicals", "new", "--answers", "answers.txt", "--out", "mine.yaml");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("gas")]
    [InlineData("closed")]
    [InlineData("product")]
    public void The_example_of_every_family_can_be_simulated_analysed_and_marked(string family)
    {
        Terminal run = Run("practicals", "new", "--set", $"happens={family}", "--out", "mine.yaml");

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("simulate, analyse and mark work", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_ones_own_is_found_by_its_id_by_every_command_that_wants_a_practical()
    {
        Run("practicals", "new", "--set", "id=my-carbonate", "--data", "data");

        Assert.Contains("my-carbonate: Heating zinc carbonate (your own, version 1)", Run("practicals", "--data", "data").Output, StringComparison.Ordinal);
        Assert.Contains("Heating zinc carbonate (version 1) can be used", Run("practicals", "check", "my-carbonate", "--data", "data").Output, StringComparison.Ordinal);
        Assert.Equal(0, Run("simulate", "my-carbonate", "--data", "data", "--groups", "3", "--csv", "class.csv").ExitCode);
        Assert.Equal(0, Run("analyse", "class.csv", "--practical", "my-carbonate", "--data", "data", "--no-causes").ExitCode);
        Assert.Contains("did you mean my-carbonate?", Run("simulate", "my-carbonat", "--data", "data").Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_ends_in_yml_is_one_of_ones_own_too_and_two_of_one_id_are_told_by_both_names()
    {
        Run("practicals", "new", "--set", "id=my-carbonate", "--data", "data");
        string own = Path.Combine(folder.FullName, "data", "practicals", "my-carbonate");
        File.Move($"{own}.yaml", $"{own}.yml");
        Assert.Contains("my-carbonate: Heating zinc carbonate (your own, version 1)", Run("practicals", "--data", "data").Output, StringComparison.Ordinal);
        Assert.Equal(0, Run("simulate", "my-carbonate", "--data", "data", "--groups", "3").ExitCode);
        Terminal again = Run("practicals", "new", "--set", "id=my-carbonate", "--data", "data");
        Assert.Equal(2, again.ExitCode);
        Assert.Contains("my-carbonate.yml:1:1: this is your practical 'my-carbonate' already", again.Error, StringComparison.Ordinal);

        File.Copy($"{own}.yml", $"{own}.yaml");
        Assert.Contains("my-carbonate.yaml and my-carbonate.yml both say that they are 'my-carbonate'", Run("practicals", "--data", "data").Error, StringComparison.Ordinal);
        foreach (string[] words in (string[][])[["simulate"], ["practicals", "check"]])
        {
            Terminal run = Run([.. words, "my-carbonate", "--data", "data"]);
            Assert.Equal((2, ""), (run.ExitCode, run.Output));
            Assert.Contains("my-carbonate.yaml, my-carbonate.yml; give all but one another id", run.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_file_with_the_id_of_the_program_s_own_practical_is_told_and_not_used()
    {
        Directory.CreateDirectory(Path.Combine(folder.FullName, "data", "practicals"));
        File.WriteAllText(Path.Combine(folder.FullName, "data", "practicals", "mine.yaml"), "practical: magnesium-oxide\n");

        Terminal run = Run("simulate", "magnesium-oxide", "--data", "data");

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("your file mine.yaml is not used", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Faults_of_a_file_of_ones_own_are_told_when_it_is_asked_for()
    {
        Directory.CreateDirectory(Path.Combine(folder.FullName, "data", "practicals"));
        File.WriteAllText(Path.Combine(folder.FullName, "data", "practicals", "a.yaml"), "practical: half-done\ntitle: Half\n");

        Terminal run = Run("simulate", "half-done", "--data", "data");

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("a.yaml:1:1: a practical lacks the key 'materials'", run.Error, StringComparison.Ordinal);
    }

    private Terminal Run(params string[] words) => Terminal.RunIn(folder.FullName, words);
}
