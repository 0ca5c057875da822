using System.Net;
using Calx.App.Serving;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Serving;

/// <summary>What stands before every address.</summary>
public sealed class GateTests
{
    [Fact]
    public async Task Every_address_says_whom_it_admits()
    {
        await using OpenHost host = await OpenHost.Start();
        Endpoint[] all = [.. host.Services.GetServices<EndpointDataSource>().SelectMany(s => s.Endpoints)];
        Assert.True(all.Length > 20, "The addresses were not found.");
        Assert.All(all, e => Assert.True(e.Metadata.GetMetadata<Admits>() is not null, $"{e.DisplayName} does not say whom it admits."));
    }

    [Fact]
    public async Task Every_answer_forbids_scripts_frames_and_requests_to_others()
    {
        await using OpenHost host = await OpenHost.Start();
        foreach (string address in (string[])["/", "/join", "/nowhere", "/files/x/calx.css"])
        {
            HttpResponseMessage answer = await host.Browser().GetAsync(address, TestContext.Current.CancellationToken);
            string policy = answer.Headers.GetValues("Content-Security-Policy").Single();
            Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
            Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
            Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
            Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
            Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
            Assert.Equal("same-origin", answer.Headers.GetValues("Referrer-Policy").Single());
        }
    }

    [Fact]
    public async Task A_known_address_asked_in_a_wrong_way_says_which_ways_there_are()
    {
        await using OpenHost host = await OpenHost.Start();
        HttpResponseMessage answer = await host.Browser().PostAsync("/practicals", new FormUrlEncodedContent([]), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
        Assert.Contains("GET", answer.Content.Headers.Allow);
        Assert.Contains("can be asked by GET", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("null")]
    [InlineData("http://other.example")]
    public async Task A_change_that_comes_from_another_page_is_refused(string? origin)
    {
        await using OpenHost host = await OpenHost.Start();
        HttpClient browser = host.Browser(saysOrigin: false);
        if (origin is not null)
        {
            browser.DefaultRequestHeaders.Add("Origin", origin);
        }

        HttpResponseMessage answer = await browser.PostAsync("/classes", new FormUrlEncodedContent([new("year", "2026/27"), new("name", "9X")]), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Empty(await host.Store.Classes(TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_request_under_a_foreign_name_reaches_nothing()
    {
        await using OpenHost host = await OpenHost.Start();
        var request = new HttpRequestMessage(HttpMethod.Get, "/");
        request.Headers.Host = "rebound.example";
        Assert.Equal(HttpStatusCode.Forbidden, (await host.Browser().SendAsync(request, TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task Open_to_the_room_the_teachers_pages_ask_for_the_passphrase()
    {
        await using OpenHost host = await OpenHost.Start(openToRoom: true);
        await host.Services.GetRequiredService<TeachersKey>().Set("four plain words here", TestContext.Current.CancellationToken);
        HttpClient browser = host.Browser();
        HttpResponseMessage sentOn = await browser.GetAsync("/classes", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, sentOn.StatusCode);
        Assert.Equal("/sign-in?to=%2Fclasses", sentOn.Headers.Location!.ToString());
        Assert.Equal(HttpStatusCode.Forbidden, (await SignIn(browser, "four plain words there")).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await browser.GetAsync("/classes", TestContext.Current.CancellationToken)).StatusCode);
        Assert.Equal(HttpStatusCode.Redirect, (await SignIn(browser, "four plain words here")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await browser.GetAsync("/classes", TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task A_new_passphrase_ends_what_was_begun_under_the_old_one()
    {
        await using OpenHost host = await OpenHost.Start(openToRoom: true);
        TeachersKey key = host.Services.GetRequiredService<TeachersKey>();
        await key.Set("four plain words here", TestContext.Current.CancellationToken);
        HttpClient browser = host.Browser();
        await SignIn(browser, "four plain words here");
        await key.Set("quite another phrase", TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, (await browser.GetAsync("/classes", TestContext.Current.CancellationToken)).StatusCode);
    }

    [Fact]
    public async Task Guessing_is_slowed_down_and_the_right_one_is_held_up_too()
    {
        await using OpenHost host = await OpenHost.Start(openToRoom: true);
        await host.Services.GetRequiredService<TeachersKey>().Set("four plain words here", TestContext.Current.CancellationToken);
        HttpClient browser = host.Browser();
        for (int i = 0; i < 10; i++)
        {
            Assert.Equal(HttpStatusCode.Forbidden, (await SignIn(browser, $"a wrong guess {i}")).StatusCode);
        }

        Assert.Equal(HttpStatusCode.TooManyRequests, (await SignIn(browser, "four plain words here")).StatusCode);
    }

    [Theory]
    [InlineData("//evil.example/x")]
    [InlineData("https://evil.example/")]
    [InlineData("/\\evil.example")]
    public async Task Signing_in_leads_nowhere_but_into_this_program(string to)
    {
        await using OpenHost host = await OpenHost.Start(openToRoom: true);
        await host.Services.GetRequiredService<TeachersKey>().Set("four plain words here", TestContext.Current.CancellationToken);
        HttpResponseMessage answer = await host.Browser().PostAsync(
            "/sign-in", new FormUrlEncodedContent([new("passphrase", "four plain words here"), new("to", to)]), TestContext.Current.CancellationToken);
        Assert.Equal("/", answer.Headers.Location!.ToString());
    }

    private static Task<HttpResponseMessage> SignIn(HttpClient browser, string passphrase) =>
        browser.PostAsync("/sign-in", new FormUrlEncodedContent([new("passphrase", passphrase), new("to", "/classes")]), TestContext.Current.CancellationToken);
}
