using System.Globalization;
using System.Text.RegularExpressions;
using Calx.Practicals.Marking.Words;

namespace Calx.Practicals.Marking.Written;

/// <summary>
/// Reads numbers as people write them.
/// <code>
/// answer   = number unit? | number ("/" number) unit? | number (":" | "to") number
/// number   = sign? digits (("." | ",") digits)? power?
/// power    = ("e" | "E") sign? digits | ("x" | "×" | "*" | "·") "10" "^"? sign? digits | the same with superscripts
/// </code>
/// A comma is a decimal comma where no full stop stands beside it; digits are never grouped by commas. Blanks within a number are passed over.
/// </summary>
internal static partial class AnswerReader
{
    /// <summary>Longer texts are essays, not numbers.</summary>
    public const int LongestText = 60;

    private const string NumberPart = @"[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][+-]?\d{1,3}|\s*[xX×*·]\s*10\s*(?:\^?\s*\(?\s*[+-]?\d{1,3}\s*\)?)?)?";

    public static AnswerText Read(string text)
    {
        string whole = Around().Replace(Plain(text), string.Empty).Trim();
        int equals = whole.LastIndexOf('=');
        AnswerText read = Number(equals < 0 ? whole : whole[(equals + 1)..].Trim());
        return read is AnswerText.Number number && equals > 0 ? number with { Said = whole[..equals].Trim() } : read;
    }

    /// <summary>Words that say only that a number is not exact.</summary>
    [GeneratedRegex(@"(?i)^(about|approximately|approx\.?|roughly|circa|ca\.?|c\.|[~≈])\s*(?=[\d.,+-])|(?<=\d)\s*\(?\b(approximately|approx|ish)\b\.?\)?$", RegexOptions.CultureInvariant)]
    private static partial Regex Around();

    private static AnswerText Number(string plain)
    {
        if (plain.Length == 0 || plain is "-" or "–" or "?")
        {
            return new AnswerText.Nothing();
        }

        if (plain.Length > LongestText)
        {
            return new AnswerText.Unreadable(MarkReasons.Texts.TextNotNumber(plain.Length.ToString(CultureInfo.InvariantCulture)));
        }

        return RatioPattern().Match(plain) is { Success: true } ratio ? Ratio(ratio)
            : FractionPattern().Match(plain) is { Success: true } fraction ? Fraction(fraction)
            : DecimalPattern().Match(plain) is { Success: true } number ? Decimal(number)
            : new AnswerText.Unreadable(MarkReasons.Texts.NoNumber(Shortened(plain)));
    }

    private static AnswerText Decimal(Match match) =>
        Part.Of(match.Groups["a"].Value) is Part part
            ? new AnswerText.Number(part.Value, part.HalfWidth, part.Figures, part.Decimals, match.Groups["unit"].Value.Trim(), AnswerForm.Decimal)
            : TooLarge(match.Value);

    private static AnswerText Fraction(Match match)
    {
        if (Part.Of(match.Groups["a"].Value) is not Part above || Part.Of(match.Groups["b"].Value) is not Part below)
        {
            return TooLarge(match.Value);
        }

        return below.Value == 0
            ? new AnswerText.Unreadable(MarkReasons.Texts.DividesByNothing)
            : new AnswerText.Number(above.Value / below.Value, 0, Math.Min(above.Figures, below.Figures), null, match.Groups["unit"].Value.Trim(), AnswerForm.Fraction);
    }

    private static AnswerText Ratio(Match match)
    {
        if (Part.Of(match.Groups["a"].Value) is not Part left || Part.Of(match.Groups["b"].Value) is not Part right)
        {
            return TooLarge(match.Value);
        }

        if (right.Value == 0)
        {
            return new AnswerText.Unreadable(MarkReasons.Texts.RatioWithNothing);
        }

        // A lone 1 says 'for each'; it was not rounded, unless both sides are whole numbers.
        bool whole = left.Decimals == 0 && right.Decimals == 0;
        double halfLeft = left.IsOne && !whole ? 0 : left.HalfWidth, halfRight = right.IsOne ? 0 : right.HalfWidth;
        double value = left.Value / right.Value;
        double half = (halfLeft + (Math.Abs(value) * halfRight)) / Math.Abs(right.Value);
        int figures = left.IsOne && !right.IsOne ? right.Figures : right.IsOne ? left.Figures : Math.Min(left.Figures, right.Figures);
        return new AnswerText.Number(value, half, figures, right.IsOne ? left.Decimals : null, string.Empty, AnswerForm.Ratio);
    }

