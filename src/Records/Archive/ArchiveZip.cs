using System.IO.Compression;

namespace Calx.Records.Archive;

/// <summary>The zip round an archive.</summary>
internal static class ArchiveZip
{
    /// <summary>The file that is read back.</summary>
    public const string Records = "records.json";

    /// <summary>The same for every archive, so that the same records make the same file.</summary>
    private static readonly DateTimeOffset Stamp = new(2000, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>A new file in it.</summary>
    public static Stream Entry(ZipArchive zip, string name)
    {
        ZipArchiveEntry entry = zip.CreateEntry(name, CompressionLevel.Fastest);
        entry.LastWriteTime = Stamp;
        return entry.Open();
    }
}
