using System.Globalization;
using System.Text.RegularExpressions;
using Calx.App.Tests.Serving;
using Calx.Rehearsal;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Calx.App.Tests.Proofs;

/// <summary>Every address of the program with its method, so that one that is added later is tried too.</summary>
/// <param name="all">Methods and patterns.</param>
/// <param name="lesson">The lesson whose id stands in an address that has one.</param>
internal sealed partial class KnownAddresses(IReadOnlyList<(string Method, string Pattern)> all, RehearsedLesson lesson)
{
    /// <summary>How many there are.</summary>
    public int Count => all.Count;

    /// <summary>Asks the program itself.</summary>
    public static async Task<KnownAddresses> Of(RehearsedLesson lesson)
    {
        await using OpenHost host = await OpenHost.Start();
        return new KnownAddresses(
            [
                .. host.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
                    .SelectMany(e => e.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods.Select(m => (m, "/" + e.RoutePattern.RawText!.TrimStart('/'))) ?? [])
                    .Order(),
            ],
            lesson);
    }

    /// <summary>Draws one, its places filled with what exists or with what does not.</summary>
    public (string Method, string Path) Draw(Random random)
    {
        (string method, string pattern) = all[random.Next(all.Count)];
        return (method, Place().Replace(pattern, place => Fill(place.Groups[1].Value, pattern, random)));
    }

    private string Fill(string place, string pattern, Random random)
    {
        if (random.Next(4) == 0)
        {
            return Uri.EscapeDataString(Awkward.Text(random));
        }

        string number = random.Next(0, lesson.Groups + 2).ToString(CultureInfo.InvariantCulture);
        return place switch
        {
            // A plan takes long to work out, and others prove that it is right: most of these are of no practical.
            "id" when pattern.StartsWith("/practicals", StringComparison.Ordinal) => random.Next(30) == 0 ? "magnesium-oxide" : "no-such-practical",
            "id" when pattern.StartsWith("/lessons", StringComparison.Ordinal) => lesson.Id.ToString(),
            "id" or "hash" or "name" => Awkward.Text(random) is { Length: > 0 } text ? Uri.EscapeDataString(text) : "x",
            "code" => random.Next(2) == 0 ? lesson.Code : "zzzzzz",
            "what" => "before",
            _ => number,
        };
    }

    [GeneratedRegex(@"\{([a-z]+)[^}]*\}", RegexOptions.IgnoreCase)]
    private static partial Regex Place();
}
