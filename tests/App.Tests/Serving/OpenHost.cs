using System.Net;
using Calx.App.Serving;
using Calx.Records.Storage;
using Microsoft.AspNetCore.Builder;

namespace Calx.App.Tests.Serving;

/// <summary>The real web program on a free port of this machine, with empty records in a folder of its own.</summary>
internal sealed class OpenHost : IAsyncDisposable
{
    private readonly TemporaryFolder folder;
    private readonly WebApplication web;

    private OpenHost(TemporaryFolder folder, RecordStore store, WebApplication web)
    {
        this.folder = folder;
        this.web = web;
        Store = store;
        Address = ServeSession.AddressOf(web);
    }

    /// <summary>Its records.</summary>
    public RecordStore Store { get; }

    /// <summary>The folder of its records, exports and backups.</summary>
    public string DataFolder => folder.FullName;

    /// <summary>Where it listens.</summary>
    public Uri Address { get; }

    /// <summary>Its services.</summary>
    public IServiceProvider Services => web.Services;

    /// <summary>Opens one.</summary>
    /// <param name="openToRoom">Whether the teacher has to sign in.</param>
    /// <param name="clock">The time; null for the real one.</param>
    public static async Task<OpenHost> Start(bool openToRoom = false, TimeProvider? clock = null)
    {
        var folder = TemporaryFolder.Empty();
        var options = new ServeOptions(folder.FullName) { Port = 0, OpenToRoom = openToRoom };
        RecordStore store = await RecordStore.Open(new StoreSettings(options.Connection, options.School), clock ?? TimeProvider.System, CancellationToken.None);
        return new OpenHost(folder, store, await ServeSession.Start(options, store, clock ?? TimeProvider.System, CancellationToken.None));
    }

    /// <summary>A browser of its own: it keeps cookies, says where a form came from, and follows no redirect by itself.</summary>
    public HttpClient Browser(bool saysOrigin = true)
    {
        var client = new HttpClient(new HttpClientHandler { CookieContainer = new CookieContainer(), AllowAutoRedirect = false }) { BaseAddress = Address };
        client.DefaultRequestHeaders.Accept.ParseAdd("text/html");
        if (saysOrigin)
        {
            client.DefaultRequestHeaders.Add("Origin", Address.GetLeftPart(UriPartial.Authority));
        }

        return client;
    }

    public async ValueTask DisposeAsync()
    {
        await web.DisposeAsync();
        await Store.DisposeAsync();
        folder.Dispose();
    }
}
