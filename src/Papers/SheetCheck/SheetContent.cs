using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Xml;
using Calx.Papers.Tables;
using Calx.Papers.Texts;

namespace Calx.Papers.SheetCheck;

/// <summary>Tells from the bytes of a file what it is, and reads the worksheet in it or says what to do.</summary>
/// <param name="texts">What can be said of it.</param>
internal sealed class SheetContent(SheetCheckTexts texts)
{
    private readonly (byte[] Start, string What)[] known =
    [
        ("%PDF"u8.ToArray(), texts.Pdf),
        ([0xD0, 0xCF, 0x11, 0xE0], texts.OldDocument),
        ("{\\rtf"u8.ToArray(), texts.RichText),
        ([0x89, (byte)'P', (byte)'N', (byte)'G'], texts.Picture),
        ([0xFF, 0xD8, 0xFF], texts.Picture),
        ("GIF8"u8.ToArray(), texts.Picture),
        ([0x1F, 0x8B], texts.Compressed),
    ];

    /// <summary>Reads the worksheet that the bytes hold.</summary>
    public SheetFile Read(byte[] bytes)
    {
        if (bytes.AsSpan().IndexOfAnyExcept(" \t\r\n\0"u8) < 0)
        {
            return new SheetFile.Fault(texts.Empty);
        }

        if (bytes.AsSpan().StartsWith("PK"u8) && bytes.Length > 3 && bytes[2] is 3 or 5)
        {
            return Package(bytes);
        }

        foreach ((byte[] start, string what) in known)
        {
            if (bytes.AsSpan().StartsWith(start))
            {
                return new SheetFile.Fault(what);
            }
        }

        return Text(bytes);
    }

    /// <summary>A limit in MB.</summary>
    public static string Megabytes(long bytes) => (bytes / 1_000_000).ToString(CultureInfo.InvariantCulture);

    private SheetFile Text(byte[] bytes)
    {
        string text;
        try
        {
            ReadOnlySpan<byte> content = bytes;
            text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(content.StartsWith(Encoding.UTF8.Preamble) ? content[3..] : content);
        }
        catch (DecoderFallbackException)
        {
            return new SheetFile.Fault(texts.NoUtf8);
        }

        bool isText = !text.Any(c => char.IsControl(c) && c is not ('\t' or '\r' or '\n' or '\f' or '\u0085'));
        return !isText ? new SheetFile.Fault(texts.NoText)
            : text.AsSpan().TrimStart().StartsWith("<", StringComparison.Ordinal)
                ? new SheetFile.Fault(texts.Markup)
            : TextSheet.Read(text) is Sheet sheet ? new SheetFile.Opened(sheet)
            : new SheetFile.Fault(texts.TooLong);
    }

    private SheetFile Package(byte[] bytes)
    {
        try
        {
            using ZipArchive zip = new(new MemoryStream(bytes, false), ZipArchiveMode.Read);
            if (zip.Entries.Count > SheetLimits.MostParts)
            {
                return new SheetFile.Fault(texts.TooManyParts(SheetLimits.MostParts.ToString(CultureInfo.InvariantCulture)));
            }

            return zip.GetEntry("word/document.xml") is ZipArchiveEntry text ? Document(zip, text) : new SheetFile.Fault(OtherPackage(zip));
        }
        catch (ExpansionException)
        {
            return new SheetFile.Fault(texts.UnpacksTooLarge(Megabytes(SheetLimits.LargestText)));
        }
        catch (SheetTooLongException)
        {
            return new SheetFile.Fault(texts.TooLong);
        }
        // What the packing and XML layers throw at a damaged or forged file; the file is at fault, never the program.
        catch (Exception e) when (e is XmlException or InvalidDataException or ArgumentException or InvalidOperationException
            or NotSupportedException or OverflowException or IOException)
        {
            return new SheetFile.Fault(texts.Damaged);
        }
    }

    private SheetFile Document(ZipArchive zip, ZipArchiveEntry text)
    {
        var budget = new ExpansionBudget(SheetLimits.LargestText);
        using (var start = new BoundedStream(text.Open(), budget))
        {
            byte[] head = new byte[4_096];
            int read = start.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
            if (head.AsSpan(0, read).IndexOf("<!DOCTYPE"u8) >= 0)
            {
                return new SheetFile.Fault(texts.Entities);
            }
        }

        bool macros = zip.Entries.Any(e => e.FullName.EndsWith("vbaProject.bin", StringComparison.OrdinalIgnoreCase));
        using var content = new BoundedStream(text.Open(), budget);
        Sheet sheet = WordSheet.Read(content, macros ? [texts.Macros] : []);
        return sheet.Paragraphs.Count == 0
            ? new SheetFile.Fault(texts.NoTextInDocument)
            : new SheetFile.Opened(sheet);
    }

    private string OtherPackage(ZipArchive zip) => zip.GetEntry("mimetype") is not null && zip.GetEntry("content.xml") is not null
        ? texts.OpenDocument
        : zip.GetEntry("xl/workbook.xml") is not null ? texts.WorkbookGiven
        : texts.NoDocumentInside;
}
