namespace Calx.App.Tests.Examples;

/// <summary>The pages are compared as they should be: a slip in one is seen.</summary>
public sealed class ConsoleBlockTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    public void Dispose() => folder.Dispose();

    [Theory]
    [InlineData("a\nb\n", "a\nb\n", true)]
    [InlineData("a\nb\n", "a\nb\nc\n", false)]
    [InlineData("a\n...\nd\n", "a\nb\nc\nd\n", true)]
    [InlineData("a\n...\nd\n", "a\nb\nc\n", false)]
    [InlineData("a\n...\n", "a\nb\n", true)]
    [InlineData("...\nb\n...\n", "a\nb\nc\n", true)]
    [InlineData("...\nb\n...\n", "a\nbb\nc\n", false)]
    [InlineData("...\nc\n...\nb\n", "a\nb\nc\n", false)]
    public void Three_dots_stand_for_any_lines_and_all_else_for_itself(string page, string seen, bool fits)
    {
        ConsoleBlock block = Assert.Single(Blocks($"```console\n$ calx x\n{page}```\n"));

        Assert.Equal(fits, block.IsAnsweredBy(seen));
    }

    [Fact]
    public void Only_console_blocks_are_run_and_quotes_are_taken_off()
    {
        IReadOnlyList<ConsoleBlock> blocks = Blocks(
            "```yaml\n$ no\n```\n```console\n$ calx equation \"A -> B\" 'c d'\nseen\n$ calx demo\n```\n");

        Assert.Equal(["calx", "equation", "A -> B", "c d"], blocks[0].Words());
        Assert.Equal("seen\n", blocks[0].Expected);
        Assert.Equal(("calx demo", ""), (blocks[1].Command, blocks[1].Expected));
    }

    private IReadOnlyList<ConsoleBlock> Blocks(string page)
    {
        string path = Path.Combine(folder.FullName, "question.md");
        File.WriteAllText(path, page);
        return ConsoleBlock.Of(path);
    }
}
