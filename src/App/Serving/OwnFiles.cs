using System.Collections.Frozen;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using Calx.Papers.Reports;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Calx.App.Serving;

/// <summary>
/// Style sheets, scripts and fonts, which are inside the program. An address carries the first digits of its content's
/// hash, so that a browser may keep it for ever and still takes a new version at once.
/// </summary>
public static class OwnFiles
{
    private const string Folder = "wwwroot/";
    private const int HashDigits = 12;

    /// <summary>The style sheet of charts and reports.</summary>
    public const string ChartSheet = "charts.css";

    private static readonly FrozenDictionary<string, Asset> ByName = Load();

    /// <summary>The address of a file such as <c>calx.css</c>.</summary>
    /// <exception cref="ArgumentException">There is no such file in the program.</exception>
    public static string Address(string name) => ByName.TryGetValue(name, out Asset? asset)
        ? $"/files/{asset.Hash}/{name}"
        : throw new ArgumentException($"The program has no file '{name}'.", nameof(name));

    /// <summary>Serves them, to anybody: nothing in them is secret.</summary>
    public static void Map(IEndpointRouteBuilder routes) => routes
        .MapGet("/files/{hash}/{name}", (string hash, string name, HttpContext context) =>
        {
            if (!ByName.TryGetValue(name, out Asset? asset))
            {
                return Results.NotFound();
            }

            // A page of an older program may ask under an older hash: it gets what there is, and keeps it no longer than this.
            context.Response.Headers.CacheControl = hash == asset.Hash ? "public, max-age=31536000, immutable" : "no-cache";
            return Results.Bytes(asset.Bytes, asset.ContentType);
        })
        .WithMetadata(Admits.Anybody);

    private static FrozenDictionary<string, Asset> Load()
    {
        Assembly own = typeof(OwnFiles).Assembly;
        var assets = new Dictionary<string, Asset>(StringComparer.Ordinal);
        using (Stream regular = ReportFonts.Regular(), bold = ReportFonts.Bold(), charts = new MemoryStream(Encoding.UTF8.GetBytes(ReportStyle.ScreenSheet)))
        {
            assets.Add("CalxSans-Regular.woff2", Asset.Of(regular, ".woff2", assets));
            assets.Add("CalxSans-Bold.woff2", Asset.Of(bold, ".woff2", assets));
            assets.Add(ChartSheet, Asset.Of(charts, ".css", assets));
        }

        // Style sheets last: they name fonts by their address, which needs the fonts' hashes.
        foreach (string resource in own.GetManifestResourceNames().Where(n => n.StartsWith(Folder, StringComparison.Ordinal))
            .OrderBy(n => n.EndsWith(".css", StringComparison.Ordinal)).ThenBy(n => n, StringComparer.Ordinal))
        {
            using Stream stream = own.GetManifestResourceStream(resource)!;
            assets.Add(resource[Folder.Length..], Asset.Of(stream, resource, assets));
        }

        return assets.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private sealed record Asset(byte[] Bytes, string ContentType, string Hash)
    {
        public static Asset Of(Stream stream, string name, Dictionary<string, Asset> others)
        {
            using var copy = new MemoryStream();
            stream.CopyTo(copy);
            byte[] bytes = copy.ToArray();
            if (name.EndsWith(".css", StringComparison.Ordinal))
            {
                string sheet = others.Aggregate(
                    Encoding.UTF8.GetString(bytes), (text, other) => text.Replace($"{{file:{other.Key}}}", $"/files/{other.Value.Hash}/{other.Key}", StringComparison.Ordinal));
                bytes = Encoding.UTF8.GetBytes(sheet);
            }

            return new Asset(bytes, TypeOf(name), Convert.ToHexStringLower(SHA256.HashData(bytes))[..HashDigits]);
        }

        private static string TypeOf(string name) => Path.GetExtension(name) switch
        {
            ".css" => "text/css; charset=utf-8",
            ".js" => "text/javascript; charset=utf-8",
            ".svg" => "image/svg+xml",
            ".woff2" => "font/woff2",
            string other => throw new InvalidOperationException($"No content type is known for '{other}'."),
        };
    }
}
