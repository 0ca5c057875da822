using System.IO.Compression;
using System.Text;

namespace Calx.Papers.Tables;

/// <summary>Tells from the bytes of a file what it is, and reads it or says what to do.</summary>
internal static class FileContent
{
    private static readonly (byte[] Start, string What)[] Known =
    [
        ("%PDF"u8.ToArray(), "a PDF document"),
        ([0x89, (byte)'P', (byte)'N', (byte)'G'], "a picture"),
        ([0xFF, 0xD8, 0xFF], "a picture"),
        ("GIF8"u8.ToArray(), "a picture"),
        ([0x1F, 0x8B], "a compressed file"),
        ("Rar!"u8.ToArray(), "a compressed file"),
        ("7z"u8.ToArray(), "a compressed file"),
        ("SQLite format"u8.ToArray(), "a database"),
    ];

    /// <summary>Reads the table that the bytes hold.</summary>
    public static TableFile Read(byte[] bytes, TableLimits limits)
    {
        if (bytes.Length == 0)
            return new TableFile.Fault(TableFaultKind.Empty, "the file is empty");
        if (bytes.AsSpan().StartsWith("PK"u8) && bytes.Length > 3 && bytes[2] is 3 or 5)
            return Zip(bytes, limits);
        if (bytes.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]))
            return Compound(bytes);
        foreach ((byte[] start, string what) in Known)
        {
            if (bytes.AsSpan().StartsWith(start))
                return new TableFile.Fault(TableFaultKind.Binary, $"{what}, not a table; save the table as CSV or XLSX");
        }
        return CsvText.Read(bytes, limits);
    }

    // The container of the old binary workbooks is also that of an encrypted new one.
    private static TableFile.Fault Compound(byte[] bytes) =>
        bytes.AsSpan().IndexOf(Encoding.Unicode.GetBytes("EncryptedPackage")) >= 0
            ? new TableFile.Fault(TableFaultKind.PasswordProtected, "protected by a password; save a copy without one")
            : new TableFile.Fault(TableFaultKind.OtherFormat, "an old workbook (XLS); save it as XLSX or CSV");

    private static TableFile Zip(byte[] bytes, TableLimits limits)
    {
        try
        {
            using ZipArchive zip = new(new MemoryStream(bytes, false), ZipArchiveMode.Read);
            return ZipFault(zip, limits) ?? Workbook.Read(bytes, limits);
        }
        catch (InvalidDataException)
        {
            return new TableFile.Fault(TableFaultKind.Damaged, "the workbook is damaged; save it again or use an older copy");
        }
    }

    private static TableFile.Fault? ZipFault(ZipArchive zip, TableLimits limits)
    {
        // A workbook of a hundred sheets has some hundreds of parts.
        const int mostParts = 5_000;
        if (zip.Entries.Count > mostParts || zip.Entries.Sum(e => (decimal)e.Length) > limits.LargestExpanded)
            return TooLargeUnpacked(limits);
        if (zip.GetEntry("xl/workbook.xml") is not null || HasRelationToWorkbook(zip))
            return null;
        string what = zip.Entries switch
        {
            _ when zip.GetEntry("xl/workbook.bin") is not null => "a binary workbook (XLSB); save it as XLSX or CSV",
            _ when zip.GetEntry("mimetype") is not null && zip.GetEntry("content.xml") is not null =>
                "an OpenDocument file (ODS); save it as XLSX or CSV",
            _ when zip.GetEntry("word/document.xml") is not null => "a text document; copy its table into a spreadsheet",
            _ when zip.Entries.Any(e => e.FullName.StartsWith("Index/", StringComparison.Ordinal)) =>
                "not an XLSX workbook; export it as XLSX or CSV",
            _ => "a compressed file, not a table; unpack it and give the table itself",
        };
        return new TableFile.Fault(TableFaultKind.OtherFormat, what);
    }

    private static bool HasRelationToWorkbook(ZipArchive zip) => zip.Entries.Any(
        e => e.FullName.EndsWith("workbook.xml", StringComparison.OrdinalIgnoreCase));

    /// <summary>The fault of a workbook that unpacks to more than the limit.</summary>
    public static TableFile.Fault TooLargeUnpacked(TableLimits limits) => new(
        TableFaultKind.TooLarge, $"unpacks to more than {limits.LargestExpanded / 1_000_000} MB, which no class's table does");
}
