using System.Globalization;
using Calx.Papers.Reports;
using Calx.Papers.Texts;
using Calx.Practicals.Definition;

namespace Calx.Papers.Week;

/// <summary>A day of a technician's week.</summary>
public sealed class WeekDay
{
    private readonly PaperLanguage language;

    internal WeekDay(DateOnly date, IReadOnlyList<WeekLesson> lessons, PaperLanguage language) => (Date, Lessons, this.language) = (date, lessons, language);

    /// <summary>The day.</summary>
    public DateOnly Date { get; }

    /// <summary>Its lessons in the order of their periods; those that say none come last.</summary>
    public IReadOnlyList<WeekLesson> Lessons { get; }

    /// <summary>What is put out: pieces as many as are wanted at one time, and what is measured out for all of its lessons.</summary>
    public IReadOnlyList<WeekItem> Items =>
    [
        .. Lessons.SelectMany(l => l.Kit.Select(k => (Lesson: l, Kit: k))).GroupBy(k => (k.Kit.Item.Label, k.Kit.Item.Need.Unit)).Select(same => new WeekItem(
            same.Key.Label,
            same.Key.Unit is not null ? same.Sum(k => k.Kit.Total) : AtOnce(same.Select(k => (k.Lesson, k.Kit.Total))),
            same.Key.Unit,
            [.. same.Select(k => k.Lesson.NameIn(language)).Distinct()])),
    ];

    /// <summary>What is prepared, a sentence each, with its minutes, rounded up.</summary>
    public IReadOnlyList<(string Say, int Minutes)> Preparation =>
    [
        .. Lessons.SelectMany(l => l.Preparation.Select(p => (Text.Capital(p.Step.Say) + (l.NameIn(language) is { Length: > 0 } name ? $" ({name})" : ""), (int)Math.Ceiling(p.Minutes)))),
    ];

    /// <summary>Minutes of preparation for all of the day's lessons.</summary>
    public int PreparationInMinutes => Preparation.Sum(p => p.Minutes);

    /// <summary>What is still hot when a class leaves, a sentence a lesson.</summary>
    public IReadOnlyList<string> Hot =>
    [
        .. Lessons.Where(l => l.LeavesHotThings).Select(l => new WeekTexts(language).Hot(
            l.NameIn(language) is { Length: > 0 } name ? Text.Capital(name) : l.Plan.Practical.Title,
            l.Plan.Practical.Classroom.GasOffInMinutes.ToString("0.#", CultureInfo.InvariantCulture))),
    ];

    /// <summary>Lessons of one period are at the same time. One that says no period is taken to be at no other's time: <see cref="TechnicianWeek.Warnings"/> says so.</summary>
    internal static double AtOnce(IEnumerable<(WeekLesson Lesson, double Amount)> wanted) =>
        wanted.GroupBy(w => w.Lesson.Period is string period ? (object)period : w.Lesson).Max(time => time.Sum(w => w.Amount));

    /// <summary>A day's lessons by period, a number before a word.</summary>
    internal static IReadOnlyList<WeekLesson> InOrder(IEnumerable<WeekLesson> lessons) =>
    [
        .. lessons.OrderBy(l => l.Period is null).ThenBy(l => Number(l.Period)).ThenBy(l => l.Period, StringComparer.Ordinal)
            .ThenBy(l => l.Occasion.Room, StringComparer.Ordinal).ThenBy(l => l.Occasion.ClassName, StringComparer.Ordinal),
    ];

    /// <summary>The number with which a period begins, hours and minutes as such: 3, P3 and 10:40 are put in order.</summary>
    private static double Number(string? period)
    {
        string digits = new([.. (period ?? "").SkipWhile(c => !char.IsAsciiDigit(c)).TakeWhile(c => char.IsAsciiDigit(c) || c is ':' or '.')]);
        return double.TryParse(digits.Replace(':', '.').TrimEnd('.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double number) ? number : double.MaxValue;
    }
}
