using System.Net;
using Microsoft.AspNetCore.Http;

namespace Calx.App.Serving;

/// <summary>What every answer forbids: scripts and styles that are not the program's own files, frames of other sites, guesses at
/// a file's kind, and any request to anybody else.</summary>
public static class SafeHeaders
{
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; "
        + "form-action 'self'; frame-ancestors 'none'; base-uri 'none'";

    /// <summary>Puts them on an answer.</summary>
    public static void Put(HttpContext context)
    {
        IHeaderDictionary headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        // Not 'no-referrer': under that a browser hides a form's origin even from its own site (see SameOrigin).
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), microphone=(), geolocation=(), payment=(), usb=()";
        // Pages show a class's data, and a shared computer keeps nothing of them.
        headers.CacheControl = "no-store";
        if (context.Request.IsHttps || (context.Connection.LocalIpAddress is IPAddress own && IPAddress.IsLoopback(own)))
        {
            // Over plain HTTP in the room browsers do not heed it, and say so as an error on every page.
            headers["Cross-Origin-Opener-Policy"] = "same-origin";
        }

        if (context.Request.IsHttps)
        {
            headers.StrictTransportSecurity = "max-age=31536000";
        }
    }
}
