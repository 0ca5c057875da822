using System.Globalization;

namespace Calx.Measurement.Numbers;

/// <summary>
/// A number as a person wrote it, trailing zeros kept: <c>15.10</c> is not <c>15.1</c>, because the zero says that
/// the hundredths were read. <c>default</c> is the number 0 written without decimals.
/// </summary>
public readonly struct WrittenNumber : IEquatable<WrittenNumber>
{
    /// <summary>Most characters read; a balance shows at most ten digits, so more is a slip or an attack.</summary>
    public const int LongestText = 32;

    /// <summary>Takes a decimal whose scale is the number of decimals written.</summary>
    public WrittenNumber(decimal value) => Value = value;

    /// <summary>The number; its scale is the number of decimals written.</summary>
    public decimal Value { get; }

    /// <summary>How many decimals were written, 0 to 28.</summary>
    public int Decimals => Value.Scale;

    /// <summary>The number for computing.</summary>
    public double AsDouble => (double)Value;

    /// <summary>Same number and same decimals.</summary>
    public static bool operator ==(WrittenNumber left, WrittenNumber right) => left.Equals(right);

    /// <summary>Other number or other decimals.</summary>
    public static bool operator !=(WrittenNumber left, WrittenNumber right) => !left.Equals(right);

    /// <summary>
    /// Reads digits with an optional sign and one decimal point (a full stop): <c>[+-]? digits* [. digits*]</c> with at
    /// least one digit. No exponent, no grouping, no unit: what a balance shows.
    /// </summary>
    /// <returns>False where the text is anything else, is longer than <see cref="LongestText"/>, or has more digits
    /// than a decimal holds.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out WrittenNumber number)
    {
        const NumberStyles written = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        bool read = text.Length <= LongestText
            & decimal.TryParse(text, written, CultureInfo.InvariantCulture, out decimal value);
        // decimal.TryParse rounds silently past 28 digits: fewer decimals than written means that digits were lost.
        int point = text.IndexOf('.');
        bool kept = read && value.Scale == (point < 0 ? 0 : text.Length - point - 1);
        number = kept ? new WrittenNumber(value) : default;
        return kept;
    }

    /// <inheritdoc/>
    public bool Equals(WrittenNumber other) => Value == other.Value && Decimals == other.Decimals;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is WrittenNumber other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Value, Decimals);

    /// <summary>The digits as written, with a full stop for the decimal point.</summary>
    public override string ToString() => Value.ToString(CultureInfo.InvariantCulture);
}
