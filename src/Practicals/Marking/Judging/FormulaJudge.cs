using System.Globalization;
using System.Text.RegularExpressions;
using Calx.Chemistry.Formulas;
using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Words;

namespace Calx.Practicals.Marking.Judging;

/// <summary>
/// Judges a formula of two elements by the student's own ratio, as written or else from the readings: that of the simple whole numbers nearest to it. A
/// formula of larger numbers, however well they fit, reads more out of the data than is in them; the accepted one against the own ratio is forced.
/// </summary>
internal static partial class FormulaJudge
{
    /// <summary>Two formulas are equally near where the logarithms of their distances differ by no more than this. Judgement.</summary>
    private const double EquallyNear = 0.1;

    /// <summary>A ratio further from 1 than this is a slip, not a formula. Judgement.</summary>
    private const double FurthestRatio = 9.5;

    /// <summary>How near a larger-numbered formula lies to the ratio that was read too closely. Judgement.</summary>
    private const double ReadClosely = 0.06;

    /// <param name="answer">What is asked.</param>
    /// <param name="given">As written, not empty.</param>
    /// <param name="exact">The ratio from the readings, or not a number.</param>
    /// <param name="written">The ratio as the student wrote it, or not a number.</param>
    /// <param name="writtenIsRight">Whether that ratio follows from the readings.</param>
    public static Judged Of(JudgementAnswer.OfFormula answer, string given, double exact, double written, bool writtenIsRight)
    {
        double own = written > 0 ? written : exact;
        if (!(own > 0))
        {
            return Judged.NotMarked(MarkReasons.Texts.NoRatio);
        }

        string expected = Nearest(answer, own);
        if (Math.Max(own, 1 / own) > FurthestRatio)
        {
            return new Judged(new Verdict.Wrong(MarkReasons.Texts.NoFormulaFollows), null);
        }

        if (Counts(answer, given) is not (long First, long Second) counts)
        {
            return Formula.Parse(given.Trim()) is { Succeeded: true }
                ? Judged.Wrong(expected, given)
                : Judged.Unreadable(MarkReasons.Texts.FormulaExpected, expected);
        }

        return !Fits(answer, counts, own) ? Judged.Wrong(expected, given, IdeasOf(answer, counts, own))
            : new Judged(written > 0 && !writtenIsRight ? new Verdict.Carried() : new Verdict.Right(), expected);
    }

    private static IEnumerable<Idea> IdeasOf(JudgementAnswer.OfFormula answer, (long First, long Second) counts, double ratio)
    {
        if (Divisor(counts) > 1)
        {
            yield return KnownIdeas.NotSimplest;
        }

        if (counts == Accepted(answer))
        {
            yield return KnownIdeas.ForcedToAccepted;
        }

        if (Math.Max(counts.First, counts.Second) > answer.Simple && Distance(counts, ratio) <= ReadClosely)
        {
            yield return KnownIdeas.RatioOverRead;
        }

        if (Fits(answer, (counts.Second, counts.First), ratio))
        {
            yield return KnownIdeas.Inverted;
        }
    }

    private static bool Fits(JudgementAnswer.OfFormula answer, (long First, long Second) counts, double ratio) =>
        ratio > 0 && Simple(answer, ratio).Contains(counts) && Distance(counts, ratio) <= Simple(answer, ratio).Min(c => Distance(c, ratio)) + EquallyNear;

    private static string Nearest(JudgementAnswer.OfFormula answer, double ratio)
    {
        (long first, long second) = Simple(answer, ratio).MinBy(c => Distance(c, ratio));
        return $"{answer.First}{Count(first)}{answer.Second}{Count(second)}";
    }

    /// <summary>The formulas of small whole numbers, and where the ratio lies beyond them those of 1 and the whole number next to it.</summary>
    private static IEnumerable<(long First, long Second)> Simple(JudgementAnswer.OfFormula answer, double ratio)
    {
        long beyond = (long)Math.Round(Math.Max(ratio, 1 / ratio));
        return beyond <= answer.Simple ? Small(answer) : Small(answer).Append(ratio > 1 ? (beyond, 1) : (1, beyond));
    }

    private static IEnumerable<(long First, long Second)> Small(JudgementAnswer.OfFormula answer) =>
        from first in Enumerable.Range(1, answer.Simple)
        from second in Enumerable.Range(1, answer.Simple)
        where Divisor((first, second)) == 1
        orderby first + second
        select ((long)first, (long)second);

    private static (long First, long Second) Accepted(JudgementAnswer.OfFormula answer) =>
        (answer.Accepted.CountOf(answer.First.Composition[0].Element), answer.Accepted.CountOf(answer.Second.Composition[0].Element));

    /// <summary>How often each element stands in what was written; small letters for capitals are let pass. Null for anything but these two.</summary>
    private static (long First, long Second)? Counts(JudgementAnswer.OfFormula answer, string given)
    {
        string plain = string.Concat(given.Where(c => !char.IsWhiteSpace(c)).Select(c => c is >= '₀' and <= '₉' ? (char)('0' + (c - '₀')) : c));
        if (Formula.Parse(plain) is { Succeeded: true, Value: Formula { Charge: 0 } formula })
        {
            long first = formula.CountOf(answer.First.Composition[0].Element), second = formula.CountOf(answer.Second.Composition[0].Element);
            return formula.Composition.Count == 2 && first > 0 && second > 0 ? (first, second) : null;
        }

        foreach ((string one, string other, bool turned) in new[] { ($"{answer.First}", $"{answer.Second}", false), ($"{answer.Second}", $"{answer.First}", true) })
        {
            if (Pieces().Match(plain) is { Success: true } match
                && match.Groups["letters"].Value.Equals(one, StringComparison.OrdinalIgnoreCase) && match.Groups["more"].Value.Equals(other, StringComparison.OrdinalIgnoreCase))
            {
                return Ordered(match, turned);
            }

            if (plain.Equals(one + other, StringComparison.OrdinalIgnoreCase))
            {
                return (1, 1);
            }

            if (plain.StartsWith(one + other, StringComparison.OrdinalIgnoreCase) && long.TryParse(plain.AsSpan(one.Length + other.Length), NumberStyles.None, CultureInfo.InvariantCulture, out long last) && last > 0)
            {
                return turned ? (last, 1) : (1, last);
            }
        }

        return null;
    }

    private static (long First, long Second)? Ordered(Match match, bool turned)
    {
        long one = long.Parse(match.Groups["one"].Value, CultureInfo.InvariantCulture);
        long two = match.Groups["two"].Value is { Length: > 0 } digits ? long.Parse(digits, CultureInfo.InvariantCulture) : 1;
        return one == 0 || two == 0 ? null : turned ? (two, one) : (one, two);
    }

    private static double Distance((long First, long Second) counts, double ratio) => Math.Abs(Math.Log(ratio * counts.Second / counts.First));

    private static long Divisor((long First, long Second) counts)
    {
        (long a, long b) = counts;
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }

    private static string Count(long count) => count == 1 ? string.Empty : count.ToString(CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<letters>[a-zA-Z]{1,2})(?<one>\d{1,4})(?<more>[a-zA-Z]{1,2})(?<two>\d{0,4})$", RegexOptions.CultureInvariant)]
    private static partial Regex Pieces();
}
