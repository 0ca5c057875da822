using System.IO.Compression;
using System.Text.Json;
using Calx.Records.Lessons;

namespace Calx.Records.Archive;

/// <summary>
/// Reads an archive that anybody may have made. Only <c>records.json</c> is opened, so that no name in the zip leads anywhere; what
/// it grows to is counted while it is read, and a record that cannot be one is told and passed over.
/// </summary>
internal static class ArchiveReader
{
    private const int Deepest = 12;

    /// <summary>From so many records that cannot be read on, the file is not what it says, and reading on would only cost time: eight
    /// kilobytes can hold five million of them.</summary>
    private const int MostFaults = 100;

    /// <summary>From this size on it is looked at how tightly the records are packed.</summary>
    private const long LooselyPacked = 10L * 1024 * 1024;

    /// <summary>Bytes that one packed byte may become. The same practical again and again, some 20 kB each, is packed 137 to 1 at most:
    /// a match of 258 bytes that lies so far back takes 15 bits.</summary>
    private const long TightestPacking = 200;

    public static async Task<ArchiveReading> Read(Stream stream, CancellationToken cancel)
    {
        try
        {
            stream.Position = 0;
            if (stream.Length > LessonArchive.LargestZip)
            {
                return ArchiveReading.None($"This file is larger than {LessonArchive.LargestZip / 1024 / 1024} MB, which no export is that can be read.");
            }

            using var zip = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
            if (FaultOf(zip) is string fault)
            {
                return ArchiveReading.None(fault);
            }

            using var text = new MemoryStream();
            if (await Unpack(zip.GetEntry(ArchiveZip.Records)!, text, cancel) is string tooLarge)
            {
                return ArchiveReading.None(tooLarge);
            }

            using JsonDocument document = JsonDocument.Parse(text.GetBuffer().AsMemory(0, (int)text.Length), new JsonDocumentOptions { MaxDepth = Deepest });
            return Content(document.RootElement);
        }
        catch (InvalidOperationException)
        {
            return ArchiveReading.None($"{ArchiveZip.Records}: this is not UTF-8 throughout.");
        }
        catch (InvalidDataException)
        {
            return ArchiveReading.None("This file is no zip, or a damaged one.");
        }
        catch (JsonException broken)
        {
            return ArchiveReading.None(FormattableString.Invariant($"{ArchiveZip.Records}:{(broken.LineNumber ?? 0) + 1}:{(broken.BytePositionInLine ?? 0) + 1}: this is not JSON, or nested too deeply."));
        }
    }

    /// <summary>What keeps a zip from being read, or null. Nothing is ever written to a path that it names; one that leads out of its
    /// folder tells of a maker who meant harm.</summary>
    private static string? FaultOf(ZipArchive zip) =>
        zip.Entries.Count > LessonArchive.MostFiles ? $"This zip holds more than {LessonArchive.MostFiles} files, which no export does."
        : zip.Entries.FirstOrDefault(e => LeadsOut(e.FullName)) is ZipArchiveEntry entry
            ? $"This zip names a file outside its own folder ('{Short(entry.FullName)}'): it is no export of these records."
        : zip.Entries.Count(e => e.FullName == ArchiveZip.Records) switch
        {
            0 => $"This zip holds no {ArchiveZip.Records}: it is no export of these records.",
            1 => null,
            _ => $"This zip holds {ArchiveZip.Records} twice: it is no export of these records.",
        };

    private static bool LeadsOut(string name) =>
        name.StartsWith('/') || name.Contains('\\', StringComparison.Ordinal) || name.Contains(':', StringComparison.Ordinal)
        || name.Split('/').Contains("..");

    private static string Short(string name) => name.Length <= 60 ? name : name[..60] + "...";

