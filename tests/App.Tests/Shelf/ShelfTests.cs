using Calx.Practicals.Definition;

namespace Calx.App.Tests.Shelf;

/// <summary>Everything that Calx does, with every practical of the shelf.</summary>
public sealed class ShelfTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    public static TheoryData<string> Ids => [.. BuiltInPracticals.Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_practical_serves_every_use(string id) => new EveryUse(id, folder).Check();

    /// <summary>One more practical is one file: nothing else names it, and everything can be done with it.</summary>
    [Fact]
    public void One_more_practical_is_one_file()
    {
        Terminal written = Terminal.RunIn(
            folder.FullName, "practicals", "new", "--set", "happens=heated", "--set", "title=Water in gypsum", "--set", "equation=CaSO4.2H2O -> CaSO4 + 2H2O",
            "--set", "sampleName=gypsum", "--set", "productName=anhydrous calcium sulfate", "--set", "usual=2.0", "--set", "repeats=3", "--out", "gypsum.yaml");
        Assert.True(written.ExitCode == 0, written.Error);
        Assert.Equal(["gypsum.yaml"], Directory.GetFileSystemEntries(folder.FullName).Select(f => Path.GetFileName(f)!));

        new EveryUse("gypsum.yaml", folder).Check();
    }

    public void Dispose() => folder.Dispose();
}
