using System.Globalization;
using System.Text;

namespace Calx.Papers.Tables;

/// <summary>One part of a number format: that for all, for negative or for zero numbers.</summary>
internal sealed class FormatSection
{
    private readonly StringBuilder before = new();
    private readonly StringBuilder behind = new();
    private int digits;
    private int decimals;
    private int leastDecimals;
    private int thousands;
    private bool point;
    private bool percent;
    private bool exponent;
    private bool general;

    private FormatSection()
    {
    }

    /// <summary>Whether numbers are shown as days or times.</summary>
    public bool IsDate { get; private set; }

    /// <summary>Whether a day is shown, not only a time.</summary>
    public bool HasDay { get; private set; }

    /// <summary>Whether trailing zeros would be seen.</summary>
    public bool ShowsDecimals => IsDate || (!general && leastDecimals == decimals);

    /// <summary>The parts of a format code, parted by semicolons outside of literals.</summary>
    public static List<string> Split(string code)
    {
        List<string> parts = [];
        int start = 0;
        for (int i = 0; i <= code.Length; i++)
        {
            if (i < code.Length && code[i] != ';')
            {
                i = End(code, i) - 1;
                continue;
            }
            parts.Add(code[start..i]);
            start = i + 1;
        }
        return parts;
    }

    /// <summary>Reads one part.</summary>
    public static FormatSection Parse(string code)
    {
        FormatSection section = new();
        for (int i = 0; i < code.Length;)
        {
            int end = End(code, i);
            section.Take(code[i..end]);
            i = end;
        }
        // No place for a digit, as in '@' or a format not understood: the number is shown as it is.
        section.general |= section.digits == 0 && !section.IsDate;
        return section;
    }

    /// <summary>The number as shown.</summary>
    public string Show(decimal number)
    {
        if (general)
            return number.ToString(CultureInfo.InvariantCulture);
        if (exponent)
            return number.ToString("0." + new string('0', decimals) + "E+00", CultureInfo.InvariantCulture);
        decimal shown = number * (percent ? 100 : 1);
        for (int i = 0; i < thousands; i++)
            shown /= 1000;
        shown = Math.Round(shown, decimals, MidpointRounding.AwayFromZero);
        string pattern = "0." + new string('0', leastDecimals) + new string('#', decimals - leastDecimals);
        string text = shown.ToString(pattern, CultureInfo.InvariantCulture);
        return before + text + (percent ? "%" : "") + behind;
    }

    // The end of the token that starts at an index: a literal in quotation marks, an escape, a bracket, or one sign.
    private static int End(string code, int start)
    {
        char closing = code[start] switch { '"' => '"', '[' => ']', _ => '\0' };
        if (closing != '\0')
        {
            int end = code.IndexOf(closing, start + 1);
            return end < 0 ? code.Length : end + 1;
        }
        if (code[start] is '\\' or '_' or '*')
            return Math.Min(start + 2, code.Length);
        if (code.AsSpan(start).StartsWith("General", StringComparison.OrdinalIgnoreCase))
            return start + "General".Length;
        return code.AsSpan(start).StartsWith("AM/PM", StringComparison.OrdinalIgnoreCase) ? start + "AM/PM".Length : start + 1;
    }

    private void Take(string token)
    {
        switch (token[0])
        {
            case '0' or '#' or '?':
                TakeDigit(token[0] == '0');
                break;
            case '.':
                point = true;
                break;
            case ',':
                thousands += digits > 0 && !point ? 1 : 0;
                break;
            case '%':
                percent = true;
                break;
            case 'E' or 'e':
                exponent = digits > 0;
                IsDate |= digits == 0;
                break;
            case '/':
                general = !IsDate;
                break;
            case 'G' or 'g' when token.Length > 1:
                general = true;
                break;
            case '"':
                Literal(token.Trim('"'));
                break;
            case '\\':
                Literal(token[1..]);
                break;
            case '[':
                TakeBracket(token.Trim('[', ']'));
                break;
            case 'y' or 'Y' or 'd' or 'D' or 'm' or 'M' or 'h' or 'H' or 's' or 'S' or 'A' or 'a':
                IsDate = true;
                HasDay |= token[0] is 'y' or 'Y' or 'd' or 'D';
                break;
        }
    }

    private void TakeDigit(bool always)
    {
        if (exponent)
            return;
        // A comma between digits groups; only those behind the last digit divide.
        thousands = point ? thousands : 0;
        digits++;
        decimals += point ? 1 : 0;
        leastDecimals += point && always ? 1 : 0;
    }

    private void TakeBracket(string inside)
    {
        if (inside.Length > 0 && inside.All(c => "hHmMsS".Contains(c, StringComparison.Ordinal)))
            IsDate = true;
        else if (inside.StartsWith('$'))
            Literal(inside[1..].Split('-')[0]);
        else if (inside.IndexOfAny(['<', '>', '=']) >= 0)
            general = true;
    }

    // Brackets, signs and blanks of accounting formats only say again that a number is negative, or line it up.
    private void Literal(string text)
    {
        if (text.AsSpan().Trim().Trim("()-").Length > 0)
            (digits == 0 ? before : behind).Append(text);
    }
}
