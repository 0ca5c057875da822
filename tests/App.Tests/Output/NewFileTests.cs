using Calx.App.Output;

namespace Calx.App.Tests.Output;

public sealed class NewFileTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void The_file_that_a_person_names_is_replaced_whole()
    {
        File.WriteAllText(In("a.html"), "old and longer");

        NewFile.Replace(In("a.html"), "new", CancellationToken.None);

        Assert.Equal("new", File.ReadAllText(In("a.html")));
        Assert.Single(Directory.GetFiles(folder.FullName));
    }

    [Fact]
    public void Any_other_file_stays_and_the_new_one_gets_the_next_free_name()
    {
        File.WriteAllText(In("a.html"), "old");
        File.WriteAllText(In("a-2.html"), "older");

        string path = NewFile.Beside(In("a.html"), "new", CancellationToken.None);

        Assert.Equal(In("a-3.html"), path);
        Assert.Equal(("old", "older", "new"), (Text("a.html"), Text("a-2.html"), Text("a-3.html")));
    }

    [Fact]
    public void After_Ctrl_C_the_old_file_stands_and_nothing_half_written()
    {
        File.WriteAllText(In("a.html"), "old");

        Assert.Throws<OperationCanceledException>(
            () => NewFile.Replace(In("a.html"), "new", new CancellationToken(canceled: true)));
        Assert.Equal("old", Text("a.html"));
        Assert.Single(Directory.GetFiles(folder.FullName));
    }

    [Fact]
    public void A_missing_folder_is_named_as_such()
    {
        DirectoryNotFoundException failure = Assert.Throws<DirectoryNotFoundException>(
            () => NewFile.Replace(In("none/a.html"), "new", CancellationToken.None));

        Assert.Equal("there is no such folder", NewFile.ReasonOf(failure));
    }

    [Fact]
    public void A_folder_is_never_taken_for_a_file()
    {
        Directory.CreateDirectory(In("a.html"));

        IOException failure = Assert.Throws<IOException>(
            () => NewFile.Replace(In("a.html"), "new", CancellationToken.None));

        Assert.Equal("this is a folder; name a file in it", NewFile.ReasonOf(failure));
        Assert.Empty(Directory.GetFiles(folder.FullName));
    }

    private string In(string name) => Path.Combine(folder.FullName, name);

    private string Text(string name) => File.ReadAllText(In(name));
}
