namespace Calx.Papers.Handouts;

/// <summary>For which lesson papers are made. The library has no clock and knows no class: what is not said stays blank.</summary>
/// <param name="ClassName">The class, or null.</param>
/// <param name="Date">The lesson's date as printed, or null.</param>
/// <param name="Room">The room, or null.</param>
/// <param name="Period">The period or time, or null.</param>
/// <param name="Teacher">Who teaches, or null.</param>
/// <param name="Printed">The date of printing, as printed, or null.</param>
public sealed record PaperOccasion(string? ClassName, string? Date, string? Room, string? Period, string? Teacher, string? Printed)
{
    /// <summary>Nothing is said.</summary>
    public static PaperOccasion Unsaid { get; } = new(null, null, null, null, null, null);
}
