using System.Globalization;
using Calx.App.Output;
using Calx.App.Pages;
using Calx.Papers.Documents;
using Calx.Papers.Handouts;
using Calx.Papers.Marks;
using Calx.Papers.Roster;
using Calx.Practicals.Definition;

namespace Calx.App.Input;

/// <summary>What is written of a marked class, as it was asked for in words.</summary>
/// <param name="Xlsx">The workbook's path as written, or null.</param>
/// <param name="Slips">The path of the slips, or null.</param>
/// <param name="Roster">The path of the table for a school system, or null.</param>
internal sealed record MarkOutputWords(string? Xlsx, string? Slips, string? Roster)
{
    /// <summary>The forms that slips have.</summary>
    public static IReadOnlyList<string> SlipForms { get; } = [".html", ".docx", ".pdf"];

    /// <summary>The class, or null.</summary>
    public string? ClassName { get; init; }

    /// <summary>The lesson's day as written, or null.</summary>
    public string? Date { get; init; }

    /// <summary>The school, or null.</summary>
    public string? School { get; init; }

    /// <summary>What the school system calls the class, or null.</summary>
    public string? ClassId { get; init; }

    /// <summary>What the school system calls the grading period, or null.</summary>
    public string? TermId { get; init; }

    /// <summary>What tells the lesson from all others; null for practical, class and day.</summary>
    public string? Lesson { get; init; }

    /// <summary>US Letter instead of A4.</summary>
    public bool IsLetter { get; init; }

    /// <summary>Letters of 18 point.</summary>
    public bool IsLarge { get; init; }

    /// <summary>Colour of the sheet, or null.</summary>
    public string? Tint { get; init; }

    /// <summary>The same for a lesson of the records: its class and day stand where none were said.</summary>
    public MarkOutputWords OfLesson(string id, string? className, DateOnly day) => this with
    {
        Lesson = id, ClassName = ClassName ?? className, Date = Date ?? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
    };

    /// <summary>The paths as written, with the option that named each.</summary>
    public IEnumerable<(string Option, string Path)> Paths => new[] { ("--xlsx", Xlsx), ("--slips", Slips), ("--roster", Roster) }
        .Where(p => p.Item2 is not null).Select(p => (p.Item1, p.Item2!));

    /// <summary>The lesson's day, or null where what was written is none.</summary>
    public DateOnly? Day(DateOnly today) => Date is null ? today
        : DateOnly.TryParseExact(Date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) && day.Year is > 1900 and < 9000 ? day : null;

    /// <summary>What cannot be done, a line each.</summary>
    public IEnumerable<string> Faults()
    {
        if (Day(DateOnly.MinValue) is null)
        {
            yield return $"--date: '{Date}' is no day; a date such as 2026-11-26 was expected";
        }

        if (Slips is not null && !SlipForms.Contains(Path.GetExtension(Slips).ToLowerInvariant()))
        {
            yield return $"--slips: '{Slips}' names no form; expected a name that ends in {string.Join(" or ", SlipForms)}";
        }

        if (Tint is not null && !(Tint.Length == 6 && Tint.All(char.IsAsciiHexDigit)))
        {
            yield return $"--tint: '{Tint}' is no colour; six hexadecimal digits were expected, such as fff4d6";
        }

        if (Roster is not null && (ClassName is null || (Lesson is null && Date is null)))
        {
            yield return "--roster: of which class and day? A school system tells lessons apart by them: give --class and --date, such as --class 9F --date 2026-11-26";
        }

        foreach (IGrouping<string, (string Option, string Path)> same in Paths.GroupBy(p => p.Path).Where(g => g.Count() > 1))
        {
            yield return $"{string.Join(" and ", same.Select(p => p.Option))}: both name '{same.Key}'; expected a file each";
        }
    }

    /// <summary>Practical, class and day as papers have them.</summary>
    public MarksSetting Setting(Practical practical, Surroundings surroundings)
    {
        DateOnly today = Dates.Today(surroundings.Clock);
        return new(
            practical,
            new PaperOccasion(ClassName, Dates.Day(Day(today) ?? today), null, null, null, Dates.Day(today)),
            new PaperLook(IsLetter ? SheetSize.Letter : SheetSize.A4, IsLarge, Tint?.ToLowerInvariant()));
    }

    /// <summary>The same as a school system is told.</summary>
    public RosterAbout About(Practical practical, Surroundings surroundings)
    {
        DateTimeOffset now = surroundings.Clock.GetLocalNow();
        DateOnly day = Day(DateOnly.FromDateTime(now.DateTime)) ?? DateOnly.FromDateTime(now.DateTime);
        string lesson = Lesson ?? $"{practical.Id} {ClassName} {Dates.ForField(day)}";
        return new(School ?? string.Empty, ClassName ?? string.Empty, lesson, practical.Title, day, now) { ClassSourcedId = ClassId, GradingPeriodSourcedId = TermId };
    }
}
