using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;

namespace Calx.Practicals.Model.Slips;

/// <summary>
/// How a slip of the pen turns what the balance shows into what is written, and back (docs/methods/causes.md). A kind of slip
/// that a display does not allow leaves its share to the others. All shares are judgement.
/// </summary>
internal static class PenSlips
{
    /// <summary>Whole grams by which a slip is out, with their shares: one gram is the commoner miscount.</summary>
    private static readonly (decimal Grams, double Share)[] WholeGrams = [(1, 0.35), (-1, 0.35), (10, 0.15), (-10, 0.15)];

    /// <summary>Digits before the point of what a school balance shows, below 1 kg: how many a wrong first digit may
    /// lose.</summary>
    private const int WholeDigits = 3;

    /// <summary>Every number that a slip may leave, with its probability; they add up to 1. A dropped zero leaves the number
    /// itself, with fewer decimals. One number may stand there several times, once for each slip that leads to it; no slip
    /// befalls a number below 0, which is there alone.</summary>
    /// <param name="displayed">What the balance shows, all decimals there.</param>
    /// <param name="shares">Of the kinds of slips.</param>
    public static IReadOnlyList<(WrittenNumber Written, double Probability)> Enumerate(WrittenNumber displayed, FaultEffect.Pen shares)
    {
        if (displayed.Value < 0)
        {
            return [(displayed, 1)];
        }

        DisplayDigits digits = DisplayDigits.Of(displayed.Value, displayed.Decimals);
        double possible = PossibleShare(digits, shares);
        var written = new List<(WrittenNumber Written, double Probability)>();
        int unlike = digits.UnlikePairs;
        for (int i = 0; unlike > 0 && i + 1 < digits.Digits.Length; i++)
        {
            if (digits.Digits[i] != digits.Digits[i + 1])
            {
                written.Add((Plain(digits.Swapped(i)), shares.Swapped / possible / unlike));
            }
        }

        for (int i = 0; i < digits.Digits.Length; i++)
        {
            for (char digit = '0'; digit <= '9'; digit++)
            {
                if (digit != digits.Digits[i])
                {
                    written.Add((Plain(digits.With(i, digit)), shares.WrongDigit / possible / (9.0 * digits.Digits.Length)));
                }
            }
        }

        double grams = PossibleGrams(displayed.Value);
        foreach ((decimal away, double share) in WholeGrams.Where(g => displayed.Value + g.Grams >= 0))
        {
            written.Add((Plain(DisplayDigits.Of(displayed.Value + away, displayed.Decimals)), shares.WholeGram / possible * share / grams));
        }

        if (HasZeroToDrop(digits))
        {
            written.Add((WithoutZeros(displayed), shares.DroppedZero / possible));
        }

        return written;
    }

    /// <summary>Writes one number with a slip: the one of <see cref="Enumerate"/> at which its probabilities, added up in its
    /// order, pass a number.</summary>
    /// <param name="displayed">What the balance shows, all decimals there.</param>
    /// <param name="shares">Of the kinds of slips.</param>
    /// <param name="even">Evenly drawn between 0 and 1.</param>
    public static WrittenNumber Write(WrittenNumber displayed, FaultEffect.Pen shares, double even)
    {
        if (displayed.Value < 0)
        {
            return displayed;
        }

        DisplayDigits digits = DisplayDigits.Of(displayed.Value, displayed.Decimals);
        double left = even * PossibleShare(digits, shares);
        int unlike = digits.UnlikePairs;
        if (unlike > 0 && left < shares.Swapped)
        {
            return Plain(digits.Swapped(digits.UnlikePair((int)(left / shares.Swapped * unlike))));
        }

        left -= unlike > 0 ? shares.Swapped : 0;
        if (left < shares.WrongDigit)
        {
            int slip = (int)(left / shares.WrongDigit * 9 * digits.Digits.Length);
            int place = Math.Min(slip / 9, digits.Digits.Length - 1);
            int digit = slip % 9;
            return Plain(digits.With(place, (char)('0' + digit + ('0' + digit >= digits.Digits[place] ? 1 : 0))));
        }

        left -= shares.WrongDigit;
        if (left < shares.WholeGram || !HasZeroToDrop(digits))
        {
            return OutByGrams(displayed, left / shares.WholeGram);
        }

        return WithoutZeros(displayed);
    }

