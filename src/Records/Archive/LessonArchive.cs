using System.IO.Compression;
using Calx.Records.Storage;

namespace Calx.Records.Archive;

/// <summary>
/// Records as one zip: <c>records.json</c>, from which they are read again, and tables in CSV for other tools
/// (docs/methods/records.md). Codes, passphrases, keys and the audit stay where they are.
/// </summary>
public static class LessonArchive
{
    /// <summary>Most bytes of a zip that is read.</summary>
    public const long LargestZip = 50L * 1024 * 1024;

    /// <summary>Most bytes of the records in it: a zip that would grow beyond is not read on.</summary>
    public const long LargestRecords = 400L * 1024 * 1024;

    /// <summary>Most files in a zip that is read: three tables a school, and one a lesson.</summary>
    public const int MostFiles = 50_000;

    /// <summary>Writes one lesson with its class, and the balances that its readings name.</summary>
    /// <param name="store">The records.</param>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="zip">Where the zip goes; left open.</param>
    /// <param name="groups">What the groups are called in the lesson's table; null for their numbers.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="ArgumentException">There is no such lesson.</exception>
    public static async Task WriteLesson(RecordStore store, RecordId lessonId, Stream zip, GroupsOfTable? groups, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArchiveContent content = await store.Gather(lessonId, cancel) ?? throw new ArgumentException($"There is no lesson {lessonId}.", nameof(lessonId));
        await Write(content, zip, groups, cancel);
    }

    /// <summary>Writes everything of the school.</summary>
    /// <param name="store">The records.</param>
    /// <param name="zip">Where the zip goes; left open.</param>
    /// <param name="groups">What the groups are called in the lessons' tables; null for their numbers.</param>
    /// <param name="cancel">Gives up.</param>
    public static async Task WriteAll(RecordStore store, Stream zip, GroupsOfTable? groups, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        await Write((await store.Gather(null, cancel))!, zip, groups, cancel);
    }

    /// <summary>Takes an archive in. What is there already stays as it is: the same is known, another under the same id is
    /// refused, and everything else is added.</summary>
    /// <param name="store">The records.</param>
    /// <param name="zip">The zip, in a stream that can be read at any place; read from its beginning.</param>
    /// <param name="by">Who takes it in.</param>
    /// <param name="cancel">Gives up; nothing is taken in then.</param>
    /// <returns>What became of the records, or why the file is none.</returns>
    public static async Task<ImportResult> Read(RecordStore store, Stream zip, string by, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(zip);
        ArchiveReading reading = await ArchiveReader.Read(zip, cancel);
        if (reading.Content is not ArchiveContent content)
        {
            return new ImportResult.Unreadable(reading.Faults[0]);
        }

        ImportResult.Taken taken = await store.Import(content, by, cancel);
        return taken with { Refused = [.. reading.Faults, .. taken.Refused] };
    }

    private static async Task Write(ArchiveContent content, Stream stream, GroupsOfTable? groups, CancellationToken cancel)
    {
        // The zip is made in memory: its writer is not asynchronous, and a web server's stream takes nothing else.
        using var whole = new MemoryStream();
        using (var zip = new ZipArchive(whole, ZipArchiveMode.Create, leaveOpen: true))
        {
            using (Stream records = ArchiveZip.Entry(zip, ArchiveZip.Records))
            {
                ArchiveJson.Write(records, content);
            }

            ArchiveTables.Write(zip, content, groups);
        }

        whole.Position = 0;
        await whole.CopyToAsync(stream, cancel);
    }
}
