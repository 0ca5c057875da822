using Microsoft.AspNetCore.Http;

namespace Calx.App.Serving;

/// <summary>
/// Keeps other sites' pages from acting through a person's browser. Whatever changes something must come from a page of
/// this program: the browser says so in <c>Origin</c>, which a page cannot forge and every browser sends with a POST.
/// (<c>Sec-Fetch-Site</c> is not sent over plain HTTP to another machine, so it can only be believed where it says no.)
/// The host that was asked for must be one that the program goes by, so that a foreign name which somebody points at this
/// machine reaches nothing.
/// </summary>
public sealed class SameOrigin(OwnHosts hosts)
{
    /// <summary>Whether a request may go on; where not, why, for the person.</summary>
    public string? Refusal(HttpRequest request)
    {
        if (!hosts.Now().Contains(request.Host.Host, StringComparer.OrdinalIgnoreCase))
        {
            return $"This program does not go by the name '{Short(request.Host.Host)}'. Type the address as it stands on the teacher's screen.";
        }

        if (HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method))
        {
            return null;
        }

        string own = $"{request.Scheme}://{request.Host}";
        bool fromElsewhere = request.Headers["Sec-Fetch-Site"].ToString() is "cross-site" or "same-site";
        return !fromElsewhere && string.Equals(request.Headers.Origin.ToString(), own, StringComparison.OrdinalIgnoreCase)
            ? null
            : "This was not sent from a page of this program, so nothing was changed. Open the page anew and try again.";
    }

    private static string Short(string host) => host.Length <= 60 ? host : host[..60] + "...";
}
