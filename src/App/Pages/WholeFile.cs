using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Pages;

/// <summary>
/// Sends an HTML file that has its style inside, to look at, to print or to keep. The page's policy allows exactly that style, by its
/// hash, and its own font; no script at all.
/// </summary>
public static partial class WholeFile
{
    /// <summary>Shows it in the browser.</summary>
    public static IResult Page(HttpContext context, string html)
    {
        IEnumerable<string> styles = StyleElements().Matches(html)
            .Select(m => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(m.Groups[1].Value)))}'");
        context.Response.Headers.ContentSecurityPolicy =
            $"default-src 'none'; style-src {string.Join(' ', styles.DefaultIfEmpty("'none'"))}; font-src data:; img-src data:; form-action 'none'; frame-ancestors 'none'; base-uri 'none'";
        return Results.Text(html, "text/html; charset=utf-8", Encoding.UTF8);
    }

    /// <summary>Gives it as a file to keep.</summary>
    public static IResult Download(string html, string name) => Results.File(Encoding.UTF8.GetBytes(html), "text/html; charset=utf-8", name);

    [GeneratedRegex("<style>(.*?)</style>", RegexOptions.Singleline)]
    private static partial Regex StyleElements();
}
