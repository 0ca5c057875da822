using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace Calx.App.Tests.Pages.Students;

/// <summary>A student's device, or a balance station, without its script.</summary>
internal sealed class Device(HttpClient browser)
{
    /// <summary>Its browser.</summary>
    public HttpClient Browser { get; } = browser;

    /// <summary>A page, parsed; it must be there.</summary>
    public async Task<IDocument> Page(string address = "/table")
    {
        HttpResponseMessage answer = await Get(address);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await Parsed(answer);
    }

    /// <summary>Asks for an address.</summary>
    public Task<HttpResponseMessage> Get(string address) => Browser.GetAsync(address, TestContext.Current.CancellationToken);

    /// <summary>What an answer says.</summary>
    public static Task<string> Text(HttpResponseMessage answer) => answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

    /// <summary>The page that an answer is.</summary>
    public static async Task<IDocument> Parsed(HttpResponseMessage answer) => new HtmlParser().ParseDocument(await Text(answer));

    /// <summary>Sends a text as a list of entries.</summary>
    public Task<HttpResponseMessage> PostText(string body) =>
        Browser.PostAsync("/table/entries", new StringContent(body, Encoding.UTF8, "application/json"), TestContext.Current.CancellationToken);

    /// <summary>Sends a form.</summary>
    public async Task<HttpResponseMessage> Send(string address, params (string Name, string Value)[] fields) =>
        await Browser.PostAsync(address, new FormUrlEncodedContent(fields.Select(f => KeyValuePair.Create(f.Name, f.Value))));

    /// <summary>Sends a form of a page as it stands there, with some fields filled in.</summary>
    public Task<HttpResponseMessage> Send(IElement form, params (string Name, string Value)[] filled)
    {
        IEnumerable<(string, string)> hidden = form.QuerySelectorAll("input[type=hidden]")
            .Select(i => (i.GetAttribute("name")!, i.GetAttribute("value") ?? "")).Where(h => filled.All(f => f.Name != h.Item1));
        return Send(form.GetAttribute("action")!, [.. hidden, .. filled]);
    }

    /// <summary>Sends entries as the script does.</summary>
    public async Task<HttpResponseMessage> Post(params JsonNode[] entries) =>
        await Browser.PostAsJsonAsync("/table/entries", new JsonObject { ["entries"] = new JsonArray([.. entries.Select(e => e.DeepClone())]) });

    /// <summary>Sends entries and returns what became of them.</summary>
    public async Task<IReadOnlyList<(string Result, string? Reason, string? Ask)>> Tell(params JsonNode[] entries)
    {
        HttpResponseMessage answer = await Post(entries);
        using JsonDocument json = await JsonDocument.ParseAsync(await answer.Content.ReadAsStreamAsync());
        return
        [
            .. json.RootElement.GetProperty("results").EnumerateArray().Select(r => (
                r.GetProperty("result").GetString()!, r.GetProperty("reason").GetString(), r.GetProperty("ask").GetString())),
        ];
    }
}
