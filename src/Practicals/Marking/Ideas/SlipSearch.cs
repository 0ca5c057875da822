using System.Globalization;
using Calx.Practicals.Marking.Written;

namespace Calx.Practicals.Marking.Ideas;

/// <summary>Digits exchanged or miscopied in an answer that was rightly worked out, and the readings of other groups.</summary>
internal static class SlipSearch
{
    /// <summary>Half of all slips of the pen exchange two neighbours, half change one digit. Judgement.</summary>
    private const double Half = 0.5;

    /// <summary>The right value with its digits as the student wrote them, if one slip makes the given one of it.</summary>
    public static IEnumerable<WeighedIdea> InAnswer(AnswerText.Number given, double right)
    {
        if (given.Form != AnswerForm.Decimal || given.Decimals is not int decimals || !double.IsFinite(right) || Math.Abs(right) > 1e9)
        {
            yield break;
        }

        string format = FormattableString.Invariant($"F{decimals}");
        string meant = Math.Abs(right).ToString(format, CultureInfo.InvariantCulture), wrote = Math.Abs(given.Value).ToString(format, CultureInfo.InvariantCulture);
        if (meant.Length != wrote.Length || meant == wrote)
        {
            yield break;
        }

        int[] different = [.. Enumerable.Range(0, meant.Length).Where(i => meant[i] != wrote[i])];
        string digits = meant.Replace(".", string.Empty, StringComparison.Ordinal);
        bool exchanged = different is [var a, var b] && meant[a] == wrote[b] && meant[b] == wrote[a] && meant[(a + 1)..b].All(c => c == '.');
        double weight = exchanged ? Half / Math.Max(1, digits.Length - 1) : different.Length == 1 ? Half / (9 * digits.Length) : 0;
        if (weight > 0)
        {
            yield return new WeighedIdea([KnownIdeas.CopiedDigit], $"{meant} written as {wrote}", right, KnownIdeas.CopiedDigit.Rate * weight, 0);
        }
    }

    /// <summary>The right formula with one reading whose neighbouring digits are exchanged.</summary>
    /// <param name="given">The wrong value.</param>
    /// <param name="readings">Readings by id, as written.</param>
    /// <param name="of">The right value when one reading is another.</param>
    public static IEnumerable<WeighedIdea> InReadings(
        AnswerText.Number given, IEnumerable<(string Id, string Written)> readings, Func<string, double, double> of)
    {
        (string Id, string Written)[] all = [.. readings];
        foreach ((string id, string written) in all)
        {
            string[] exchanged = [.. Exchanged(written)];
            foreach (string other in exchanged)
            {
                double value = of(id, double.Parse(other, CultureInfo.InvariantCulture));
                if (double.IsFinite(value) && given.CouldBe(value))
                {
                    double weight = KnownIdeas.CopiedDigit.Rate * Half / (all.Length * exchanged.Length);
                    yield return new WeighedIdea([KnownIdeas.CopiedDigit], $"{written} taken for {other}", value, weight, 0);
                }
            }
        }
    }

    /// <summary>The right formula with another group's readings.</summary>
    public static IEnumerable<WeighedIdea> OtherGroups(AnswerText.Number given, IReadOnlyList<(string Name, double Value)> others) =>
        others.Where(o => double.IsFinite(o.Value) && given.CouldBe(o.Value))
            .Select(o => new WeighedIdea([KnownIdeas.OtherGroup], $"the readings of {o.Name}", o.Value, KnownIdeas.OtherGroup.Rate / others.Count, 0));

    private static IEnumerable<string> Exchanged(string written)
    {
        int[] digits = [.. Enumerable.Range(0, written.Length).Where(i => char.IsAsciiDigit(written[i]))];
        for (int i = 1; i < digits.Length; i++)
        {
            (int a, int b) = (digits[i - 1], digits[i]);
            if (written[a] != written[b])
            {
                char[] changed = written.ToCharArray();
                (changed[a], changed[b]) = (changed[b], changed[a]);
                yield return new string(changed);
            }
        }
    }
}
