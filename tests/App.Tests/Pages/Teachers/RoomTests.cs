using System.Net;
using AngleSharp.Dom;
using Calx.App.Serving;
using Calx.App.Tests.Serving;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>How the room reaches the program, and the passphrase.</summary>
public sealed class RoomTests
{
    private const string First = "four plain words here";
    private const string Second = "five other plain words here";

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    [Fact]
    public async Task A_device_that_gets_through_is_told_and_so_is_the_teacher()
    {
        await using OpenHost host = await OpenHost.Start(openToRoom: true);
        await host.Services.GetRequiredService<TeachersKey>().Set(First, Cancel);
        HttpClient phone = host.Browser();
        Assert.Contains("It works", await phone.GetStringAsync("/room/hello", Cancel), StringComparison.Ordinal);
        HttpClient teacher = await SignedIn(host, First);
        IDocument page = await TeachersScreen.Parsed(await teacher.GetAsync("/room", Cancel));
        Assert.Contains("127.0.0.1", page.QuerySelector("#reached")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_program_on_this_machine_alone_says_so()
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.Page("/room");
        Assert.Contains("Only this machine reaches the program", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains(screen.Host.DataFolder, (await screen.Page("/room/note")).Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_new_passphrase_needs_the_present_one_and_ends_what_was_begun_under_it()
    {
        await using OpenHost host = await OpenHost.Start(openToRoom: true);
        await host.Services.GetRequiredService<TeachersKey>().Set(First, Cancel);
        HttpClient teacher = await SignedIn(host, First);
        HttpClient elsewhere = await SignedIn(host, First);
        Assert.Contains("fault=", await Set(teacher, "wrong words altogether", Second), StringComparison.Ordinal);
        Assert.Contains("done=", await Set(teacher, First, Second), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await teacher.GetAsync("/room", Cancel)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await elsewhere.GetAsync("/room", Cancel)).StatusCode);
        Assert.DoesNotContain(Second, string.Join(' ', (await host.Store.Audit(10, Cancel)).Select(l => l.Before + l.After)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("short", "short", "At least 10 characters")]
    [InlineData("long enough words", "long enough wards", "do not agree")]
    public async Task A_passphrase_that_is_not_taken_says_why(string passphrase, string again, string expected)
    {
        await using TeachersScreen screen = await TeachersScreen.Start();
        IDocument page = await screen.After("/room/passphrase", ("passphrase", passphrase), ("again", again));
        Assert.Contains(expected, TeachersScreen.Faults(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Without_the_passphrase_no_page_of_the_teachers_opens()
    {
        await using OpenHost host = await OpenHost.Start(openToRoom: true);
        await host.Services.GetRequiredService<TeachersKey>().Set(First, Cancel);
        HttpClient stranger = host.Browser();
        foreach (string address in (string[])["/", "/lessons", "/practicals", "/practicals/magnesium-oxide/figures", "/classes", "/balances", "/records", "/records/export", "/records/audit", "/room", "/room/note"])
        {
            HttpResponseMessage answer = await stranger.GetAsync(address, Cancel);
            Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
            Assert.StartsWith("/sign-in", answer.Headers.Location!.ToString(), StringComparison.Ordinal);
        }
    }

    private static async Task<HttpClient> SignedIn(OpenHost host, string passphrase)
    {
        HttpClient browser = host.Browser();
        HttpResponseMessage answer = await browser.PostAsync("/sign-in", new FormUrlEncodedContent([new("passphrase", passphrase), new("to", "/room")]), Cancel);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return browser;
    }

    private static async Task<string> Set(HttpClient browser, string present, string passphrase) => (await browser.PostAsync(
        "/room/passphrase", new FormUrlEncodedContent([new("present", present), new("passphrase", passphrase), new("again", passphrase)]), Cancel)).Headers.Location!.ToString();
}
