using System.Globalization;
using Calx.Measurement.Numbers;

namespace Calx.Practicals.Model.Slips;

/// <summary>The digits of a display without the point: '24.31' is 2, 4, 3, 1 with two of them decimals.</summary>
internal readonly record struct DisplayDigits(string Digits, int Decimals)
{
    /// <summary>Digits of a number, at least one before the point and <paramref name="decimals"/> behind it.</summary>
    public static DisplayDigits Of(decimal value, int decimals)
    {
        string text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return new DisplayDigits(text.Replace(".", string.Empty, StringComparison.Ordinal), decimals);
    }

    /// <summary>The number that the digits are.</summary>
    public decimal Value
    {
        get
        {
            decimal scaled = decimal.Parse(Digits, NumberStyles.None, CultureInfo.InvariantCulture);
            return scaled / Power;
        }
    }

    /// <summary>As it stands on the display.</summary>
    public WrittenNumber Written => new(decimal.Parse(
        Digits[..^Decimals] + (Decimals == 0 ? string.Empty : "." + Digits[^Decimals..]), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture));

    /// <summary>Whether a display shows them so: no zero before the units.</summary>
    public bool IsCanonical => Digits.Length == Decimals + 1 || Digits[0] != '0';

    /// <summary>How many neighbours differ.</summary>
    public int UnlikePairs
    {
        get
        {
            int count = 0;
            for (int i = 0; i + 1 < Digits.Length; i++)
            {
                count += Digits[i] != Digits[i + 1] ? 1 : 0;
            }

            return count;
        }
    }

    /// <summary>Where a pair of neighbours that differ begins.</summary>
    /// <param name="number">Which of them, from 0.</param>
    public int UnlikePair(int number)
    {
        int found = 0;
        for (int i = 0; i + 1 < Digits.Length; i++)
        {
            if (Digits[i] != Digits[i + 1])
            {
                found = i;
                if (number-- == 0)
                {
                    break;
                }
            }
        }

        return found;
    }

    /// <summary>With two neighbours swapped.</summary>
    public DisplayDigits Swapped(int first)
    {
        char[] digits = Digits.ToCharArray();
        (digits[first], digits[first + 1]) = (digits[first + 1], digits[first]);
        return this with { Digits = new string(digits) };
    }

    /// <summary>With one digit changed.</summary>
    public DisplayDigits With(int place, char digit)
    {
        char[] digits = Digits.ToCharArray();
        digits[place] = digit;
        return this with { Digits = new string(digits) };
    }

    private decimal Power
    {
        get
        {
            decimal power = 1;
            for (int i = 0; i < Decimals; i++)
            {
                power *= 10;
            }

            return power;
        }
    }
}