    private static AnswerText.Unreadable TooLarge(string text) => new(MarkReasons.Texts.OutOfRange(Shortened(text)));

    private static string Shortened(string text) => text.Length <= 24 ? text : $"{text[..23]}…";

    private static string Plain(string text)
    {
        const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
        Span<char> plain = stackalloc char[Math.Min(text.Length, LongestText + 40)];
        for (int i = 0; i < plain.Length; i++)
        {
            char c = text[i];
            int raised = Raised.IndexOf(c, StringComparison.Ordinal);
            plain[i] = raised >= 0 ? (char)('0' + raised) : c switch { '−' or '–' or '⁻' => '-', '⁺' => '+', '\u00A0' or '\u2009' or '\u202F' or '\t' => ' ', '∶' => ':', _ => c };
        }

        string trimmed = plain.ToString().Trim();
        return text.Length > plain.Length ? trimmed.PadRight(text.Length, '.') : trimmed;
    }

    [GeneratedRegex($@"^(?<a>{NumberPart})\s*(?<unit>[^\d\s.,:/+-][^\d]*(?:\d[^\d]*){{0,2}})?$", RegexOptions.CultureInvariant)]
    private static partial Regex DecimalPattern();

    [GeneratedRegex($@"^(?<a>{NumberPart})\s*/\s*(?<b>{NumberPart})\s*(?<unit>[a-zA-Z%]*)$", RegexOptions.CultureInvariant)]
    private static partial Regex FractionPattern();

    [GeneratedRegex($@"^(?<a>{NumberPart})\s*(?::|to)\s*(?<b>{NumberPart})$", RegexOptions.CultureInvariant)]
    private static partial Regex RatioPattern();

    /// <summary>One number with its digits.</summary>
    private sealed record Part(double Value, double HalfWidth, int Figures, int? Decimals)
    {
        /// <summary>Whether it is written as the bare digit 1, or as 1 with nothing but zeros behind.</summary>
        public bool IsOne => Value == 1 && Decimals == 0;

        public static Part? Of(string text)
        {
            Match match = PartPattern().Match(text);
            string digits = match.Groups["digits"].Value.Replace(',', '.').TrimEnd('.');
            int power = match.Groups["power"].Value is { Length: > 0 } raised ? int.Parse(raised, CultureInfo.InvariantCulture)
                : match.Groups["ten"].Success ? 1 : 0;
            int point = digits.IndexOf('.', StringComparison.Ordinal);
            int decimals = point < 0 ? 0 : digits.Length - point - 1;
            if (!double.TryParse($"{digits}e{power.ToString(CultureInfo.InvariantCulture)}", NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
                || !double.IsFinite(value) || (value == 0 && digits.AsSpan().ContainsAnyInRange('1', '9')))
            {
                return null;
            }

            int figures = digits.Replace(".", string.Empty, StringComparison.Ordinal).TrimStart('+', '-').TrimStart('0').Length;
            bool plain = !match.Groups["ten"].Success && !match.Groups["e"].Success;
            return new Part(value, 0.5 * Math.Pow(10, power - decimals), Math.Max(1, figures), plain ? decimals : null);
        }
    }

    [GeneratedRegex(@"^(?<digits>[+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+))(?:(?<e>[eE])(?<power>[+-]?\d+)|\s*(?<ten>[xX×*·]\s*10)\s*(?:\^?\s*\(?\s*(?<power>[+-]?\d+)\s*\)?)?)?$", RegexOptions.CultureInvariant)]
    private static partial Regex PartPattern();
}
