using System.Buffers;
using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Practicals.Texts;

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
    public static NumberCell Read(string text, NumberExpectation expected, EngineLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(expected);
        NumberTexts texts = new(language ?? EngineLanguage.British);
        ReadOnlySpan<char> trimmed = Trim(text);
        if (trimmed.Length <= 3 && trimmed.IndexOfAnyExcept(Dashes) < 0)
            return new NumberCell.NoReading();
        if (trimmed.Length > LongestText)
            return new NumberCell.Rejected(texts.TooLong(LongestText.InFigures()));
        bool signed = Dashes.Contains(trimmed[0]) || trimmed[0] == '+';
        bool negative = signed && trimmed[0] != '+';
        ReadOnlySpan<char> rest = (signed ? trimmed[1..] : trimmed).TrimStart();
        int end = rest.IndexOfAnyExcept(DigitsAndSeparators);
        ReadOnlySpan<char> digits = end < 0 ? rest : rest[..end];
        ReadOnlySpan<char> behind = end < 0 ? [] : rest[end..].Trim();
        string? fault = digits.IndexOfAnyInRange('0', '9') < 0 ? NotANumber(trimmed, texts) : Separators(digits, expected, texts);
        fault ??= Behind(behind, texts);
        return fault is null
            ? Convert(digits, negative, behind, (expected, texts))
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

    private static string NotANumber(ReadOnlySpan<char> text, NumberTexts texts)
    {
        if (text[0] == '#')
            return texts.SpreadsheetError;
        return IsWord(text, "nan") || IsWord(text, "inf") || IsWord(text, "infinity") || IsWord(text, "-inf") || text is "∞"
            ? texts.NotShown
            : texts.NotANumber;
    }

    private static bool IsWord(ReadOnlySpan<char> text, string word) => text.Equals(word, StringComparison.OrdinalIgnoreCase);

    private static string? Separators(ReadOnlySpan<char> digits, NumberExpectation expected, NumberTexts texts)
    {
        int count = digits.Length - CountDigits(digits);
        int at = digits.IndexOfAny(".,·٫");
        if (count > 1)
            return texts.TwoSeparators;
        bool maybeThousands = count == 1 && digits[at] == ',' && digits.Length - at == 4 && at is >= 1 and <= 3 && digits[0] != '0';
        if (maybeThousands && expected.PointsAround)
            return texts.CommaUnclear;
        return CountDigits(digits) > MostDigits ? texts.TooManyDigits(MostDigits.InFigures()) : null;
    }

    private static int CountDigits(ReadOnlySpan<char> text)
    {
        int count = 0;
        foreach (char c in text)
            count += char.IsAsciiDigit(c) ? 1 : 0;
        return count;
    }

    private static string? Behind(ReadOnlySpan<char> behind, NumberTexts texts)
    {
        if (behind.IsEmpty || HeadingUnit.Named(behind) is not null)
            return null;
        if (behind[0] is 'e' or 'E' or '×' or 'x' && behind.Length > 1 && (char.IsAsciiDigit(behind[1]) || behind[1] is '+' or '-' or ' '))
            return texts.PowerOfTen;
        if (char.IsAsciiDigit(behind[0]))
            return texts.SpaceInside;
        return texts.SomethingBehind;
    }

    private static NumberCell Convert(
        ReadOnlySpan<char> digits, bool negative, ReadOnlySpan<char> behind, (NumberExpectation Expected, NumberTexts Texts) read)
    {
        (NumberExpectation expected, NumberTexts texts) = read;
        string unit = HeadingUnit.Named(behind) ?? expected.WrittenUnit;
        if (!ReadingUnits.Fits(unit, expected.Unit))
            return new NumberCell.Rejected(texts.OtherUnit(unit, expected.Unit));
        string plain = digits.ToString().Replace(',', '.').Replace('·', '.').Replace('٫', '.');
        if (!WrittenNumber.TryParse(plain, out WrittenNumber written))
            return new NumberCell.Rejected(texts.NotShown);
        if (negative && written.Value != 0 && !expected.MayBeNegative)
            return new NumberCell.Rejected(expected.Unit == "g" ? texts.MassNegative : texts.Negative);
        WrittenNumber signed = negative && written.Value != 0 ? new WrittenNumber(-written.Value) : written;
        (WrittenNumber value, decimal lastDigit) = ReadingUnits.Converted(signed, unit, expected.Unit)!.Value;
        return expected.Unit == "g" && Math.Abs(value.Value) > LargestMassInGrams
            ? new NumberCell.Rejected(texts.TooHeavy)
            : new NumberCell.Number(value, lastDigit);
    }
}
