using System.IO.Compression;
using Calx.Records;
using Calx.Records.Archive;
using Calx.Records.Lessons;
using Calx.Records.Storage;

namespace Calx.App.Tests.Commands;

/// <summary><c>calx export</c> and <c>calx import</c>, from one data folder to another.</summary>
public sealed class ExportImportTests : IDisposable
{
    private static readonly RecordId ClassId = RecordId.Parse("9f0000000001");
    private static readonly RecordId LessonId = RecordId.Parse("9f0000000002");

    private readonly TemporaryFolder folder = TemporaryFolder.Empty();

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Everything_goes_from_one_folder_to_another_and_a_second_time_is_known()
    {
        await Fill("old");
        Terminal export = Run("export", "--data", "old", "--out", "all.zip");
        Terminal import = Run("import", "all.zip", "--data", "new");
        Terminal again = Run("import", "all.zip", "--data", "new");
        Assert.Equal((0, "", "The records are in all.zip\n"), (export.ExitCode, export.Output, export.Error));
        Assert.Equal((0, "all.zip: 3 new, 0 here already just so, 0 not taken.\n", ""), (import.ExitCode, import.Output, import.Error));
        Assert.Equal((0, "all.zip: 0 new, 3 here already just so, 0 not taken.\n"), (again.ExitCode, again.Output));
        await using RecordStore store = await Open("new");
        Assert.Equal("Lab 2", (await store.FindLesson(LessonId, Cancel))!.Room);
        Assert.Equal("command line", (await store.Audit(1, Cancel))[0].By);
    }

    [Fact]
    public async Task Practicals_of_ones_own_go_along_with_their_versions_and_one_that_is_there_stays()
    {
        await Fill("old");
        Run("practicals", "new", "--set", "id=mine", "--data", "old");
        Directory.CreateDirectory(Path.Combine(folder.FullName, "old", "practicals", "earlier"));
        File.Copy(Path.Combine(folder.FullName, "old", "practicals", "mine.yaml"), Path.Combine(folder.FullName, "old", "practicals", "earlier", "mine-v1.yaml"));
        Run("export", "--data", "old", "--out", "all.zip");

        Terminal import = Run("import", "all.zip", "--data", "new");
        File.AppendAllText(Path.Combine(folder.FullName, "new", "practicals", "mine.yaml"), "# changed\n");
        Terminal again = Run("import", "all.zip", "--data", "new");

        Assert.Equal((0, "all.zip: 5 new, 0 here already just so, 0 not taken.\n"), (import.ExitCode, import.Output));
        Assert.True(File.Exists(Path.Combine(folder.FullName, "new", "practicals", "earlier", "mine-v1.yaml")));
        Assert.Equal(1, again.ExitCode);
        Assert.Contains("Your practical mine.yaml is another than that of the export, and stays as it is.", again.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_lesson_is_exported_by_its_id()
    {
        await Fill("old");
        Assert.Equal(0, Run("export", "--data", "old", "--lesson", LessonId.ToString(), "--out", "one.zip").ExitCode);
        using ZipArchive zip = ZipFile.OpenRead(Path.Combine(folder.FullName, "one.zip"));
        Assert.Contains(zip.Entries, e => e.FullName == $"readings-{LessonId}.csv");
    }

    [Fact]
    public async Task What_another_record_stands_in_the_way_of_is_told_and_the_exit_code_is_1()
    {
        await Fill("old");
        Run("export", "--data", "old", "--out", "all.zip");
        await using (RecordStore store = await Open("old"))
        {
            await store.RenameClass(ClassId, "9G", "the teacher", Cancel);
        }

        Terminal import = Run("import", "all.zip", "--data", "old");
        Assert.Equal(1, import.ExitCode);
        Assert.Contains("all.zip: 0 new, 2 here already just so, 1 not taken.\nclass 9F of 2025/26 was not taken", import.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_file_that_is_there_is_never_written_over()
    {
        await Fill("old");
        File.WriteAllText(Path.Combine(folder.FullName, "marks.zip"), "a year's marks");
        Terminal export = Run("export", "--data", "old", "--out", "marks.zip");
        Assert.Equal((2, "marks.zip:1:1: there is such a file already, and it is left as it is; give another name\n"), (export.ExitCode, export.Error));
        Assert.Equal("a year's marks", File.ReadAllText(Path.Combine(folder.FullName, "marks.zip")));
    }

    [Theory]
    [InlineData("calx export: to which file? For example: calx export --out records.zip", "export")]
    [InlineData("calx export: --lesson: 'monday' is no id of a lesson; 12 letters and digits were expected", "export", "--lesson", "monday", "--out", "a.zip")]
    [InlineData("calx export: --lesson: there is no lesson 9f0000000099 in these records", "export", "--data", "old", "--lesson", "9f0000000099", "--out", "a.zip")]
    [InlineData("calx export: --database: there is no file connection.txt", "export", "--database", "connection.txt", "--out", "a.zip")]
    [InlineData("calx import: which file? For example: calx import records.zip", "import")]
    [InlineData("gone.zip:1:1: there is no such file", "import", "gone.zip", "--data", "new")]
    [InlineData("table.csv:1:1: This file is no zip, or a damaged one.", "import", "table.csv", "--data", "new")]
    public async Task A_fault_is_one_line_and_the_exit_code_is_2(string line, params string[] words)
    {
        await Fill("old");
        File.WriteAllText(Path.Combine(folder.FullName, "table.csv"), "group,empty\n1,30.10\n");
        Terminal run = Run(words);
        Assert.Equal((2, "", line + "\n"), (run.ExitCode, run.Output, run.Error));
    }

    [Fact]
    public void A_folder_without_records_is_told_and_gets_none()
    {
        Terminal run = Run("export", "--data", "nothing", "--out", "a.zip");
        Assert.Equal(2, run.ExitCode);
        Assert.StartsWith("calx export: there are no records in ", run.Error, StringComparison.Ordinal);
        Assert.False(Path.Exists(Path.Combine(folder.FullName, "nothing")));
    }

    private Terminal Run(params string[] words) => Terminal.RunIn(folder.FullName, words);

    private Task<RecordStore> Open(string data) => RecordStore.Open(new StoreSettings(Path.Combine(folder.FullName, data, "calx.db")), TimeProvider.System, Cancel);

    /// <summary>A class, a balance and a lesson.</summary>
    private async Task Fill(string data)
    {
        Directory.CreateDirectory(Path.Combine(folder.FullName, data));
        await using RecordStore store = await Open(data);
        await store.AddClass(new SchoolClass(ClassId, "2025/26", "9F", false), "the teacher", Cancel);
        await store.AddBalance(new KeptBalance(RecordId.Parse("9f0000000003"), "A", "by the window", "0.01"), "the teacher", Cancel);
        var lesson = new Lesson(
            LessonId, ClassId, "magnesium-oxide", 1, "id: magnesium-oxide\n", "{}", new DateOnly(2026, 3, 4), "Lab 2", 12, 60, new LessonSettings(false, true, false));
        Assert.IsType<ChangeResult.Done>(await store.AddLesson(lesson, "the teacher", Cancel));
    }
}
