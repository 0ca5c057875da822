using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace Calx.Records.Journal;

/// <summary>
/// The id of an entry, made where it was typed: 128 random bits, so that two devices without a connection never make the same
/// (at a billion entries the chance is 1e-21). By it an entry that is sent twice is known again.
/// </summary>
public readonly record struct EntryId
{
    private readonly UInt128 bits;

    private EntryId(UInt128 bits) => this.bits = bits;

    /// <summary>Takes 128 bits.</summary>
    /// <exception cref="ArgumentException">They are all 0, which no device draws.</exception>
    public static EntryId Of(UInt128 bits) => bits == 0 ? throw new ArgumentException("An id is not 0.", nameof(bits)) : new EntryId(bits);

    /// <summary>Reads an id from 32 hexadecimal digits, as a device sends it.</summary>
    /// <returns>False for any other text, and for 0.</returns>
    public static bool TryParse([NotNullWhen(true)] string? text, out EntryId id)
    {
        bool read = text is { Length: 32 } && text.All(char.IsAsciiHexDigit) && UInt128.TryParse(text, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out UInt128 bits) && bits != 0;
        id = read ? new EntryId(UInt128.Parse(text!, NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture)) : default;
        return read;
    }

    /// <summary>32 hexadecimal digits in lower case.</summary>
    public override string ToString() => bits.ToString("x32", CultureInfo.InvariantCulture);
}
