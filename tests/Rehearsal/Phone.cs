using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;

namespace Calx.Rehearsal;

/// <summary>A student's device without a browser: it joins, takes a group and sends entries.</summary>
public sealed class Phone : IDisposable
{
    private readonly HttpClient client;

    private Phone(HttpClient client, int group) => (this.client, Group) = (client, group);

    /// <summary>Its group.</summary>
    public int Group { get; }

    /// <summary>Its client, with its cookies.</summary>
    public HttpClient Client => client;

    /// <summary>Joins a lesson and takes a group.</summary>
    public static async Task<Phone> Join(HttpClient client, string code, int group)
    {
        ArgumentNullException.ThrowIfNull(client);
        await See(client, "/join", new("code", code));
        await See(client, "/groups", new("group", FormattableString.Invariant($"{group}")));
        return new Phone(client, group);
    }

    /// <summary>Sends entries and returns what became of each by its id; throws where no answer came.</summary>
    public async Task<IReadOnlyDictionary<string, string>> Send(params TypedEntry[] entries)
    {
        using HttpResponseMessage answer = await Post(entries);
        answer.EnsureSuccessStatusCode();
        using JsonDocument json = await JsonDocument.ParseAsync(await answer.Content.ReadAsStreamAsync());
        return json.RootElement.GetProperty("results").EnumerateArray().ToDictionary(r => r.GetProperty("id").GetString()!, r => r.GetProperty("result").GetString()!);
    }

    /// <summary>Sends entries and returns the answer as it comes.</summary>
    public async Task<HttpResponseMessage> Post(params TypedEntry[] entries)
    {
        using var body = new ByteArrayContent(TypedEntry.Body(entries));
        body.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        return await client.PostAsync("/table/entries", body);
    }

    public void Dispose() => client.Dispose();

    private static async Task See(HttpClient client, string address, KeyValuePair<string, string> field)
    {
        using var form = new FormUrlEncodedContent([field]);
        using HttpResponseMessage answer = await client.PostAsync(address, form);
        if (answer.StatusCode != HttpStatusCode.Redirect)
        {
            throw new InvalidOperationException($"{address} answered {answer.StatusCode}: {await answer.Content.ReadAsStringAsync()}");
        }
    }
}
