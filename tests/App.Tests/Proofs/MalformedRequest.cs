using System.Globalization;
using System.Text;

namespace Calx.App.Tests.Proofs;

/// <summary>A request as bytes: one that a page would send, then spoilt in one, two or three ways.</summary>
internal sealed class MalformedRequest
{
    private static readonly string[] Methods = ["GET", "POST", "PUT", "DELETE", "PATCH", "HEAD", "OPTIONS", "TRACE", "CONNECT", "get", "BREW", "G\u00e9T", "", new string('M', 300)];
    private static readonly string[] Versions = ["HTTP/1.0", "HTTP/1.1 ", "HTTP/9.9", "HTTP", "http/1.1", ""];

    private static readonly string[] Names =
    [
        "Host", "Origin", "Cookie", "Accept", "Content-Length", "Transfer-Encoding", "Content-Type", "Last-Event-ID", "Range", "Expect", "Upgrade", "If-None-Match",
        "Sec-Fetch-Site", "Accept-Encoding", "Connection", "Referer", "X-Forwarded-For", "X-HTTP-Method-Override", "Content-Encoding", "Cache-Control",
    ];

    private readonly List<(string Name, string Value)> headers = [];
    private string method;
    private string target;
    private string version = "HTTP/1.1";
    private byte[] body;

    private MalformedRequest(string method, string target, byte[] body) => (this.method, this.target, this.body) = (method, target, body);

    /// <summary>Draws one.</summary>
    /// <param name="random">The stream it is drawn from.</param>
    /// <param name="addresses">Where it goes.</param>
    /// <param name="authority">Host and port of the program.</param>
    /// <param name="cookie">Cookies of a device with a seat.</param>
    public static byte[] Draw(Random random, KnownAddresses addresses, string authority, string cookie)
    {
        (string drawn, string path) = addresses.Draw(random);
        (byte[] bytes, string kind) = drawn == "GET" ? ([], "") : MalformedBody.Draw(random);
        var request = new MalformedRequest(drawn, path, bytes);
        request.headers.AddRange([("Host", authority), ("Origin", $"http://{authority}"), ("Cookie", cookie), ("Connection", "close")]);
        request.headers.Add(("Accept", random.Next(2) == 0 ? "text/html" : "application/json"));
        if (drawn != "GET")
        {
            request.headers.Add(("Content-Type", kind));
        }

        for (int ways = random.Next(drawn == "GET" ? 1 : 0, 4); ways > 0; ways--)
        {
            request.Spoil(random);
        }

        return random.Next(25) == 0 ? Awkward.Damage(request.Bytes(random), random) : request.Bytes(random);
    }

    private void Spoil(Random random)
    {
        switch (random.Next(9))
        {
            case 0:
                method = Methods[random.Next(Methods.Length)];
                break;
            case 1:
                target += "?" + string.Join('&', Enumerable.Range(0, random.Next(1, 8)).Select(_ => Query(random)));
                break;
            case 2:
                target = Target(random);
                break;
            case 3:
                version = Versions[random.Next(Versions.Length)];
                break;
            case 4:
                headers[random.Next(headers.Count)] = (Names[random.Next(Names.Length)], OneLine(Awkward.Text(random)));
                break;
            case 5:
                headers.RemoveAt(random.Next(headers.Count - 1));
                break;
            case 6:
                headers.Add(("Cookie", Cookies(random)));
                break;
            case 7:
                headers.AddRange(Enumerable.Range(0, random.Next(1, 150)).Select(i => ($"X-{i.ToString(CultureInfo.InvariantCulture)}", OneLine(Awkward.Text(random)))));
                break;
            default:
                (body, string kind) = MalformedBody.Draw(random);
                headers.Add(("Content-Type", kind));
                break;
        }
    }

    private static string Query(Random random)
    {
        string[] names = ["after", "group", "fault", "to", "gone", "mass", "groups", "students", "balances", "resolution", "minutes", "heatings", "level", "set", "without", "moved", ""];
        return $"{names[random.Next(names.Length)]}{(random.Next(8) == 0 ? "" : "=")}{(random.Next(6) == 0 ? "%c3%28" : Uri.EscapeDataString(Awkward.Text(random)))}";
    }

    private static string Target(Random random) => random.Next(9) switch
    {
        0 => "/" + new string('a', random.Next(7_000, 20_000)),
        1 => "/%2e%2e/%2e%2e/records.db",
        2 => "/files/../../records.db",
        3 => "*",
        4 => "http://elsewhere.example/lessons",
        5 => "/%00%ff%c0%80",
        6 => "//lessons//",
        7 => "/" + string.Join('/', Enumerable.Range(0, 60).Select(_ => Uri.EscapeDataString(Awkward.Text(random)))),
        _ => "/" + OneLine(Awkward.Text(random)),
    };

    private static string Cookies(Random random) => random.Next(4) switch
    {
        0 => $"calx-seat={Convert.ToBase64String(Awkward.Noise(random, 300))}; calx-teacher={Convert.ToBase64String(Awkward.Noise(random, 300))}",
        1 => "calx-seat=" + OneLine(Awkward.Text(random)),
        2 => string.Join("; ", Enumerable.Range(0, 300).Select(_ => "calx-seat=x")),
        _ => OneLine(Awkward.Text(random)),
    };

    private static string OneLine(string text) => text.Replace("\r", "", StringComparison.Ordinal).Replace("\n", "", StringComparison.Ordinal);

    private byte[] Bytes(Random random)
    {
        var head = new StringBuilder($"{method} {target} {version}\r\n");
        foreach ((string name, string value) in headers)
        {
            head.Append(name).Append(": ").Append(value).Append("\r\n");
        }

        bool chunked = random.Next(12) == 0;
        if (chunked)
        {
            head.Append("Transfer-Encoding: chunked\r\n\r\n").Append(random.Next(3) == 0 ? "zz" : body.Length.ToString("x", CultureInfo.InvariantCulture)).Append("\r\n");
        }
        else
        {
            int said = random.Next(15) == 0 ? body.Length + random.Next(-5, 50) : body.Length;
            head.Append("Content-Length: ").Append(said.ToString(CultureInfo.InvariantCulture)).Append("\r\n\r\n");
        }

        return [.. Encoding.UTF8.GetBytes(head.ToString()), .. body, .. chunked && random.Next(3) > 0 ? "\r\n0\r\n\r\n"u8.ToArray() : []];
    }
}
