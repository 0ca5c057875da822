using System.IO.Compression;
using System.Text;
using System.Xml;
using Calx.Papers.Tables;

namespace Calx.Papers.SheetCheck;

/// <summary>Tells from the bytes of a file what it is, and reads the worksheet in it or says what to do.</summary>
internal static class SheetContent
{
    private const string SaveAgain = "open it in a word processor and save it again as DOCX";

    private static readonly (byte[] Start, string What)[] Known =
    [
        ("%PDF"u8.ToArray(), "a PDF document; give the DOCX that it was made from"),
        ([0xD0, 0xCF, 0x11, 0xE0], "an old document (DOC) or one with a password; save it as DOCX without a password"),
        ("{\\rtf"u8.ToArray(), "a rich text document (RTF); save it as DOCX"),
        ([0x89, (byte)'P', (byte)'N', (byte)'G'], "a picture; give the DOCX or the text"),
        ([0xFF, 0xD8, 0xFF], "a picture; give the DOCX or the text"),
        ("GIF8"u8.ToArray(), "a picture; give the DOCX or the text"),
        ([0x1F, 0x8B], "a compressed file; unpack it and give the worksheet itself"),
    ];

    /// <summary>Reads the worksheet that the bytes hold.</summary>
    public static SheetFile Read(byte[] bytes)
    {
        if (bytes.AsSpan().IndexOfAnyExcept(" \t\r\n\0"u8) < 0)
        {
            return new SheetFile.Fault("the file is empty; expected a worksheet as DOCX or plain text");
        }

        if (bytes.AsSpan().StartsWith("PK"u8) && bytes.Length > 3 && bytes[2] is 3 or 5)
        {
            return Package(bytes);
        }

        foreach ((byte[] start, string what) in Known)
        {
            if (bytes.AsSpan().StartsWith(start))
            {
                return new SheetFile.Fault(what);
            }
        }

        return Text(bytes);
    }

    private static SheetFile Text(byte[] bytes)
    {
        string text;
        try
        {
            ReadOnlySpan<byte> content = bytes;
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(content.StartsWith(Encoding.UTF8.Preamble) ? content[3..] : content);
        }
        catch (DecoderFallbackException)
        {
            return new SheetFile.Fault("no text in UTF-8 and no DOCX; save it as DOCX or as text in UTF-8");
        }

        bool isText = !text.Any(c => char.IsControl(c) && c is not ('\t' or '\r' or '\n' or '\f' or '\u0085'));
        return !isText ? new SheetFile.Fault("neither text nor DOCX; save the worksheet as DOCX or as text in UTF-8")
            : text.AsSpan().TrimStart().StartsWith("<", StringComparison.Ordinal)
                ? new SheetFile.Fault("a web page or another marked-up file; save the worksheet as DOCX or as plain text")
            : TextSheet.Read(text) is Sheet sheet ? new SheetFile.Opened(sheet)
            : new SheetFile.Fault(SheetLimits.TooLong);
    }

    private static SheetFile Package(byte[] bytes)
    {
        try
        {
            using ZipArchive zip = new(new MemoryStream(bytes, false), ZipArchiveMode.Read);
            if (zip.Entries.Count > SheetLimits.MostParts)
            {
                return new SheetFile.Fault($"more than {SheetLimits.MostParts} parts in the file, which no worksheet has");
            }

            return zip.GetEntry("word/document.xml") is ZipArchiveEntry text ? Document(zip, text) : new SheetFile.Fault(OtherPackage(zip));
        }
        catch (ExpansionException)
        {
            return new SheetFile.Fault($"its text unpacks to more than {SheetLimits.LargestText / 1_000_000} MB, which no worksheet's does");
        }
        catch (SheetTooLongException)
        {
            return new SheetFile.Fault(SheetLimits.TooLong);
        }
        // What the packing and XML layers throw at a damaged or forged file; the file is at fault, never the program.
        catch (Exception e) when (e is XmlException or InvalidDataException or ArgumentException or InvalidOperationException
            or NotSupportedException or OverflowException or IOException)
        {
            return new SheetFile.Fault($"the document is damaged or not a plain DOCX; {SaveAgain}");
        }
    }

    private static SheetFile Document(ZipArchive zip, ZipArchiveEntry text)
    {
        var budget = new ExpansionBudget(SheetLimits.LargestText);
        using (var start = new BoundedStream(text.Open(), budget))
        {
            byte[] head = new byte[4_096];
            int read = start.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
            if (head.AsSpan(0, read).IndexOf("<!DOCTYPE"u8) >= 0)
            {
                return new SheetFile.Fault($"the document declares entities of its own, which are not followed; {SaveAgain}");
            }
        }

        bool macros = zip.Entries.Any(e => e.FullName.EndsWith("vbaProject.bin", StringComparison.OrdinalIgnoreCase));
        using var content = new BoundedStream(text.Open(), budget);
        Sheet sheet = WordSheet.Read(content, macros ? ["the file has macros, which were neither run nor read; only its text was"] : []);
        return sheet.Paragraphs.Count == 0
            ? new SheetFile.Fault("there is no text in the document; pictures of text are not read")
            : new SheetFile.Opened(sheet);
    }

    private static string OtherPackage(ZipArchive zip) => zip.GetEntry("mimetype") is not null && zip.GetEntry("content.xml") is not null
        ? "an OpenDocument file; save it as DOCX"
        : zip.GetEntry("xl/workbook.xml") is not null ? "a workbook; give a worksheet as DOCX or plain text"
        : "a compressed file without a document in it; give the worksheet as DOCX or plain text";
}
