using System.Globalization;

namespace Calx.App.Pages;

/// <summary>Days and times as people here write them, by this machine's clock.</summary>
public static class Dates
{
    /// <summary>Such as <c>25 November 2026</c>.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>Such as <c>25 November 2026</c>.</summary>
    public static string Day(DateTimeOffset time) => Day(DateOnly.FromDateTime(time.LocalDateTime));

    /// <summary>Such as <c>Wed 25 November</c>.</summary>
    public static string WeekDay(DateOnly day) => day.ToString("ddd d MMMM", CultureInfo.InvariantCulture);

    /// <summary>Such as <c>25 Nov 2026, 14:05</c>.</summary>
    public static string Time(DateTimeOffset time) => time.LocalDateTime.ToString("d MMM yyyy, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>As a form's date field has it.</summary>
    public static string ForField(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>This day by the program's clock.</summary>
    public static DateOnly Today(TimeProvider clock) => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);
}
