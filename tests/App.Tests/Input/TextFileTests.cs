using Calx.App.Input;
using Calx.App.Output;

namespace Calx.App.Tests.Input;

/// <summary>Every way in which a file that a person names is no text has its sentence.</summary>
public sealed class TextFileTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Text_is_read_without_its_byte_order_mark() =>
        Assert.Equal("Mg → MgO\n", Assert.IsType<FileText.Read>(Read([0xEF, 0xBB, 0xBF, .. "Mg → MgO\n"u8])).Text);

    [Fact]
    public void An_empty_file_is_named() => AssertFault("the file is empty", Read([]));

    [Fact]
    public void A_file_of_blanks_is_empty() => AssertFault("the file is empty", Read(" \r\n\t\n"u8.ToArray()));

    [Fact]
    public void A_binary_file_is_named() => AssertFault("the file is not text", Read([0x50, 0x4B, 3, 4, 0, 0]));

    [Fact]
    public void A_file_in_another_encoding_is_named() =>
        AssertFault("the file is not UTF-8 text", Read([0x4D, 0x67, 0xB7]));

    [Fact]
    public void A_file_of_200_MB_is_named_and_not_read_to_its_end()
    {
        using (FileStream file = File.Create(Path.Combine(folder.FullName, "f")))
        {
            file.SetLength(200_000_000);
        }

        AssertFault("the file is larger than 4 MB", ReadExisting("f"));
    }

    [Fact]
    public void A_folder_is_named()
    {
        Directory.CreateDirectory(Path.Combine(folder.FullName, "f"));

        AssertFault("this is a folder", ReadExisting("f"));
    }

    [Fact]
    public void A_missing_file_is_named() => AssertFault("there is no such file", ReadExisting("f"));

    private static void AssertFault(string reason, FileText read) =>
        Assert.Matches($"^f:1:1: {reason}; expected (a file with )?words$", Assert.IsType<FileText.Unreadable>(read).Line);

    private FileText Read(byte[] bytes)
    {
        File.WriteAllBytes(Path.Combine(folder.FullName, "f"), bytes);
        return ReadExisting("f");
    }

    private FileText ReadExisting(string name)
    {
        using var surroundings = new Surroundings(TextWriter.Null, TextWriter.Null, folder.FullName);
        return TextFile.Read(surroundings, name, "words");
    }
}
