using System.IO.Compression;
using System.Net;
using AngleSharp.Dom;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>The papers of a plan and of a lesson, from their pages.</summary>
public sealed class PapersTests
{
    private const string Plan = "/practicals/magnesium-oxide/papers?groups=6&students=12&minutes=100";

    [Fact]
    public async Task Every_paper_of_a_plan_can_be_printed_and_edited_and_all_are_in_one_zip()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page(Plan);
        string[] links = [.. page.QuerySelectorAll("table.papers a").Select(a => a.GetAttribute("href")!)];
        Assert.Equal(21, links.Length);
        foreach (string link in links)
        {
            HttpResponseMessage answer = await screen.Browser.GetAsync(link, TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
            byte[] content = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
            Assert.Equal(link.Contains(".docx", StringComparison.Ordinal) || link.Contains(".xlsx", StringComparison.Ordinal) ? "PK"u8.ToArray() : "<!"u8.ToArray(), content[..2]);
        }

        string all = page.QuerySelectorAll("a.button").Single(a => a.TextContent == "All in one zip").GetAttribute("href")!;
        using var zip = new ZipArchive(await screen.Browser.GetStreamAsync(all, TestContext.Current.CancellationToken));
        // Three drawings and the timeline, each as lines and as a bitmap.
        Assert.Equal(21 + 8, zip.Entries.Count);
        Assert.Equal(4, zip.Entries.Count(e => e.FullName.StartsWith("pictures/", StringComparison.Ordinal) && e.FullName.EndsWith(".svg", StringComparison.Ordinal)));
        Assert.All(zip.Entries, e => Assert.True(e.Length > 1000));
    }

    [Fact]
    public async Task Every_picture_is_there_in_lines_and_as_a_bitmap()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string[] links = [.. (await screen.Page(Plan)).QuerySelectorAll("ul.pictures a").Select(a => a.GetAttribute("href")!)];
        Assert.Equal(8, links.Length);
        foreach (string link in links)
        {
            HttpResponseMessage answer = await screen.Browser.GetAsync(link, TestContext.Current.CancellationToken);
            byte[] content = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
            bool isLines = link.Contains(".svg", StringComparison.Ordinal);
            Assert.Equal(isLines ? "image/svg+xml" : "image/png", answer.Content.Headers.ContentType!.MediaType);
            Assert.Equal("attachment", answer.Content.Headers.ContentDisposition!.DispositionType);
            Assert.Equal(isLines ? "<svg"u8.ToArray() : [0x89, 0x50, 0x4E, 0x47], content[..4]);
        }
    }

    [Fact]
    public async Task They_say_DRAFT_until_the_plan_was_signed()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string requisition = Plan.Replace("/papers", "/papers/requisition.html", StringComparison.Ordinal);
        Assert.NotNull((await screen.Page(requisition)).QuerySelector(".draft"));
        Assert.Contains("DRAFT", (await screen.Page(Plan)).Body!.TextContent, StringComparison.Ordinal);
        await screen.Send("/practicals/magnesium-oxide/sign", ("plan", "?groups=6&students=12&minutes=100"), ("checked", "yes"), ("initials", "LM"));
        Assert.Null((await screen.Page(requisition)).QuerySelector(".draft"));
        Assert.DoesNotContain("DRAFT", (await screen.Page(Plan)).Body!.TextContent, StringComparison.Ordinal);
        // Another amount asks again.
        Assert.NotNull((await screen.Page($"{requisition}&mass=0.2")).QuerySelector(".draft"));
    }

    [Fact]
    public async Task The_form_says_how_they_are_printed()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string html = await screen.Browser.GetStringAsync($"{Plan.Replace("/papers", "/papers/student-sheet-open.html", StringComparison.Ordinal)}&sheet=letter&large=yes&tint=fff4d6", TestContext.Current.CancellationToken);
        Assert.Contains("size: letter", html, StringComparison.Ordinal);
        Assert.Contains("class=\"paper p0 large\"", html, StringComparison.Ordinal);
        Assert.Contains("background:#fff4d6", html, StringComparison.Ordinal);
        // A colour that is none of those is no style.
        Assert.DoesNotContain("url(", (await screen.Browser.GetStringAsync($"{Plan.Replace("/papers", "/papers/requisition.html", StringComparison.Ordinal)}&tint=url(x)", TestContext.Current.CancellationToken)).Replace("url(data:", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_teacher_is_told_on_the_page_what_the_table_lacks()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page($"{Plan}&noempty=yes");
        Assert.Contains(page.QuerySelectorAll("[role=alert]"), p => p.TextContent.StartsWith("'Mass of magnesium' is asked for", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_paper_that_does_not_exist_is_no_page()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        foreach (string name in (string[])["nothing.html", "requisition.exe", "..%2fcalx.db", "requisition"])
        {
            HttpResponseMessage answer = await screen.Browser.GetAsync(Plan.Replace("/papers", $"/papers/{name}", StringComparison.Ordinal), TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        }
    }
}
