using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;

namespace Calx.Records.Archive;

/// <summary>A teacher's own practicals beside the records in an archive. Their names are the only ones of a zip that are used, and only
/// where they are as this program makes them.</summary>
public static partial class PracticalFiles
{
    private const string Folder = "practicals/";
    private const int Most = 1000;
    private const int LargestFile = 1_000_000;

    /// <summary>Reads them from an archive; what is not one of them is passed over, and a file that is no zip has none.</summary>
    /// <param name="zip">The zip, in a stream that can be read at any place; read from its beginning.</param>
    /// <param name="cancel">Gives up.</param>
    public static async Task<IReadOnlyList<PracticalFile>> Read(Stream zip, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(zip);
        var files = new List<PracticalFile>();
        try
        {
            zip.Position = 0;
            using var archive = new ZipArchive(zip, ZipArchiveMode.Read, leaveOpen: true);
            foreach (ZipArchiveEntry entry in archive.Entries.Where(e => Name().IsMatch(e.FullName)).Take(Most))
            {
                if (await Text(entry, cancel) is string text)
                {
                    files.Add(new PracticalFile(entry.FullName[Folder.Length..], text));
                }
            }
        }
        catch (InvalidDataException)
        {
            // No zip, or a damaged one: reading the records tells that.
        }

        return files;
    }

    /// <summary>Puts them into an archive that has just been written.</summary>
    /// <param name="zip">The zip, in a stream that can be read and written at any place.</param>
    /// <param name="files">The files; those whose names a reader would pass over are left out.</param>
    public static void Add(Stream zip, IReadOnlyList<PracticalFile> files)
    {
        ArgumentNullException.ThrowIfNull(zip);
        ArgumentNullException.ThrowIfNull(files);
        if (files.Count == 0)
        {
            return;
        }

        using (var archive = new ZipArchive(zip, ZipArchiveMode.Update, leaveOpen: true))
        {
            foreach (PracticalFile file in files.Where(f => Name().IsMatch(Folder + f.Name)))
            {
                using Stream entry = ArchiveZip.Entry(archive, Folder + file.Name);
                entry.Write(Encoding.UTF8.GetBytes(file.Text));
            }
        }

        zip.Position = zip.Length;
    }

    /// <summary>Counted while it is read: what a zip says of its sizes may be untrue.</summary>
    private static async Task<string?> Text(ZipArchiveEntry entry, CancellationToken cancel)
    {
        await using Stream packed = await entry.OpenAsync(cancel);
        byte[] bytes = new byte[LargestFile + 1];
        int length = await packed.ReadAtLeastAsync(bytes, bytes.Length, throwOnEndOfStream: false, cancel);
        return length > LargestFile ? null : Encoding.UTF8.GetString(bytes, 0, length);
    }

    [GeneratedRegex(@"^practicals/(earlier/)?[A-Za-z0-9][A-Za-z0-9._ -]{0,90}\.ya?ml\z", RegexOptions.CultureInvariant)]
    private static partial Regex Name();
}
