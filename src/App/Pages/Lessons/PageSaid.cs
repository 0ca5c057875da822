namespace Calx.App.Pages.Lessons;

/// <summary>What a page says of the change that led to it.</summary>
/// <param name="Done">What was done, or null.</param>
/// <param name="Fault">What was wrong, or null.</param>
public sealed record PageSaid(string? Done, string? Fault);
