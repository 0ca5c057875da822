using System.Text.RegularExpressions;

namespace Calx.App.Tests.Examples;

/// <summary>The commands that the guide shows are run among the examples, and print what the guide says.</summary>
public sealed partial class GuideTests
{
    private static readonly string Examples = Path.Combine(AppContext.BaseDirectory, "examples");

    [Theory]
    [InlineData("command-line.md")]
    [InlineData("plan-a-lesson.md")]
    [InlineData("results.md")]
    public void A_page_shows_what_is_seen(string page)
    {
        IReadOnlyList<ConsoleBlock> blocks = ConsoleBlock.Of(Path.Combine(AppContext.BaseDirectory, "guide", page));

        Assert.NotEmpty(blocks);
        foreach (ConsoleBlock block in blocks)
        {
            IReadOnlyList<string> words = block.Words();
            Assert.Equal("calx", words[0]);
            Terminal run = Terminal.RunIn(Examples, [.. words.Skip(1)]);
            string code = run.ExitCode == 0 ? "" : $"(exit {run.ExitCode})\n";
            string seen = run.Output + run.Error + code;
            Assert.True(block.IsAnsweredBy(seen), $"{page}:{block.Line}: $ {block.Command}\n{seen}");
        }
    }

    [Fact]
    public void Every_sentence_that_the_page_on_results_quotes_is_in_the_result()
    {
        string page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "guide", "results.md"));
        string seen = OneLine(Terminal.RunIn(Examples, "analyse", "class-of-twelve/weighings.csv", "--practical", "magnesium-oxide").Output);
        string[] quoted = [.. Quoted().Matches(page).Select(m => OneLine(m.Groups[1].Value))];
        Assert.True(quoted.Length >= 8, $"{quoted.Length} quotations");
        Assert.All(quoted, quotation =>
        {
            int from = 0;
            foreach (string part in quotation.Split(" … "))
            {
                int found = seen.IndexOf(part, from, StringComparison.OrdinalIgnoreCase);
                Assert.True(found >= 0, $"'{part}' is not in the result");
                from = found + part.Length;
            }
        });
    }

    [Fact]
    public void The_model_file_that_the_page_shows_is_in_order()
    {
        string page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "guide", "command-line.md"));
        using TemporaryFolder folder = TemporaryFolder.Empty();
        File.WriteAllText(Path.Combine(folder.FullName, "density.yaml"), page.Split("```yaml\n")[1].Split("```")[0]);

        Terminal run = Terminal.RunIn(folder.FullName, "propagate", "density.yaml", "--draws", "10000");

        Assert.Equal((0, ""), (run.ExitCode, run.Error));
        Assert.StartsWith("density = m / v\n", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("none", run.Output, StringComparison.Ordinal);
    }

    private static string OneLine(string text) => Blanks().Replace(text, " ");

    [GeneratedRegex(@"\*'(.+?)'\*", RegexOptions.CultureInvariant)]
    private static partial Regex Quoted();

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Blanks();
}
