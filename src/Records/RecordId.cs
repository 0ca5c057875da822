using System.Diagnostics.CodeAnalysis;
using System.Security.Cryptography;

namespace Calx.Records;

/// <summary>
/// The id of a class, lesson, balance or check: 60 random bits, short enough for an address and drawn where the record is made, so
/// that records of two schools can be put together (at a million records the chance that two share an id is 4e-7).
/// <c>default</c> is no id.
/// </summary>
public readonly record struct RecordId
{
    /// <summary>Characters of an id.</summary>
    public const int Length = 12;

    /// <summary>Douglas Crockford's base 32: no i, l, o or u, so that an id can be read aloud.</summary>
    private const string Digits = "0123456789abcdefghjkmnpqrstvwxyz";

    private readonly ulong bits;

    private RecordId(ulong bits) => this.bits = bits;

    /// <summary>A new id.</summary>
    public static RecordId Draw()
    {
        while (true)
        {
            ulong bits = BitConverter.ToUInt64(RandomNumberGenerator.GetBytes(sizeof(ulong))) >> 4;
            if (bits != 0)
            {
                return new RecordId(bits);
            }
        }
    }

    /// <summary>Reads an id: 12 digits in either case; i and l are read as 1, o as 0.</summary>
    /// <returns>False for any other text, and for twelve zeros.</returns>
    public static bool TryParse([NotNullWhen(true)] string? text, out RecordId id)
    {
        ulong bits = 0;
        bool read = text is { Length: Length };
        for (int i = 0; read && i < Length; i++)
        {
            int digit = Digits.IndexOf(Plain(text![i]), StringComparison.Ordinal);
            read = digit >= 0;
            bits = (bits << 5) | (uint)Math.Max(0, digit);
        }

        read &= bits != 0;
        id = read ? new RecordId(bits) : default;
        return read;
    }

    /// <summary>Reads an id that this program wrote.</summary>
    /// <exception cref="FormatException">It is none.</exception>
    public static RecordId Parse(string text) =>
        TryParse(text, out RecordId id) ? id : throw new FormatException($"'{text}' is no id of a record: 12 letters and digits were expected.");

    /// <summary>12 digits in lower case.</summary>
    public override string ToString() => string.Create(Length, bits, static (span, bits) =>
    {
        for (int i = span.Length - 1; i >= 0; i--, bits >>= 5)
        {
            span[i] = Digits[(int)(bits & 31)];
        }
    });

    private static char Plain(char typed) => char.ToLowerInvariant(typed) switch { 'i' or 'l' => '1', 'o' => '0', char c => c };
}
