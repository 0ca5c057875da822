namespace Calx.App.Tests.Examples;

/// <summary>The commands that the guide shows are run among the examples, and print what the guide says.</summary>
public sealed class GuideTests
{
    private static readonly string Examples = Path.Combine(AppContext.BaseDirectory, "examples");

    [Fact]
    public void The_command_line_s_page_shows_what_is_seen()
    {
        IReadOnlyList<ConsoleBlock> blocks = ConsoleBlock.Of(Path.Combine(AppContext.BaseDirectory, "guide", "command-line.md"));

        Assert.NotEmpty(blocks);
        foreach (ConsoleBlock block in blocks)
        {
            IReadOnlyList<string> words = block.Words();
            Assert.Equal("calx", words[0]);
            Terminal run = Terminal.RunIn(Examples, [.. words.Skip(1)]);
            string code = run.ExitCode == 0 ? "" : $"(exit {run.ExitCode})\n";
            string seen = run.Output + run.Error + code;
            Assert.True(block.Expected == seen, $"command-line.md:{block.Line}: $ {block.Command}\n{seen}");
        }
    }
}
