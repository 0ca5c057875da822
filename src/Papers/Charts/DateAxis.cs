using System.Globalization;
using Calx.Papers.Texts;

namespace Calx.Papers.Charts;

/// <summary>Days from left to right, with ticks where a calendar has them: years, months or single days.</summary>
internal sealed class DateAxis
{
    private const int MostTicks = 7;

    /// <summary>A span up to this many days has days for ticks.</summary>
    private const int MostDays = 45;

    /// <summary>Free room at either end, as a part of the span, so that no point lies on the frame.</summary>
    private const double Margin = 0.04;

    private static readonly int[] DaySteps = [1, 2, 7, 14];
    private static readonly int[] MonthSteps = [1, 2, 3, 6, 12, 24, 60, 120, 600];

    private readonly double low;
    private readonly double high;
    private readonly double from;
    private readonly double to;

    private readonly ChartTexts texts;
    private readonly string[] months;

    /// <summary>Lays out an axis that holds all days; at least one.</summary>
    public DateAxis(IReadOnlyList<DateOnly> days, double from, double to, ChartTexts texts)
    {
        this.texts = texts;
        months = texts.MonthNames.Split(' ');
        this.from = from;
        this.to = to;
        DateOnly first = days.Min();
        DateOnly last = days.Max();
        double room = Math.Max(1, Margin * (last.DayNumber - first.DayNumber));
        low = first.DayNumber - room;
        high = last.DayNumber + room;
        Ticks = [.. last.DayNumber - first.DayNumber <= MostDays ? InDays(first, last) : InMonths(first, last)];
    }

    /// <summary>The ticks with their texts.</summary>
    public IReadOnlyList<(DateOnly Day, string Text)> Ticks { get; }

    /// <summary>Where a day lies on paper.</summary>
    public double At(DateOnly day) => from + ((day.DayNumber - low) / (high - low) * (to - from));

    private IEnumerable<(DateOnly, string)> InDays(DateOnly first, DateOnly last)
    {
        int step = DaySteps.First(s => (last.DayNumber - first.DayNumber) / s < MostTicks);
        for (DateOnly day = first; day <= last; day = day.AddDays(step))
        {
            yield return (day, texts.DayAndMonth(Shown.InDigits(day.Day), months[day.Month - 1]));
        }
    }

    private static string Year(DateOnly day) => day.ToString("yyyy", CultureInfo.InvariantCulture);

    private IEnumerable<(DateOnly, string)> InMonths(DateOnly first, DateOnly last)
    {
        int count = (12 * (last.Year - first.Year)) + last.Month - first.Month;
        int step = MonthSteps.First(s => count / s < MostTicks);
        int month = (12 * first.Year) + first.Month - 1;
        for (month -= month % step; month <= (12 * last.Year) + last.Month; month += step)
        {
            var day = new DateOnly(month / 12, (month % 12) + 1, 1);
            if (day.DayNumber >= low && day.DayNumber <= high)
            {
                yield return (day, step < 12 ? texts.MonthAndYear(months[day.Month - 1], Year(day)) : Year(day));
            }
        }
    }
}
