namespace Calx.App.Tests.Examples;

/// <summary>The questions under examples/ are run as they stand, and print what their pages say.</summary>
public sealed class ExamplesTests
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "examples");

    public static TheoryData<string> Questions() =>
        [.. Directory.GetFiles(Folder, "question.md", SearchOption.AllDirectories)
            .Select(page => Path.GetRelativePath(Folder, page)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Questions))]
    public void A_question_is_answered_as_its_page_says(string question)
    {
        string page = Path.Combine(Folder, question);
        IReadOnlyList<ConsoleBlock> blocks = ConsoleBlock.Of(page);
        using var copy = TemporaryFolder.Of(Path.GetDirectoryName(page)!);

        Assert.NotEmpty(blocks);
        foreach (ConsoleBlock block in blocks)
        {
            IReadOnlyList<string> words = block.Words();
            Assert.Equal("calx", words[0]);
            Terminal run = Terminal.RunIn(copy.FullName, [.. words.Skip(1)]);
            string code = run.ExitCode == 0 ? "" : $"(exit {run.ExitCode})\n";
            string seen = run.Output + run.Error + code;
            Assert.True(block.IsAnsweredBy(seen), $"{question}:{block.Line}: $ {block.Command}\n{seen}");
        }
    }
}