    /// <summary>Counts while it reads: what a zip says of its sizes may be untrue.</summary>
    private static async Task<string?> Unpack(ZipArchiveEntry entry, MemoryStream text, CancellationToken cancel)
    {
        await using Stream packed = await entry.OpenAsync(cancel);
        long most = Math.Min(LessonArchive.LargestRecords, Math.Max(LooselyPacked, TightestPacking * entry.CompressedLength));
        byte[] buffer = new byte[81_920];
        int read;
        while ((read = await packed.ReadAsync(buffer, cancel)) > 0)
        {
            if (text.Length + read > most)
            {
                return most == LessonArchive.LargestRecords
                    ? $"{ArchiveZip.Records} is larger than {LessonArchive.LargestRecords / 1024 / 1024} MB unpacked, which no school's records are."
                    : $"{ArchiveZip.Records} is packed more tightly than any school's records are.";
            }

            text.Write(buffer, 0, read);
        }

        return null;
    }

    private static ArchiveReading Content(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("format", out JsonElement format) || format.ValueKind != JsonValueKind.String
            || format.GetString() != ArchiveJson.Format)
        {
            return ArchiveReading.None($"{ArchiveZip.Records} does not say that its format is {ArchiveJson.Format}.");
        }

        if (!root.TryGetProperty("version", out JsonElement version) || version.ValueKind != JsonValueKind.Number || !version.TryGetInt32(out int number)
            || number is < 1 or > ArchiveJson.Version)
        {
            return ArchiveReading.None($"{ArchiveZip.Records} is of a version that this program does not know; versions up to {ArchiveJson.Version} can be read.");
        }

        var content = new ArchiveContent();
        var faults = new List<string>();
        Each(root, "classes", faults, json => content.Classes.Add(ArchiveRecords.Class(json)));
        Each(root, "members", faults, json => content.Members.Add(ArchiveRecords.Member(json)));
        Each(root, "balances", faults, json => content.Balances.Add(ArchiveRecords.Balance(json)));
        Each(root, "checks", faults, json => content.Checks.Add(ArchiveRecords.Check(json)));
        Each(root, "signatures", faults, json => content.Signatures.Add(ArchiveRecords.Signature(json)));
        if (root.TryGetProperty("numbers", out _))
        {
            Each(root, "numbers", faults, json => content.Decisions.Add(ArchiveRecords.Decision(json)));
        }

        Each(root, "lessons", faults, json => content.Lessons.Add(Lesson(json, faults)));
        return faults.Count < MostFaults
            ? new ArchiveReading(content, faults)
            : ArchiveReading.None($"{MostFaults} records of this file cannot be read, so nothing of it was taken in. The first: {faults[0]}");
    }

    private static ArchivedLesson Lesson(JsonElement json, List<string> faults)
    {
        Lesson lesson = ArchiveRecords.Lesson(json);
        var journal = new List<Journal.KeptEntry>();
        Each(json, "journal", faults, entry => journal.Add(ArchiveRecords.Entry(entry)), $"lesson {lesson.Id}, ");
        return new ArchivedLesson(lesson, journal);
    }

    private static void Each(JsonElement root, string name, List<string> faults, Action<JsonElement> take, string before = "")
    {
        if (!root.TryGetProperty(name, out JsonElement list) || list.ValueKind != JsonValueKind.Array)
        {
            faults.Add($"{ArchiveZip.Records}: {before}{name}: a list is expected.");
            return;
        }

        int place = 0;
        foreach (JsonElement json in list.EnumerateArray())
        {
            if (faults.Count >= MostFaults)
            {
                return;
            }

            place++;
            try
            {
                take(json);
            }
            catch (Exception fault) when (fault is FormatException or ArgumentException or KeyNotFoundException or InvalidOperationException)
            {
                faults.Add(FormattableString.Invariant($"{ArchiveZip.Records}: {before}{name}, number {place}: {Sentence(fault)}"));
            }
        }
    }

    /// <summary>Without what is meant for programmers: the parameter's name.</summary>
    private static string Sentence(Exception fault) => fault.Message.Split('\n')[0].Split(" (Parameter '")[0];
}
