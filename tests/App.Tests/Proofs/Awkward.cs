namespace Calx.App.Tests.Proofs;

/// <summary>What no page of the program sends.</summary>
internal static class Awkward
{
    private static readonly string[] Texts =
    [
        "", " ", "0", "-1", "1e400", "-1e-400", "NaN", "Infinity", "99999999999999999999", "2147483648", "9223372036854775808", "1.7976931348623157e309",
        "0x10", "١٢٣", "½", "1,5", "..", "../../etc/passwd", "%00", "\0", "\r\nSet-Cookie: a=b", "\u202e24.31", "\ufeff24.31", "<script>alert(1)</script>",
        "'; DROP TABLE entry; --", "=1+1", "@SUM(A1)", "{{7*7}}", "${7*7}", "//elsewhere.example/", "\\\\elsewhere.example\\", "javascript:alert(1)",
        "0000-00-00", "9999-12-31T23:59:60Z", "2026-13-45", "Z", "null", "undefined", "true", "[]", "{}", "\ud83e\uddea", "e\u0301\u0301\u0301\u0301\u0301\u0301",
    ];

    private static readonly int[] Lengths = [41, 121, 201, 301, 4_001, 5_000, 17_000];

    /// <summary>A text: odd, far too long, or noise.</summary>
    public static string Text(Random random) => random.Next(10) switch
    {
        0 => new string((char)random.Next('a', 'z'), Lengths[random.Next(Lengths.Length)]),
        1 => string.Concat(Enumerable.Range(0, random.Next(1, 30)).Select(_ => (char)random.Next(1, 0xD7FF))),
        _ => Texts[random.Next(Texts.Length)],
    };

    /// <summary>Bytes of any value.</summary>
    public static byte[] Noise(Random random, int longest)
    {
        byte[] bytes = new byte[random.Next(longest + 1)];
        random.NextBytes(bytes);
        return bytes;
    }

    /// <summary>Some of the bytes changed, left out or repeated.</summary>
    public static byte[] Damage(byte[] bytes, Random random)
    {
        if (bytes.Length == 0)
        {
            return Noise(random, 50);
        }

        int at = random.Next(bytes.Length);
        switch (random.Next(4))
        {
            case 0:
                return bytes[..at];
            case 1:
                return [.. bytes, .. bytes[at..]];
            case 2:
                return [.. bytes[..at], .. Noise(random, 20), .. bytes[at..]];
            default:
                byte[] changed = [.. bytes];
                for (int i = 0; i <= random.Next(5); i++)
                {
                    changed[random.Next(changed.Length)] = (byte)random.Next(256);
                }

                return changed;
        }
    }
}
