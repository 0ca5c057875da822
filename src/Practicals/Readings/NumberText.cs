using System.Buffers;
using System.Globalization;
using Calx.Measurement.Numbers;

namespace Calx.Practicals.Readings;

/// <summary>
/// Reads the number of a cell as people write it: <c>24.31</c>, <c>24,31</c>, <c>24·31</c>, <c>24.31 g</c>, <c>24310
/// mg</c>, with spaces of any kind round it. Grammar: <c>[sign] digits [separator digits] [space] [unit]</c>.
/// </summary>
public static class NumberText
{
    /// <summary>Longest text looked at; the longest honest cell, a mass in words of a unit, has some twenty.</summary>
    public const int LongestText = 64;

    /// <summary>Most digits of a reading; balances show at most ten, so more is a computed number or a slip.</summary>
    public const int MostDigits = 12;

    /// <summary>The largest mass taken, in g; more stands on no balance of a laboratory.</summary>
    public const decimal LargestMassInGrams = 100_000m;

    private static readonly SearchValues<char> Dashes = SearchValues.Create("-‐‑‒–—―−");
    private static readonly SearchValues<char> DigitsAndSeparators = SearchValues.Create("0123456789.,·٫");

    /// <summary>Reads a cell. Never throws, whatever the text.</summary>
    public static NumberCell Read(string text, NumberExpectation expected)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(expected);
        ReadOnlySpan<char> trimmed = Trim(text);
        if (trimmed.Length <= 3 && trimmed.IndexOfAnyExcept(Dashes) < 0)
            return new NumberCell.NoReading();
        if (trimmed.Length > LongestText)
            return new NumberCell.Rejected($"longer than {LongestText} characters, so not a reading");
        bool signed = Dashes.Contains(trimmed[0]) || trimmed[0] == '+';
        bool negative = signed && trimmed[0] != '+';
        ReadOnlySpan<char> rest = (signed ? trimmed[1..] : trimmed).TrimStart();
        int end = rest.IndexOfAnyExcept(DigitsAndSeparators);
        ReadOnlySpan<char> digits = end < 0 ? rest : rest[..end];
        ReadOnlySpan<char> behind = end < 0 ? [] : rest[end..].Trim();
        string? fault = digits.IndexOfAnyInRange('0', '9') < 0 ? NotANumber(trimmed) : Separators(digits, expected);
        fault ??= Behind(behind);
        return fault is null
            ? Convert(digits, negative, behind, expected)
            : new NumberCell.Rejected(fault);
    }

    /// <summary>The text without spaces and invisible characters round it.</summary>
    public static ReadOnlySpan<char> Trim(string text)
    {
        int start = 0;
        int end = text?.Length ?? throw new ArgumentNullException(nameof(text));
        while (start < end && IsBlank(text[start]))
            start++;
        while (end > start && IsBlank(text[end - 1]))
            end--;
        return text.AsSpan(start, end - start);
    }

    // Byte-order marks, zero-width spaces and direction marks come along when cells are pasted from web pages.
    private static bool IsBlank(char c) => char.IsWhiteSpace(c) || char.IsControl(c)
        || CharUnicodeInfo.GetUnicodeCategory(c) == UnicodeCategory.Format;

    private static string NotANumber(ReadOnlySpan<char> text)
    {
        if (text[0] == '#')
            return "an error of the spreadsheet, not a reading";
        return IsWord(text, "nan") || IsWord(text, "inf") || IsWord(text, "infinity") || IsWord(text, "-inf") || text is "∞"
            ? "not a number that a balance shows"
            : "not a number; a mass such as 24.31 was expected";
    }

    private static bool IsWord(ReadOnlySpan<char> text, string word) => text.Equals(word, StringComparison.OrdinalIgnoreCase);

    private static string? Separators(ReadOnlySpan<char> digits, NumberExpectation expected)
    {
        int count = digits.Length - CountDigits(digits);
        int at = digits.IndexOfAny(".,·٫");
        if (count > 1)
            return "more than one point or comma; write one decimal point and no separators of thousands";
        bool maybeThousands = count == 1 && digits[at] == ',' && digits.Length - at == 4 && at is >= 1 and <= 3 && digits[0] != '0';
        if (maybeThousands && expected.PointsAround)
            return "the comma may be a decimal comma or mark thousands, and other numbers here have decimal points";
        return CountDigits(digits) > MostDigits ? $"more than {MostDigits} digits, which no balance shows" : null;
    }

    private static int CountDigits(ReadOnlySpan<char> text)
    {
        int count = 0;
        foreach (char c in text)
            count += char.IsAsciiDigit(c) ? 1 : 0;
        return count;
    }

    private static string? Behind(ReadOnlySpan<char> behind)
    {
        if (behind.IsEmpty || HeadingUnit.Named(behind) is not null)
            return null;
        if (behind[0] is 'e' or 'E' or '×' or 'x' && behind.Length > 1 && (char.IsAsciiDigit(behind[1]) || behind[1] is '+' or '-' or ' '))
            return "written with a power of ten; write it out in full";
        if (char.IsAsciiDigit(behind[0]))
            return "a space inside the number";
        return "something is written behind the number; put remarks in a column 'observations'";
    }

    private static NumberCell Convert(
        ReadOnlySpan<char> digits, bool negative, ReadOnlySpan<char> behind, NumberExpectation expected)
    {
        string unit = HeadingUnit.Named(behind) ?? expected.WrittenUnit;
        if (MassUnits.Shift(unit, expected.Unit) is not int shift)
            return new NumberCell.Rejected($"{unit} is not the unit of this column; {expected.Unit} was expected");
        string plain = digits.ToString().Replace(',', '.').Replace('·', '.').Replace('٫', '.');
        if (!WrittenNumber.TryParse(plain, out WrittenNumber written))
            return new NumberCell.Rejected("not a number that a balance shows");
        if (negative && written.Value != 0 && !expected.MayBeNegative)
            return new NumberCell.Rejected(expected.Unit == "g" ? "a mass cannot be negative" : "it cannot be negative");
        WrittenNumber signed = negative && written.Value != 0 ? new WrittenNumber(-written.Value) : written;
        WrittenNumber value = MassUnits.Move(signed, shift);
        return expected.Unit == "g" && Math.Abs(value.Value) > LargestMassInGrams
            ? new NumberCell.Rejected("more than any laboratory balance carries")
            : new NumberCell.Number(value, MassUnits.LastDigit(signed.Decimals, shift));
    }
}
