using System.Globalization;
using System.IO.Compression;
using System.Text;
using Calx.Papers.Texts;

namespace Calx.Papers.Tables;

/// <summary>Tells from the bytes of a file what it is, and reads it or says what to do.</summary>
internal static class FileContent
{
    private static readonly (byte[] Start, Func<TableTexts, string> What)[] Known =
    [
        ("%PDF"u8.ToArray(), t => t.Pdf),
        ([0x89, (byte)'P', (byte)'N', (byte)'G'], t => t.Picture),
        ([0xFF, 0xD8, 0xFF], t => t.Picture),
        ("GIF8"u8.ToArray(), t => t.Picture),
        ([0x1F, 0x8B], t => t.Compressed),
        ("Rar!"u8.ToArray(), t => t.Compressed),
        ("7z"u8.ToArray(), t => t.Compressed),
        ("SQLite format"u8.ToArray(), t => t.Database),
    ];

    /// <summary>Reads the table that the bytes hold.</summary>
    public static TableFile Read(byte[] bytes, TableLimits limits, TableTexts texts)
    {
        if (bytes.Length == 0)
            return new TableFile.Fault(TableFaultKind.Empty, texts.Empty);
        if (bytes.AsSpan().StartsWith("PK"u8) && bytes.Length > 3 && bytes[2] is 3 or 5)
            return Zip(bytes, limits, texts);
        if (bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]))
            return Compound(bytes, texts);
        foreach ((byte[] start, Func<TableTexts, string> what) in Known)
        {
            if (bytes.AsSpan().StartsWith(start))
                return new TableFile.Fault(TableFaultKind.Binary, what(texts));
        }
        return CsvText.Read(bytes, limits, texts);
    }

    // The container of the old binary workbooks is also that of an encrypted new one.
    private static TableFile.Fault Compound(byte[] bytes, TableTexts texts) =>
        bytes.AsSpan().IndexOf(Encoding.Unicode.GetBytes("EncryptedPackage")) >= 0
            ? new TableFile.Fault(TableFaultKind.PasswordProtected, texts.Password)
            : new TableFile.Fault(TableFaultKind.OtherFormat, texts.OldWorkbook);

    private static TableFile Zip(byte[] bytes, TableLimits limits, TableTexts texts)
    {
        try
        {
            using ZipArchive zip = new(new MemoryStream(bytes, false), ZipArchiveMode.Read);
            return ZipFault(zip, limits, texts) ?? Workbook.Read(bytes, limits, texts);
        }
        catch (InvalidDataException)
        {
            return new TableFile.Fault(TableFaultKind.Damaged, texts.Damaged);
        }
    }

    private static TableFile.Fault? ZipFault(ZipArchive zip, TableLimits limits, TableTexts texts)
    {
        // A workbook of a hundred sheets has some hundreds of parts.
        const int mostParts = 5_000;
        if (zip.Entries.Count > mostParts || zip.Entries.Sum(e => (decimal)e.Length) > limits.LargestExpanded)
            return TooLargeUnpacked(limits, texts);
        if (zip.GetEntry("xl/workbook.xml") is not null || HasRelationToWorkbook(zip))
            return null;
        string what = zip.Entries switch
        {
            _ when zip.GetEntry("xl/workbook.bin") is not null => texts.BinaryWorkbook,
            _ when zip.GetEntry("mimetype") is not null && zip.GetEntry("content.xml") is not null =>
                texts.OpenDocument,
            _ when zip.GetEntry("word/document.xml") is not null => texts.TextDocument,
            _ when zip.Entries.Any(e => e.FullName.StartsWith("Index/", StringComparison.Ordinal)) =>
                texts.OtherWorkbook,
            _ => texts.NoTableInside,
        };
        return new TableFile.Fault(TableFaultKind.OtherFormat, what);
    }

    private static bool HasRelationToWorkbook(ZipArchive zip) => zip.Entries.Any(
        e => e.FullName.EndsWith("workbook.xml", StringComparison.OrdinalIgnoreCase));

    /// <summary>The fault of a workbook that unpacks to more than the limit.</summary>
    public static TableFile.Fault TooLargeUnpacked(TableLimits limits, TableTexts texts) => new(
        TableFaultKind.TooLarge, texts.UnpacksTooLarge(Megabytes(limits.LargestExpanded)));

    /// <summary>A limit in MB.</summary>
    public static string Megabytes(long bytes) => (bytes / 1_000_000).ToString(CultureInfo.InvariantCulture);
}
