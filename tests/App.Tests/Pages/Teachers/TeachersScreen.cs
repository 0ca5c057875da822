using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Calx.App.Tests.Serving;

namespace Calx.App.Tests.Pages.Teachers;

/// <summary>The teacher's laptop on the real program, with empty records of its own and without script.</summary>
internal sealed class TeachersScreen : IAsyncDisposable
{
    private TeachersScreen(OpenHost host, HttpClient browser) => (Host, Browser) = (host, browser);

    /// <summary>The program.</summary>
    public OpenHost Host { get; }

    /// <summary>The teacher's browser.</summary>
    public HttpClient Browser { get; }

    private static CancellationToken Cancel => TestContext.Current.CancellationToken;

    /// <summary>Starts the program.</summary>
    public static async Task<TeachersScreen> Start(TimeProvider? clock = null)
    {
        OpenHost host = await OpenHost.Start(clock: clock);
        return new TeachersScreen(host, host.Browser());
    }

    /// <summary>A page, parsed; it must be there.</summary>
    public async Task<IDocument> Page(string address)
    {
        HttpResponseMessage answer = await Browser.GetAsync(address, Cancel);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await Parsed(answer);
    }

    /// <summary>Sends a form and returns the answer.</summary>
    public Task<HttpResponseMessage> Post(string address, params (string Name, string Value)[] fields) =>
        Browser.PostAsync(address, new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create(f.Name, f.Value))), Cancel);

    /// <summary>Sends a form and returns where it leads.</summary>
    public async Task<string> Send(string address, params (string Name, string Value)[] fields)
    {
        HttpResponseMessage answer = await Post(address, fields);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        return answer.Headers.Location!.ToString();
    }

    /// <summary>Sends a form and returns the page that it leads to.</summary>
    public async Task<IDocument> After(string address, params (string Name, string Value)[] fields) => await Page(await Send(address, fields));

    /// <summary>The page that an answer is.</summary>
    public static async Task<IDocument> Parsed(HttpResponseMessage answer) => new HtmlParser().ParseDocument(await answer.Content.ReadAsStringAsync(Cancel));

    /// <summary>Adds a class and its members, and returns its address.</summary>
    public async Task<string> NewClass(string name = "9F", params string[] members)
    {
        string address = await Send("/classes", ("year", "2026/27"), ("name", name));
        if (members.Length > 0)
        {
            await Send($"{address}/members", ("names", string.Join('\n', members)));
        }

        return address;
    }

    /// <summary>Makes a lesson of magnesium with a new or a known class, and returns its address.</summary>
    public Task<string> NewLesson(string plan = "?groups=4", string name = "9F", bool trial = false) => Send(
        "/lessons",
        [
            ("practical", "magnesium-oxide"), ("plan", plan), ("name", name), ("year", "2026/27"), ("date", "2026-11-26"), ("room", "Lab 2"), ("decide", "yes"),
            .. trial ? [("trial", "yes")] : Array.Empty<(string, string)>(),
        ]);

    /// <summary>Sentences of a fault on a page.</summary>
    public static string Faults(IDocument page) => string.Join(' ', page.QuerySelectorAll(".fault").Select(f => f.TextContent.Trim()).Where(t => t.Length > 0));

    public async ValueTask DisposeAsync()
    {
        Browser.Dispose();
        await Host.DisposeAsync();
    }
}
