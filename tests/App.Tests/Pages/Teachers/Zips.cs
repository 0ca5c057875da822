using System.IO.Compression;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>Looks into a zip.</summary>
internal static class Zips
{
    /// <summary>The text of one of its files.</summary>
    public static async Task<string> Text(string path, string name)
    {
        await using FileStream file = File.OpenRead(path);
        return await Text(file, name);
    }

    /// <summary>The text of one of its files.</summary>
    public static async Task<string> Text(Stream zip, string name)
    {
        using var archive = new ZipArchive(zip, ZipArchiveMode.Read);
        using var reader = new StreamReader(archive.GetEntry(name)!.Open());
        return await reader.ReadToEndAsync(TestContext.Current.CancellationToken);
    }
}
