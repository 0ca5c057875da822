namespace Calx.App.Tests;

public sealed class CommandLineTests
{
    [Fact]
    public void Help_is_an_answer_on_standard_output()
    {
        Terminal run = Terminal.Run("--help");

        Assert.Equal(0, run.ExitCode);
        Assert.StartsWith("calx", run.Output, StringComparison.Ordinal);
        Assert.Contains("Example", run.Output, StringComparison.Ordinal);
        Assert.Equal("", run.Error);
    }

    [Fact]
    public void An_unknown_option_is_bad_input_and_the_nearest_known_one_is_named()
    {
        Terminal run = Terminal.Run("--versoin");

        Assert.Equal(2, run.ExitCode);
        Assert.Equal("", run.Output);
        Assert.Contains("'--versoin' is not a known option; did you mean --version?", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void No_command_at_all_is_bad_input_with_a_word_on_what_to_do()
    {
        Terminal run = Terminal.Run();

        Assert.Equal(2, run.ExitCode);
        Assert.Contains("calx --help", run.Error, StringComparison.Ordinal);
    }
}
