using System.IO.Compression;
using System.Text;
using Calx.Papers.SheetCheck;
using DocumentFormat.OpenXml.Wordprocessing;

namespace Calx.Papers.Tests.SheetCheck;

/// <summary>Files that are no worksheet, or were made to do harm: one line of reason, in bounded memory, nothing run or fetched.</summary>
public sealed class HostileFileTests
{
    private const string Word = "http://schemas.openxmlformats.org/wordprocessingml/2006/main";

    public static TheoryData<string, string> Contents() => new()
    {
        { "", "empty" },
        { " \r\n\t ", "empty" },
        { "%PDF-1.7 something", "PDF" },
        { "\u0001\u0002\u0003\u0004 after", "neither text nor DOCX" },
        { "before\0after", "neither text nor DOCX" },
        { "{\\rtf1 text}", "RTF" },
        { "<html><p>Weigh it.</p></html>", "web page" },
        { "PK\u0003\u0004 no zip", "damaged" },
    };

    [Theory]
    [MemberData(nameof(Contents))]
    public void What_is_no_worksheet_is_told(string content, string reason) =>
        Assert.Contains(reason, MadeSheet.Refused(Encoding.UTF8.GetBytes(content)), StringComparison.Ordinal);

    [Fact]
    public void An_old_document_is_told() =>
        Assert.Contains("old document", MadeSheet.Refused([0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1, .. new byte[600]]), StringComparison.Ordinal);

    [Fact]
    public void Text_in_another_encoding_is_told() =>
        Assert.Contains("UTF-8", MadeSheet.Refused([.. "Temperature 20 "u8, 0xB0, (byte)'C']), StringComparison.Ordinal);

    [Fact]
    public void A_folder_and_a_file_that_is_not_there_are_told()
    {
        Assert.Contains("a folder", Assert.IsType<SheetFile.Fault>(SheetFile.Read(AppContext.BaseDirectory)).Reason, StringComparison.Ordinal);
        Assert.Contains("no such file", Assert.IsType<SheetFile.Fault>(SheetFile.Read(Path.Combine(AppContext.BaseDirectory, "none.docx"))).Reason, StringComparison.Ordinal);
    }

    /// <summary>Every second byte position of a small document cut off: never anything but a sheet or one line.</summary>
    [Fact]
    public void A_document_that_was_cut_off_is_told()
    {
        byte[] whole = MadeSheet.Word(InventedSheets.Sheet(InventedSheets.Magnesium));
        for (int length = 4; length < whole.Length; length += 97)
        {
            Assert.NotEmpty(MadeSheet.Refused(whole[..length]));
        }
    }

    /// <summary>Bytes changed at random (fixed seed): damaged or read, never an exception.</summary>
    [Fact]
    public void A_damaged_document_is_read_or_told()
    {
        byte[] whole = MadeSheet.Word(InventedSheets.Sheet(InventedSheets.Copper));
        var random = new Random(20261);
        for (int run = 0; run < 200; run++)
        {
            byte[] damaged = [.. whole];
            for (int i = 0; i < 8; i++)
            {
                damaged[random.Next(4, damaged.Length)] = (byte)random.Next(256);
            }

            Assert.NotNull(SheetFile.Read(new MemoryStream(damaged)));
        }
    }

