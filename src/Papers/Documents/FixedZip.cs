using System.IO.Compression;

namespace Calx.Papers.Documents;

/// <summary>Takes the clock out of a zip archive: the same content gives the same bytes.</summary>
internal static class FixedZip
{
    /// <summary>The first moment that a zip archive can name.</summary>
    private static readonly DateTimeOffset Moment = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static byte[] Of(byte[] archive)
    {
        using var bytes = new MemoryStream();
        using (var from = new ZipArchive(new MemoryStream(archive), ZipArchiveMode.Read))
        using (var to = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            // The list of content types comes first, as readers that take a file from its start expect it.
            foreach (ZipArchiveEntry entry in from.Entries.OrderBy(e => e.FullName != "[Content_Types].xml").ThenBy(e => e.FullName, StringComparer.Ordinal))
            {
                ZipArchiveEntry copy = to.CreateEntry(entry.FullName, CompressionLevel.Optimal);
                copy.LastWriteTime = Moment;
                using Stream source = entry.Open();
                using Stream target = copy.Open();
                source.CopyTo(target);
            }
        }

        return bytes.ToArray();
    }
}
