using System.IO.Compression;
using System.Net;
using System.Text.Json;
using AngleSharp.Dom;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>Catch-up packs on a lesson's page of papers.</summary>
public sealed class CatchUpTests
{
    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Nobody_away_needs_no_pack_and_a_plan_has_none()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        await screen.NewClass("9F", "Amir", "Beth");
        string lesson = await screen.NewLesson();
        Assert.Contains("Nobody is marked away", (await screen.Page($"{lesson}/papers")).Body!.TextContent, StringComparison.Ordinal);
        Assert.Null((await screen.Page("/practicals/magnesium-oxide/papers?groups=6")).QuerySelector("#catch-up"));
    }

    [Fact]
    public async Task Who_was_away_gets_a_pack_to_print_and_to_edit_with_key_and_truth_also_in_the_zip()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await Away(screen, 2);
        IDocument page = await screen.Page($"{lesson}/papers");
        Assert.Contains("Make a pack for Beth", page.Body!.TextContent, StringComparison.Ordinal);

        page = await screen.After($"{lesson}/catch-up", ("odd", "40"));
        string[] links = [.. page.QuerySelectorAll("a[href*='/papers/catch-up-']").Select(a => a.GetAttribute("href")!)];
        Assert.Equal(5, links.Length);
        foreach (string link in links)
        {
            Assert.Equal(HttpStatusCode.OK, (await screen.Browser.GetAsync(link, Cancel)).StatusCode);
        }

        string sheet = await screen.Browser.GetStringAsync(links.First(l => l.Contains("beth", StringComparison.Ordinal) && l.Contains(".html", StringComparison.Ordinal)), Cancel);
        Assert.Contains("SIMULATED DATA", sheet, StringComparison.Ordinal);
        JsonElement truth = Schemas.Check("catch-up", await screen.Browser.GetStringAsync($"{lesson}/papers/catch-up-truth.json", Cancel));
        Assert.Equal("Beth", Assert.Single(truth.GetProperty("packs").EnumerateArray()).GetProperty("student").GetString());
        using var zip = new ZipArchive(await screen.Browser.GetStreamAsync($"{lesson}/papers/papers.zip", Cancel));
        Assert.Equal(5, zip.Entries.Count(e => e.Name.StartsWith("catch-up-", StringComparison.Ordinal)));
    }

    /// <summary>The next step opens without a script, and the page's policy allows no style on elements.</summary>
    [Fact]
    public async Task A_sheet_opens_step_by_step_without_a_script()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await Away(screen, 2);
        IDocument page = await screen.After($"{lesson}/catch-up", ("odd", "0"));
        string link = page.QuerySelectorAll("a[href*='beth']").First(a => a.GetAttribute("href")!.Contains(".html", StringComparison.Ordinal)).GetAttribute("href")!;
        HttpResponseMessage answer = await screen.Browser.GetAsync(link, Cancel);
        Assert.StartsWith("default-src 'none'; style-src 'sha256-", answer.Headers.GetValues("Content-Security-Policy").Single(), StringComparison.Ordinal);
        IDocument sheet = await TeachersScreen.Parsed(answer);
        Assert.Empty(sheet.QuerySelectorAll("script, [style]"));
        Assert.Single(sheet.QuerySelectorAll(".opened > details"));
        Assert.Single(sheet.QuerySelectorAll(".opened > details > details"));
        Assert.Empty(sheet.QuerySelectorAll("details[open]"));
    }

    [Fact]
    public async Task The_same_packs_come_out_again_whoever_is_away_later()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await Away(screen, 2);
        await screen.Send($"{lesson}/catch-up", ("odd", "40"));
        string first = await Readings(screen, lesson, "Beth");
        // Sent once more, it makes none; and another's pack changes nothing of this one.
        await screen.Send($"{lesson}/catch-up", ("odd", "100"));
        await screen.Send($"{lesson}/members/1", ("presence", "away"));
        await screen.Send($"{lesson}/catch-up", ("odd", "100"));
        Assert.Equal(first, await Readings(screen, lesson, "Beth"));
        Assert.NotEqual(first, await Readings(screen, lesson, "Amir"));
        // Present after all: what was handed out stays.
        await screen.Send($"{lesson}/members/2", ("presence", "present"));
        Assert.Equal(first, await Readings(screen, lesson, "Beth"));
    }

    [Fact]
    public async Task A_share_that_is_none_of_those_offered_is_refused()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        string lesson = await Away(screen, 2);
        IDocument page = await screen.After($"{lesson}/catch-up", ("odd", "<b>"));
        Assert.Contains("'<b>' is no share of odd cases", TeachersScreen.Faults(page), StringComparison.Ordinal);
        Assert.Empty(page.QuerySelectorAll("a[href*='/papers/catch-up-']"));
    }

    private static async Task<string> Away(TeachersScreen screen, int member)
    {
        await screen.NewClass("9F", "Amir", "Beth", "Chen");
        string lesson = await screen.NewLesson();
        await screen.Send($"{lesson}/members/{member}", ("presence", "away"));
        return lesson;
    }

    private static async Task<string> Readings(TeachersScreen screen, string lesson, string student) =>
        Schemas.Check("catch-up", await screen.Browser.GetStringAsync($"{lesson}/papers/catch-up-truth.json", Cancel)).GetProperty("packs").EnumerateArray()
            .Single(p => p.GetProperty("student").GetString() == student).GetProperty("readings").GetRawText();
}
