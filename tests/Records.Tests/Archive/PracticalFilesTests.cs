using System.IO.Compression;
using System.Text;
using Calx.Records.Archive;

namespace Calx.Records.Tests.Archive;

/// <summary>A teacher's own practicals beside the records in an export.</summary>
public sealed class PracticalFilesTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task They_come_out_as_they_went_in_with_their_earlier_versions()
    {
        PracticalFile[] files = [new("chalk.yaml", "practical: chalk\n# grün\n"), new("earlier/chalk-v1.yaml", "practical: chalk\n")];
        using MemoryStream zip = Zip(("records.json", "{}"));

        PracticalFiles.Add(zip, files);

        Assert.Equal(files, await PracticalFiles.Read(zip, Cancel));
        using var archive = new ZipArchive(zip, ZipArchiveMode.Read);
        Assert.NotNull(archive.GetEntry("records.json"));
    }

    [Theory]
    [InlineData("practicals/../chalk.yaml")]
    [InlineData("practicals/later/chalk.yaml")]
    [InlineData("practicals/chalk.txt")]
    [InlineData("practicals/.yaml")]
    [InlineData("chalk.yaml")]
    public async Task A_name_that_no_export_has_is_passed_over(string name)
    {
        using MemoryStream zip = Zip((name, "practical: chalk\n"));

        Assert.Empty(await PracticalFiles.Read(zip, Cancel));
    }

    [Fact]
    public async Task A_file_that_grows_beyond_a_megabyte_is_passed_over_and_what_is_no_zip_has_none()
    {
        using MemoryStream zip = Zip(("practicals/large.yaml", new string('x', 1_000_001)), ("practicals/small.yaml", "x"));
        using var none = new MemoryStream([1, 2, 3]);

        Assert.Equal("small.yaml", Assert.Single(await PracticalFiles.Read(zip, Cancel)).Name);
        Assert.Empty(await PracticalFiles.Read(none, Cancel));
    }

    private static MemoryStream Zip(params (string Name, string Text)[] entries)
    {
        var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string name, string text) in entries)
            {
                using Stream entry = archive.CreateEntry(name).Open();
                entry.Write(Encoding.UTF8.GetBytes(text));
            }
        }

        return zip;
    }
}
