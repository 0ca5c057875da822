using System.IO.Compression;
using System.Text;
using Calx.Records.Archive;
using Calx.Records.Storage;
using Calx.Records.Tests.Places;

namespace Calx.Records.Tests.Archive;

/// <summary>Archives that are none, or would do harm.</summary>
public sealed class BrokenArchiveTests(SqlitePlace place) : IClassFixture<SqlitePlace>
{
    private const string Empty = """{"format":"calx-records","version":1,"classes":[],"members":[],"balances":[],"checks":[],"signatures":[],"lessons":[]}""";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData("", "records.json:1:1: this is not JSON, or nested too deeply.")]
    [InlineData("{\n  \"format\": x }", "records.json:2:13: this is not JSON, or nested too deeply.")]
    [InlineData("[[[[[[[[[[[[[[[[[[[[", "records.json:1:13: this is not JSON, or nested too deeply.")]
    [InlineData("[]", "records.json does not say that its format is calx-records.")]
    [InlineData("""{"format":"calx-records","version":2}""", "records.json is of a version that this program does not know; versions up to 1 can be read.")]
    public async Task What_is_no_archive_is_told_in_a_sentence(string records, string sentence) =>
        Assert.Equal(sentence, Assert.IsType<ImportResult.Unreadable>(await Read(Zip("records.json", records))).Reason);

    [Fact]
    public async Task What_is_not_UTF_8_is_told()
    {
        byte[] records = Encoding.UTF8.GetBytes(Empty.Replace("calx-records", "calx?records", StringComparison.Ordinal));
        records[Array.IndexOf(records, (byte)'?')] = 0xFF;
        Assert.Equal("records.json: this is not UTF-8 throughout.", await Unreadable(Zip("records.json", records)));
    }

    [Fact]
    public async Task A_file_that_is_no_zip_is_told()
    {
        Assert.Equal("This file is no zip, or a damaged one.", await Unreadable("not a zip at all"u8.ToArray()));
        Assert.Equal("This zip holds no records.json: it is no export of these records.", await Unreadable(Zip("journal.csv", "lesson\r\n"u8)));
        byte[] cut = Zip("records.json", Empty);
        Assert.Equal("This file is no zip, or a damaged one.", await Unreadable(cut[..^30]));
    }

    [Theory]
    [InlineData("../records.json")]
    [InlineData("/etc/records.json")]
    [InlineData("a/../../records.json")]
    [InlineData("..\\records.json")]
    [InlineData("C:records.json")]
    public async Task A_name_that_leads_out_of_the_zip_makes_it_no_export(string name) =>
        Assert.Equal($"This zip names a file outside its own folder ('{name}'): it is no export of these records.", await Unreadable(Zip((name, Encoding.UTF8.GetBytes(Empty)), ("records.json", Encoding.UTF8.GetBytes(Empty)))));

    [Fact]
    public async Task Of_two_files_of_that_name_none_is_chosen()
    {
        byte[] records = Encoding.UTF8.GetBytes(Empty);
        Assert.Equal("This zip holds records.json twice: it is no export of these records.", await Unreadable(Zip(("records.json", records), ("records.json", records))));
    }

    /// <summary>Blanks are packed a thousand to one; 20 kB that cannot be packed, again and again, about a hundred to one.</summary>
    [Theory]
    [InlineData(1, "records.json is packed more tightly than any school's records are.")]
    [InlineData(20_000, "records.json is larger than 400 MB unpacked, which no school's records are.")]
    public async Task A_zip_that_grows_without_end_is_not_read_to_its_end(int length, string sentence)
    {
        byte[] block = new byte[length];
        new Random(5).NextBytes(block);
        byte[] blocks = [.. Enumerable.Repeat(block, 1_000_000 / length).SelectMany(b => b)];
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        using (Stream entry = zip.CreateEntry("records.json", CompressionLevel.SmallestSize).Open())
        {
            for (long written = 0; written <= LessonArchive.LargestRecords; written += blocks.Length)
            {
                entry.Write(blocks);
            }
        }

        Assert.InRange(bytes.Length, 1, 10 * 1024 * 1024);
        Assert.Equal(sentence, await Unreadable(bytes.ToArray()));
    }

    [Fact]
    public async Task A_small_export_may_be_packed_as_tightly_as_it_will()
    {
        string padded = Empty + new string(' ', 1_000_000);
        Assert.IsType<ImportResult.Taken>(await Read(Zip("records.json", padded)));
    }

    [Fact]
    public async Task A_record_that_cannot_be_one_is_passed_over_and_the_good_ones_are_taken()
    {
        const string classes = """
            "classes":[{"id":"9f0000000001","year":"2025/26","name":"9F","namesForgotten":false},{"id":"nothing","year":"2025/26","name":"9G","namesForgotten":false},7,{"id":"9f0000000005","year":" ","name":"9H","namesForgotten":false}]
            """;
        ImportResult.Taken taken = Assert.IsType<ImportResult.Taken>(await Read(Zip("records.json", Empty.Replace("\"classes\":[]", classes, StringComparison.Ordinal))));
        Assert.Equal(1, taken.Added);
        Assert.Equal(
            [
                "records.json: classes, number 2: 'nothing' is no id of a record: 12 letters and digits were expected.",
                "records.json: classes, number 3: 'id' is missing.",
                "records.json: classes, number 4: The value cannot be an empty string or composed entirely of whitespace.",
            ],
            taken.Refused);
    }

    /// <summary>A kilobyte of zip that holds half a million things which are no classes, and one that is one.</summary>
    [Fact]
    public async Task A_file_of_which_next_to_nothing_can_be_read_is_given_up_whole()
    {
        string junk = string.Concat(Enumerable.Repeat("0,", 500_000));
        string classes = $$"""
            "classes":[{{junk}}{"id":"9f0000000001","year":"2025/26","name":"9F","namesForgotten":false}]
            """;
        Assert.Equal(
            "100 records of this file cannot be read, so nothing of it was taken in. The first: records.json: classes, number 1: 'id' is missing.",
            await Unreadable(Zip("records.json", Empty.Replace("\"classes\":[]", classes, StringComparison.Ordinal))));
    }

    private async Task<ImportResult> Read(byte[] zip)
    {
        await using RecordStore store = await place.OpenFresh();
        return await LessonArchive.Read(store, new MemoryStream(zip), Sample.By, Cancel);
    }

    private async Task<string> Unreadable(byte[] zip) => Assert.IsType<ImportResult.Unreadable>(await Read(zip)).Reason;

    private static byte[] Zip(string name, string text) => Zip((name, Encoding.UTF8.GetBytes(text)));

    private static byte[] Zip(string name, ReadOnlySpan<byte> content) => Zip((name, content.ToArray()));

    private static byte[] Zip(params (string Name, byte[] Content)[] files)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach ((string name, byte[] content) in files)
            {
                using Stream entry = zip.CreateEntry(name).Open();
                entry.Write(content);
            }
        }

        return bytes.ToArray();
    }
}
