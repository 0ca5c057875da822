using System.Globalization;
using System.Text;
using System.Text.Json;
using Calx.Rehearsal;

namespace Calx.App.Tests.Proofs;

/// <summary>The body of a request that is not what any address expects, with the kind that it says it is.</summary>
internal static class MalformedBody
{
    private static readonly string[] Fields =
    [
        "id", "kind", "group", "trial", "member", "what", "text", "written", "balance", "vessel", "replaces", "reason", "typedAt", "seen", "sure", "back", "code",
        "name", "names", "typed", "year", "room", "label", "letter", "resolution", "weight", "shown", "by", "note", "initials", "date", "class", "practical", "plan",
        "count", "assessed", "decide", "trial", "presence", "present", "way", "passphrase", "again", "to", "should", "was", "why", "checked", "mass", "groups",
        "students", "balances", "minutes", "heatings", "b.1", "r.1.before", "m.1", "",
    ];

    private static readonly string[] Values =
    [
        "null", "true", "0", "-1", "1e400", "1E-9999", "123456789012345678901234567890", "\"\"", "\"24.31\"", "\"\\ud800\"", "\"\\u0000\"", "[]", "{}", "[[[[[[[[[[]]]]]]]]]]",
        "{\"id\":{\"id\":{}}}", "\"reading\"", "\"happening\"", "\"before\"", "1.5", "01", "+1", ".5", "NaN", "'x'", "\"\u2028\"",
    ];

    private static readonly string[] Kinds =
    [
        "application/json", "application/json; charset=utf-16", "application/json; charset=nonsense", "application/x-www-form-urlencoded",
        "application/x-www-form-urlencoded; charset=utf-7", "multipart/form-data", "multipart/form-data; boundary=", "multipart/form-data; boundary=\"x",
        "multipart/form-data; boundary=x", "text/plain", "application/zip", "a", "/", ";;;", "application/json, text/html", "",
    ];

    /// <summary>Draws one.</summary>
    public static (byte[] Bytes, string Kind) Draw(Random random)
    {
        (byte[] bytes, string kind) = random.Next(5) switch
        {
            0 => (Awkward.Noise(random, 3_000), Kinds[random.Next(Kinds.Length)]),
            1 => (Json(random), "application/json"),
            2 => (Form(random), "application/x-www-form-urlencoded"),
            3 => (Multipart(random), "multipart/form-data; boundary=x"),
            _ => (TypedEntry.Body([TypedEntry.Drawn(random)]), "application/json"),
        };
        return (random.Next(3) == 0 ? Awkward.Damage(bytes, random) : bytes, random.Next(8) == 0 ? Kinds[random.Next(Kinds.Length)] : kind);
    }

    private static byte[] Json(Random random) => Encoding.UTF8.GetBytes(random.Next(8) switch
    {
        0 => new string('[', random.Next(1, 20_000)),
        1 => string.Concat(Enumerable.Repeat("{\"entries\":", random.Next(1, 2_000))),
        2 => $"{{\"entries\":[{string.Join(',', Enumerable.Repeat("{}", random.Next(90, 2_000)))}]}}",
        3 => $"{{\"entries\":{Values[random.Next(Values.Length)]}}}",
        4 => Values[random.Next(Values.Length)],
        5 => "{\"entries\":[" + new string('9', random.Next(1, 100_000)) + "]}",
        _ => $"{{\"entries\":[{string.Join(',', Enumerable.Range(0, random.Next(1, 5)).Select(_ => Entry(random)))}]}}",
    });

    /// <summary>An entry with some of its values of another kind, or there twice.</summary>
    private static string Entry(Random random)
    {
        string[] names = ["id", "kind", "what", "trial", "group", "member", "written", "balance", "vessel", "text", "typedAt", "replaces", "reason"];
        string[] right =
        [
            $"\"{TypedEntry.DrawnId(random)}\"", "\"reading\"", "\"before\"", "1", "1", "0", "\"24.31\"", "\"A\"", "\"3\"", "\"x\"", "\"2026-11-25T10:15:00Z\"",
            $"\"{TypedEntry.DrawnId(random)}\"", "\"y\"",
        ];
        var fields = new List<string>();
        for (int i = 0; i < names.Length; i++)
        {
            if (random.Next(5) > 0)
            {
                fields.Add($"\"{names[i]}\":{(random.Next(4) == 0 ? Value(random) : right[i])}");
            }
        }

        return "{" + string.Join(',', fields) + "}";
    }

    private static string Value(Random random) => random.Next(2) == 0 ? Values[random.Next(Values.Length)] : JsonSerializer.Serialize(Awkward.Text(random));

    private static byte[] Form(Random random)
    {
        if (random.Next(12) == 0)
        {
            return Encoding.ASCII.GetBytes(string.Join('&', Enumerable.Range(0, random.Next(1_900, 2_400)).Select(i => i.ToString(CultureInfo.InvariantCulture))));
        }

        IEnumerable<string> pairs = Enumerable.Range(0, random.Next(1, 12)).Select(_ => Fields[random.Next(Fields.Length)] + "=" + FormValue(random));
        return Encoding.UTF8.GetBytes(string.Join(random.Next(10) == 0 ? "&&" : "&", pairs));
    }

    private static string FormValue(Random random) => random.Next(5) switch
    {
        0 => "%",
        1 => "%zz%ff%fe",
        2 => Awkward.Text(random),
        _ => Uri.EscapeDataString(Awkward.Text(random)),
    };

    private static byte[] Multipart(Random random)
    {
        var text = new StringBuilder();
        for (int i = 0; i < random.Next(1, 6); i++)
        {
            text.Append("--x\r\nContent-Disposition: ").Append(random.Next(5) == 0 ? Awkward.Text(random) : "form-data").Append("; name=\"")
                .Append(Fields[random.Next(Fields.Length)]).Append('"').Append(random.Next(2) == 0 ? "; filename=\"../records.zip\"" : "").Append("\r\n\r\n")
                .Append(Awkward.Text(random)).Append(random.Next(6) == 0 ? "" : "\r\n");
        }

        return Encoding.UTF8.GetBytes(text.Append(random.Next(4) == 0 ? "" : "--x--\r\n").ToString());
    }
}
