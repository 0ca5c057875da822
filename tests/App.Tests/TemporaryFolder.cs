namespace Calx.App.Tests;

/// <summary>A throw-away folder, so that what a command writes is not left in the checkout.</summary>
internal sealed class TemporaryFolder : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("calx-");

    /// <summary>Full path of the copy.</summary>
    public string FullName => folder.FullName;

    /// <summary>An empty folder.</summary>
    public static TemporaryFolder Empty() => new();

    /// <summary>A copy of the files (not the folders) in a folder.</summary>
    public static TemporaryFolder Of(string original)
    {
        var copy = new TemporaryFolder();
        foreach (string file in Directory.GetFiles(original))
        {
            File.Copy(file, Path.Combine(copy.FullName, Path.GetFileName(file)));
        }

        return copy;
    }

    public void Dispose() => folder.Delete(recursive: true);
}
