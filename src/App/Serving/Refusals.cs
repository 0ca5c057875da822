using System.Net;
using Microsoft.AspNetCore.Http;
using Microsoft.Net.Http.Headers;

namespace Calx.App.Serving;

/// <summary>An answer that says no: a short page for a person, one JSON object for a program.</summary>
public static class Refusals
{
    /// <summary>Whether the asker wants a page.</summary>
    public static bool WantsPage(HttpRequest request) =>
        request.Headers[HeaderNames.Accept].ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase);

    /// <summary>Answers.</summary>
    /// <param name="context">The request.</param>
    /// <param name="status">The HTTP status.</param>
    /// <param name="title">In a few words.</param>
    /// <param name="sentence">What is wrong and what to do.</param>
    public static Task Answer(HttpContext context, int status, string title, string sentence)
    {
        context.Response.StatusCode = status;
        if (WantsPage(context.Request))
        {
            context.Response.ContentType = "text/html; charset=utf-8";
            return context.Response.WriteAsync(Page(title, sentence), context.RequestAborted);
        }

        return context.Response.WriteAsJsonAsync(new Refusal(title, sentence), context.RequestAborted);
    }

    private static string Page(string title, string sentence) =>
        $"""
        <!DOCTYPE html>
        <html lang="en-GB">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width,initial-scale=1">
        <title>{WebUtility.HtmlEncode(title)} · Calx</title>
        <link rel="stylesheet" href="{OwnFiles.Address("calx.css")}">
        </head>
        <body>
        <main class="narrow">
        <h1>{WebUtility.HtmlEncode(title)}</h1>
        <p>{WebUtility.HtmlEncode(sentence)}</p>
        <p><a href="/">Start page</a> · <a href="/join">Join a lesson</a></p>
        </main>
        </body>
        </html>
        """;

    private sealed record Refusal(string Title, string Sentence);
}
