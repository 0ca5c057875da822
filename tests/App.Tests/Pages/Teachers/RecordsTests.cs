using System.IO.Compression;
using System.Net;
using AngleSharp.Dom;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>The records as a whole.</summary>
public sealed class RecordsTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_is_exported_comes_into_an_empty_program_and_a_second_time_is_known()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewClass("9F", "Ada", "Ben");
        await screen.NewLesson();
        byte[] zip = await screen.Browser.GetByteArrayAsync("/records/export", Cancel);
        await using TeachersScreen other = await TeachersScreen.Start();
        Assert.Contains("4 new, 0 here already", await Said(await Import(other, zip)), StringComparison.Ordinal);
        Assert.Contains("0 new, 4 here already", await Said(await Import(other, zip)), StringComparison.Ordinal);
        Assert.Equal("9F", Assert.Single(await other.Host.Store.Classes(Cancel)).Name);
    }

    [Fact]
    public async Task A_file_that_is_no_export_is_told_and_changes_nothing()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        HttpResponseMessage answer = await Import(screen, "not a zip"u8.ToArray());
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Contains("no zip", await Said(answer), StringComparison.Ordinal);
        HttpResponseMessage foreign = await Import(screen, Zip("hello.txt", "hello"));
        Assert.Contains("no export", await Said(foreign), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_without_a_file_is_asked_for_one()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        using var form = new MultipartFormDataContent { { new ByteArrayContent([]), "file" } };
        Assert.Contains("Choose a file first", await Said(await screen.Browser.PostAsync("/records/import", form, Cancel)), StringComparison.Ordinal);
        HttpResponseMessage other = await screen.Post("/records/import", ("file", "x"));
        Assert.Equal(HttpStatusCode.BadRequest, other.StatusCode);
    }

    [Fact]
    public async Task A_file_larger_than_the_limit_is_refused_without_being_read_whole()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        using var form = new MultipartFormDataContent { { new ByteArrayContent(new byte[51 * 1024 * 1024]), "file", "large.zip" } };
        try
        {
            HttpResponseMessage answer = await screen.Browser.PostAsync("/records/import", form, Cancel);
            Assert.True((int)answer.StatusCode is 400 or 413, $"{(int)answer.StatusCode}");
        }
        catch (HttpRequestException)
        {
            // The program closed the connection while it was being sent: refused as well.
        }

        Assert.Equal(HttpStatusCode.OK, (await screen.Browser.GetAsync("/records", Cancel)).StatusCode);
    }

    [Fact]
    public async Task A_backup_made_while_the_program_runs_is_a_database_of_its_own()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewClass("9F", "Ada");
        IDocument page = await screen.After("/records/backup");
        string file = Assert.Single(Directory.GetFiles(Path.Combine(screen.Host.DataFolder, "backups")));
        Assert.Contains(file, page.QuerySelector(".done")!.TextContent, StringComparison.Ordinal);
        await using Records.Storage.RecordStore copy = await Records.Storage.RecordStore.Open(new Records.Storage.StoreSettings(file), TimeProvider.System, Cancel);
        Assert.Equal("9F", Assert.Single(await copy.Classes(Cancel)).Name);
    }

    [Fact]
    public async Task A_folder_that_cannot_be_written_is_told_and_nothing_is_erased()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string one = await screen.NewClass("9F", "Ada");
        await File.WriteAllTextAsync(Path.Combine(screen.Host.DataFolder, "exports"), "in the way", Cancel);
        IDocument page = await screen.After($"{one}/forget", ("typed", "9F"));
        Assert.Contains("Nothing was changed", TeachersScreen.Faults(page), StringComparison.Ordinal);
        Assert.Equal("Ada", page.QuerySelector("#m1")!.GetAttribute("value"));
    }

    [Fact]
    public async Task A_name_that_a_spreadsheet_would_take_for_a_formula_is_neutralised_in_the_tables()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewClass("=1+1", "=HYPERLINK(1)", "@x", "-2+3");
        byte[] zip = await screen.Browser.GetByteArrayAsync("/records/export", Cancel);
        using var archive = new ZipArchive(new MemoryStream(zip), ZipArchiveMode.Read);
        foreach (ZipArchiveEntry entry in archive.Entries.Where(e => e.Name.EndsWith(".csv", StringComparison.Ordinal)))
        {
            using var reader = new StreamReader(entry.Open());
            string[] cells = [.. (await reader.ReadToEndAsync(Cancel)).Split(['\n', ','], StringSplitOptions.RemoveEmptyEntries).Select(c => c.Trim('"', '\r'))];
            Assert.DoesNotContain(cells, c => c.Length > 0 && "=@".Contains(c[0], StringComparison.Ordinal));
            Assert.DoesNotContain("-2+3", cells);
        }
    }

    [Fact]
    public async Task The_audit_says_who_changed_what_the_latest_first()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string one = await screen.NewClass("9F", "Ada");
        await screen.Send($"{one}/name", ("name", "9G"));
        IElement[] rows = [.. (await screen.Page("/records/audit")).QuerySelectorAll(".audit tbody tr")];
        Assert.Contains("class renamed", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("teacher", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("9F", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("9G", rows[0].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_audit_calls_classes_members_lessons_and_balances_by_their_names()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewClass("9F", "Ada");
        await screen.NewLesson();
        await screen.Send("/balances", ("letter", "B"), ("resolution", "0.01"), ("label", ""));
        string[] of = [.. (await screen.Page("/records/audit")).QuerySelectorAll(".audit tbody td:nth-of-type(3)").Select(c => c.TextContent)];
        Assert.Contains("class 9F, 2026/27", of);
        Assert.Contains("number 1 of class 9F, 2026/27", of);
        Assert.Contains("lesson of 9F, 26 November 2026: Burning magnesium in a crucible", of);
        Assert.Contains("balance B", of);
    }

    [Fact]
    public async Task The_audit_keeps_the_line_of_a_lesson_that_is_gone()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await screen.NewLesson();
        await screen.Send($"{lesson}/delete", ("typed", "9F"));
        IElement row = (await screen.Page("/records/audit")).QuerySelectorAll(".audit tbody tr")[0];
        Assert.Contains("lesson deleted", row.TextContent, StringComparison.Ordinal);
        Assert.Contains($"lesson {lesson.Split('/')[^1]}", row.TextContent, StringComparison.Ordinal);
    }

    /// <summary>Sends a file as the page does.</summary>
    internal static async Task<HttpResponseMessage> Import(TeachersScreen screen, byte[] zip)
    {
        using var form = new MultipartFormDataContent { { new ByteArrayContent(zip), "file", "export.zip" } };
        return await screen.Browser.PostAsync("/records/import", form, Cancel);
    }

    private static async Task<string> Said(HttpResponseMessage answer) =>
        (await TeachersScreen.Parsed(answer)).QuerySelector("#import [role=status]")!.TextContent;

    private static byte[] Zip(string name, string text)
    {
        using var memory = new MemoryStream();
        using (var zip = new ZipArchive(memory, ZipArchiveMode.Create))
        using (var writer = new StreamWriter(zip.CreateEntry(name).Open()))
        {
            writer.Write(text);
        }

        return memory.ToArray();
    }
}
