using System.Globalization;
using Calx.Papers.Handouts;
using Calx.Papers.Texts;

namespace Calx.Papers.Week;

/// <summary>What the lessons of a week want from the technician: a day at a time, what is wanted at one time, and what the week uses up.</summary>
public sealed class TechnicianWeek
{
    private readonly IReadOnlyList<WeekLesson> lessons;
    private readonly int? balances;
    private readonly PaperLanguage language;
    private readonly WeekTexts texts;

    /// <summary>Puts a week together.</summary>
    /// <param name="from">Its first day; it has seven.</param>
    /// <param name="lessons">Lessons; those of other weeks are left out.</param>
    /// <param name="balances">How many balances the school has, or null where that is not known.</param>
    /// <param name="language">The language in which it tells them; null for British English.</param>
    public TechnicianWeek(DateOnly from, IReadOnlyList<WeekLesson> lessons, int? balances = null, PaperLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(lessons);
        From = from;
        this.balances = balances;
        this.language = language ?? PaperLanguage.BritishEnglish;
        texts = new WeekTexts(this.language);
        this.lessons = [.. lessons.Where(l => l.Date >= from && l.Date <= To)];
        Days = [.. this.lessons.GroupBy(l => l.Date).OrderBy(d => d.Key).Select(d => new WeekDay(d.Key, WeekDay.InOrder(d), this.language))];
    }

    /// <summary>The Monday of a day's week.</summary>
    public static DateOnly MondayOf(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + 6) % 7));

    /// <summary>Its first day.</summary>
    public DateOnly From { get; }

    /// <summary>Its last day.</summary>
    public DateOnly To => From.AddDays(6);

    /// <summary>The days that have lessons, in order.</summary>
    public IReadOnlyList<WeekDay> Days { get; }

    /// <summary>What is measured out in the week, spares as each requisition has them.</summary>
    public IReadOnlyList<WeekItem> Chemicals =>
    [
        .. lessons.SelectMany(l => l.Kit.Where(k => k.Item.Need.Unit is not null).Select(k => (Lesson: l, Kit: k)))
            .GroupBy(k => (k.Kit.Item.Label, k.Kit.Item.Need.Unit))
            .Select(same => new WeekItem(
                same.Key.Label,
                same.Sum(k => k.Kit.Total),
                same.Key.Unit,
                [.. same.Select(k => $"{DayOf(k.Lesson.Date, language)}: {k.Lesson.NameIn(language)}").Distinct()],
                same.Select(k => k.Lesson.Stock.LengthInMetres(k.Kit)).Aggregate((double?)0, (sum, metres) => sum + metres))),
    ];

    /// <summary>Where lessons of one period together want more than is known to be there, or whether they do cannot be known: a sentence each.</summary>
    public IReadOnlyList<string> Warnings => [.. Days.SelectMany(Unsaid), .. Days.SelectMany(TooMany)];

    /// <summary>How a day stands on the sheet, such as <c>Thursday 26 November</c>.</summary>
    /// <param name="day">The day.</param>
    /// <param name="language">The language; null for British English.</param>
    public static string DayOf(DateOnly day, PaperLanguage? language = null)
    {
        WeekTexts texts = new(language ?? PaperLanguage.BritishEnglish);
        return texts.Day(texts.DayNames.Split(' ')[(int)day.DayOfWeek], Sentences.Count(day.Day), texts.MonthNames.Split(' ')[day.Month - 1]);
    }

    /// <summary>The same week in another language.</summary>
    internal TechnicianWeek In(PaperLanguage other) => other == language ? this : new(From, lessons, balances, other);

    private IEnumerable<string> Unsaid(WeekDay day) =>
        day.Lessons.Count(l => !l.IsCover) > 1 && day.Lessons.Any(l => !l.IsCover && l.Period is null)
            ? [texts.NoPeriod(DayOf(day.Date, language))] : [];

    /// <summary>What is known: the pieces that a lesson's plan says there are, and the balances of the school.</summary>
    private IEnumerable<string> TooMany(WeekDay day)
    {
        foreach (WeekLesson[] together in day.Lessons.Where(l => l.Period is not null && !l.IsCover).GroupBy(l => l.Period!).Select(p => p.ToArray()).Where(p => p.Length > 1))
        {
            string when = DayOf(day.Date, language);
            string names = together.Select(l => l.NameIn(language)).Aggregate(new SharedTexts(language).And);
            foreach (var item in together.SelectMany(l => l.Kit.Where(k => k.Item.Need.Unit is null).Select(k => (Lesson: l, Kit: k))).GroupBy(k => k.Kit.Item.Label))
            {
                int[] there = [.. item.Where(k => k.Lesson.Plan.Kit.ContainsKey(k.Kit.Item.Id)).Select(k => k.Lesson.Plan.Kit[k.Kit.Item.Id])];
                // A plan that says how many there are uses no more: its groups take turns.
                double wanted = item.Sum(k => Math.Min(k.Kit.Total, k.Lesson.Plan.Kit.GetValueOrDefault(k.Kit.Item.Id, int.MaxValue)));
                if (there.Length > 0 && wanted > there.Max())
                {
                    yield return texts.TooManyPieces(when, names, wanted.ToString("0", CultureInfo.InvariantCulture), item.Key, Sentences.Count(there.Max()));
                }
            }

            int weighing = together.Sum(l => l.Plan.Balances.Count);
            if (balances is int known && weighing > known)
            {
                yield return texts.TooManyBalances(when, names, Sentences.Count(weighing), Sentences.Count(known));
            }
        }
    }
}