    /// <summary>A gigabyte of blanks in a megabyte.</summary>
    [Fact]
    public void A_bomb_is_not_unpacked()
    {
        byte[] bomb = Packed(stream =>
        {
            byte[] block = new byte[1_000_000];
            Array.Fill(block, (byte)' ');
            stream.Write(Encoding.UTF8.GetBytes($"<w:document xmlns:w=\"{Word}\"><w:body><w:p><w:r><w:t>"));
            for (int i = 0; i < 1_000; i++)
            {
                stream.Write(block);
            }
        });
        Assert.True(bomb.Length < 20_000_000);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Matches("unpacks to more than 20 MB|longer than", MadeSheet.Refused(bomb));
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 200_000_000);
    }

    [Fact]
    public void Entities_are_not_followed()
    {
        string reason = MadeSheet.Refused(Packed($"<!DOCTYPE d [<!ENTITY x SYSTEM \"file:///etc/hostname\">]><w:document xmlns:w=\"{Word}\"><w:body><w:p><w:r><w:t>&x;</w:t></w:r></w:p></w:body></w:document>"));
        Assert.Contains("entities", reason, StringComparison.Ordinal);
        // Behind so much white space that it is not in the first kilobytes.
        Assert.Contains("damaged", MadeSheet.Refused(Packed($"{new string(' ', 9_000)}<!DOCTYPE d [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]><d>&b;</d>")), StringComparison.Ordinal);
    }

    [Fact]
    public void Elements_deeper_than_a_document_has_are_told()
    {
        string deep = string.Concat(Enumerable.Repeat("<w:sdt>", 5_000)) + string.Concat(Enumerable.Repeat("</w:sdt>", 5_000));
        Assert.Contains("damaged", MadeSheet.Refused(Packed($"<w:document xmlns:w=\"{Word}\">{deep}</w:document>")), StringComparison.Ordinal);
    }

    /// <summary>A side has some 40 lines.</summary>
    [Fact]
    public void A_document_of_five_hundred_sides_is_told()
    {
        byte[] book = MadeSheet.Word(body =>
        {
            for (int i = 0; i < 500 * 40; i++)
            {
                body.Append(new Paragraph(new Run(new Text("Weigh the crucible with its lid, and write down every digit that you see."))));
            }
        });
        Assert.Contains("longer than 60 sides", MadeSheet.Refused(book), StringComparison.Ordinal);
        Assert.Contains("longer than 60 sides", MadeSheet.Refused(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat("Weigh it again.\n", 20_000)))), StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_with_macros_is_read_for_its_text_and_says_so()
    {
        byte[] file = Packed($"<w:document xmlns:w=\"{Word}\"><w:body><w:p><w:r><w:t>Weigh it.</w:t></w:r></w:p></w:body></w:document>", "word/vbaProject.bin");
        Sheet sheet = MadeSheet.Opened(file);
        Assert.Equal("Weigh it.", Assert.Single(sheet.Paragraphs).Text);
        Assert.Contains("neither run nor read", Assert.Single(sheet.Notes), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("xl/workbook.xml", "workbook")]
    [InlineData("readme.txt", "without a document")]
    public void Other_packed_files_are_told(string entry, string reason)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            zip.CreateEntry(entry);
        }

        Assert.Contains(reason, MadeSheet.Refused(stream.ToArray()), StringComparison.Ordinal);
    }

    /// <summary>Texts made to keep a search for patterns busy: of each, the most that is read. A search that tried every beginning against every
    /// end would not come back within the test run.</summary>
    [Theory]
    [InlineData("A+")]
    [InlineData("Mg")]
    [InlineData("balance ")]
    [InlineData("Ar Mg 1=")]
    [InlineData("not weight ")]
    [InlineData("calculate ")]
    [InlineData("A(A)")]
    [InlineData("a=")]
    [InlineData("mass 1 . ")]
    [InlineData("___")]
    public void Monotonous_text_is_searched_in_time(string word)
    {
        string text = string.Join("\n\n", Enumerable.Repeat(string.Concat(Enumerable.Repeat(word, 4_900 / word.Length)), 40));
        Assert.NotNull(CheckedSheet.Findings(MadeSheet.Opened(Encoding.UTF8.GetBytes(text)), Practicals.Definition.BuiltInPracticals.Find(InventedSheets.Copper)!));
    }

    private static byte[] Packed(string document, params string[] others) => Packed(stream => stream.Write(Encoding.UTF8.GetBytes(document)), others);

    private static byte[] Packed(Action<Stream> write, params string[] others)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            using (Stream entry = zip.CreateEntry("word/document.xml", CompressionLevel.Fastest).Open())
            {
                write(entry);
            }

            foreach (string other in others)
            {
                using Stream entry = zip.CreateEntry(other).Open();
                entry.Write("Sub Document_Open()"u8);
            }
        }

        return stream.ToArray();
    }
}