    /// <summary>Every other number that the balance may have shown though this one is written, the likeliest first.</summary>
    /// <param name="written">What is written; zeros at its end may be missing.</param>
    /// <param name="step">Step of the display.</param>
    /// <param name="shares">Of the kinds of slips.</param>
    public static IReadOnlyList<SlipCandidate> Displayed(WrittenNumber written, decimal step, FaultEffect.Pen shares)
    {
        int decimals = new WrittenNumber(step).Decimals;
        if (written.Value < 0 || written.Decimals > decimals)
        {
            return [];
        }

        DisplayDigits whole = DisplayDigits.Of(written.Value, decimals);
        var found = new Dictionary<decimal, double>();
        for (int i = 0; i < whole.Digits.Length; i++)
        {
            NoteSwapped(whole, i);
            NoteWrong(whole, i);
        }

        // A first digit lost to a zero is not written: 20.48 with its first two digits swapped is 2.48, and 100.24 with its
        // first digit wrong may be 0.24.
        int most = Math.Max(1, WholeDigits - (whole.Digits.Length - decimals));
        for (int zeros = 1; zeros <= most; zeros++)
        {
            DisplayDigits longer = whole with { Digits = new string('0', zeros) + whole.Digits };
            NoteSwapped(longer, 0);
            NoteWrong(longer, 0);
        }

        foreach ((decimal grams, double share) in WholeGrams.Where(g => written.Value - g.Grams >= 0))
        {
            decimal shown = written.Value - grams;
            Note(DisplayDigits.Of(shown, decimals), shares.WholeGram * share / PossibleGrams(shown));
        }

        return
        [
            .. found.Select(f => new SlipCandidate(DisplayDigits.Of(f.Key, decimals).Written, f.Value))
                .OrderByDescending(c => c.Probability).ThenBy(c => c.Displayed.Value),
        ];

        void NoteSwapped(DisplayDigits digits, int first)
        {
            if (first + 1 < digits.Digits.Length)
            {
                DisplayDigits shown = digits.Swapped(first);
                Note(shown, shown.UnlikePairs == 0 ? 0 : shares.Swapped / shown.UnlikePairs);
            }
        }

        void NoteWrong(DisplayDigits digits, int place)
        {
            for (char digit = '0'; digit <= '9'; digit++)
            {
                Note(digits.With(place, digit), shares.WrongDigit / (9.0 * digits.Digits.Length));
            }
        }

        void Note(DisplayDigits shown, double share)
        {
            decimal value = shown.Value;
            if (share > 0 && shown.IsCanonical && value != written.Value && value % step == 0)
            {
                found[value] = found.GetValueOrDefault(value) + (share / PossibleShare(shown, shares));
            }
        }
    }

    private static double PossibleShare(DisplayDigits digits, FaultEffect.Pen shares) =>
        (digits.UnlikePairs > 0 ? shares.Swapped : 0) + shares.WrongDigit + shares.WholeGram
        + (HasZeroToDrop(digits) ? shares.DroppedZero : 0);

    private static WrittenNumber OutByGrams(WrittenNumber displayed, double even)
    {
        double left = even * PossibleGrams(displayed.Value);
        decimal away = 0;
        foreach ((decimal grams, double share) in WholeGrams)
        {
            if (displayed.Value + grams >= 0)
            {
                away = grams;
                if ((left -= share) < 0)
                {
                    break;
                }
            }
        }

        return Plain(DisplayDigits.Of(displayed.Value + away, displayed.Decimals));
    }

    private static double PossibleGrams(decimal displayed) => WholeGrams.Where(g => displayed + g.Grams >= 0).Sum(g => g.Share);

    private static bool HasZeroToDrop(DisplayDigits digits) => digits.Decimals > 0 && digits.Digits[^1] == '0';

    private static WrittenNumber Plain(DisplayDigits digits) => DisplayDigits.Of(digits.Value, digits.Decimals).Written;

    private static WrittenNumber WithoutZeros(WrittenNumber displayed)
    {
        string text = displayed.ToString().TrimEnd('0').TrimEnd('.');
        return new WrittenNumber(decimal.Parse(text, System.Globalization.CultureInfo.InvariantCulture));
    }
}
