using Calx.Papers.Texts;

namespace Calx.Papers.Handouts;

/// <summary>For which lesson papers are made. The library has no clock and knows no class: what is not said stays blank.</summary>
/// <param name="ClassName">The class, or null.</param>
/// <param name="Date">The lesson's date as printed, or null.</param>
/// <param name="Room">The room, or null.</param>
/// <param name="Period">The period or time, or null.</param>
/// <param name="Teacher">Who teaches, or null.</param>
/// <param name="Printed">The date of printing, as printed, or null.</param>
/// <param name="IsInvented">Whether class and data are made up, which then stands on every page.</param>
public sealed record PaperOccasion(
    string? ClassName, string? Date, string? Room, string? Period, string? Teacher, string? Printed, bool IsInvented = false)
{
    /// <summary>A period in a sentence: a bare number is called a period, a time or a name stays as it is.</summary>
    /// <param name="period">The period, or null.</param>
    /// <param name="language">The language; null for British English.</param>
    public static string InWords(string? period, PaperLanguage? language = null) => period is { Length: > 0 } && period.All(char.IsAsciiDigit)
        ? new WeekTexts(language ?? PaperLanguage.BritishEnglish).Period(period) : period ?? "";

    /// <summary>Nothing is said.</summary>
    public static PaperOccasion Unsaid { get; } = new(null, null, null, null, null, null);
}
