using Calx.App.Live;
using Calx.Papers.Week;

namespace Calx.App.Pages.Week;

/// <summary>The technician's week.</summary>
/// <param name="Found">The week.</param>
/// <param name="Today">This day.</param>
/// <param name="Fault">What was wrong with the day asked for, or null.</param>
public sealed record WeekModel(WeekOfRecords Found, DateOnly Today, string? Fault)
{
    /// <summary>The week.</summary>
    public TechnicianWeek Week => Found.Week;

    /// <summary>Address of the week that begins on a day.</summary>
    public static string Address(DateOnly from, string file = "") => $"/week{file}?from={Dates.ForField(from)}";
}
