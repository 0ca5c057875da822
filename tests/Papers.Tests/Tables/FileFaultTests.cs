using System.IO.Compression;
using System.Text;
using Calx.Papers.Tables;

namespace Calx.Papers.Tests.Tables;

public class FileFaultTests
{
    private static readonly byte[] Small = MadeWorkbook.Of(("Sheet1", null, [MadeWorkbook.Row(1, MadeWorkbook.Text("A1", "Group"))]));

    [Fact]
    public void A_folder_and_a_file_that_is_not_there_are_told()
    {
        Assert.Equal(TableFaultKind.Folder, Assert.IsType<TableFile.Fault>(TableFile.Read(Path.GetTempPath())).Kind);
        Assert.Equal(TableFaultKind.NotFound, Assert.IsType<TableFile.Fault>(TableFile.Read(Path.Combine(AppContext.BaseDirectory, "no such.csv"))).Kind);
        Assert.Equal(TableFaultKind.NotFound, Assert.IsType<TableFile.Fault>(TableFile.Read("")).Kind);
        Assert.Equal(TableFaultKind.NotFound, Assert.IsType<TableFile.Fault>(TableFile.Read("a\0b")).Kind);
    }

    public static TheoryData<string, TableFaultKind> Contents() => new()
    {
        { "", TableFaultKind.Empty },
        { " \r\n\t \n", TableFaultKind.Empty },
        { "\uFEFF", TableFaultKind.Empty },
        { "%PDF-1.7 something", TableFaultKind.Binary },
        { "Group\0after\0", TableFaultKind.Binary },
        { "\u0001\u0002\u0003\u0004 after", TableFaultKind.Binary },
        { "<html><table><tr><td>Group</td></tr></table></html>", TableFaultKind.OtherFormat },
        { "<?xml version=\"1.0\"?><Workbook/>", TableFaultKind.OtherFormat },
        { "PK\u0003\u0004 no zip", TableFaultKind.Damaged },
    };

    [Theory]
    [MemberData(nameof(Contents))]
    public void What_is_no_table_is_told(string content, TableFaultKind kind) =>
        Assert.Equal(kind, Opening.Refused(Encoding.UTF8.GetBytes(content)).Kind);

    [Fact]
    public void A_picture_is_told() =>
        Assert.Contains("a picture", Opening.Refused([0x89, 0x50, 0x4E, 0x47, 13, 10, 26, 10, 0, 0]).Reason, StringComparison.Ordinal);

    [Fact]
    public void An_old_workbook_and_one_with_a_password_are_told_apart()
    {
        byte[] start = [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1];
        Assert.Contains("XLS", Opening.Refused([.. start, .. new byte[600]]).Reason, StringComparison.Ordinal);
        Assert.Equal(TableFaultKind.PasswordProtected, Opening.Refused([.. start, .. new byte[600], .. Encoding.Unicode.GetBytes("EncryptedPackage")]).Kind);
    }

    [Theory]
    [InlineData("mimetype content.xml", "ODS")]
    [InlineData("word/document.xml", "text document")]
    [InlineData("xl/workbook.bin", "XLSB")]
    [InlineData("readme.txt", "unpack it")]
    [InlineData("Index/Tables.iwa", "export it")]
    public void Other_packed_files_are_told_with_what_to_do(string entries, string reason)
    {
        using MemoryStream stream = new();
        using (ZipArchive zip = new(stream, ZipArchiveMode.Create, true))
        {
            foreach (string entry in entries.Split(' '))
                zip.CreateEntry(entry);
        }
        Assert.Contains(reason, Opening.Refused(stream.ToArray()).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void A_large_file_is_refused_before_it_is_read()
    {
        string path = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());
        try
        {
            using (FileStream file = new(path, FileMode.CreateNew))
                file.SetLength(200_000_000);
            Assert.Contains("larger than 20 MB", Assert.IsType<TableFile.Fault>(TableFile.Read(path)).Reason, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void A_workbook_that_unpacks_to_far_too_much_is_refused()
    {
        byte[] bomb = MadeWorkbook.With(Small, "xl/sharedStrings.xml", Bomb);
        Assert.True(bomb.Length < 100_000, "the bomb itself is small");
        Assert.Equal(TableFaultKind.TooLarge, Opening.Refused(bomb, new TableLimits(largestExpanded: 5_000_000)).Kind);
    }

    [Fact]
    public void A_workbook_that_lies_about_its_size_is_refused_all_the_same()
    {
        byte[] bomb = MadeWorkbook.With(Small, "xl/sharedStrings.xml", Bomb);
        byte[] name = "xl/sharedStrings.xml"u8.ToArray();
        // The length of an entry stands 22 bytes before its name in the central directory (and 8 before it, in the
        // header of the entry): APPNOTE 4.3.7 and 4.3.12.
        int central = bomb.AsSpan().LastIndexOf(name);
        BitConverter.GetBytes(1_000).CopyTo(bomb, central - 22);
        TableFile.Fault fault = Opening.Refused(bomb, new TableLimits(largestExpanded: 5_000_000));
        Assert.Contains(fault.Kind, new[] { TableFaultKind.TooLarge, TableFaultKind.Damaged });
    }

    private static void Bomb(Stream entry)
    {
        entry.Write("<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><si><t>"u8);
        byte[] block = new byte[1_000_000];
        Array.Fill(block, (byte)'a');
        for (int i = 0; i < 20; i++)
            entry.Write(block);
        entry.Write("</t></si></sst>"u8);
    }

    [Fact]
    public void Entities_are_not_expanded_and_nothing_outside_is_fetched()
    {
        byte[] forged = MadeWorkbook.With(Small, "xl/worksheets/sheet1.xml",
            "<?xml version=\"1.0\"?><!DOCTYPE w [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>"
            + "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData><row r=\"1\">"
            + "<c r=\"A1\" t=\"inlineStr\"><is><t>&e;</t></is></c></row></sheetData></worksheet>");
        Assert.Equal(TableFaultKind.Damaged, Opening.Refused(forged).Kind);
    }

    [Fact]
    public void A_workbook_cut_short_or_with_a_byte_changed_is_a_fault_or_a_table_and_never_an_exception()
    {
        Random random = new(20);
        for (int i = 0; i < 300; i++)
        {
            byte[] hurt = [.. Small];
            hurt[random.Next(hurt.Length)] = (byte)random.Next(256);
            TableFile file = TableFile.Read(new MemoryStream(hurt, 0, i % 3 == 0 ? random.Next(hurt.Length) : hurt.Length));
            Assert.True(file is TableFile.Opened or TableFile.Fault);
        }
    }
}
