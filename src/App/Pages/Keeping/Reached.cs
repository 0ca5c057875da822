namespace Calx.App.Pages.Keeping;

/// <summary>A device that reached this program.</summary>
/// <param name="From">Its address in the network.</param>
/// <param name="Host">The address that it used.</param>
/// <param name="At">When.</param>
public sealed record Reached(string From, string Host, DateTimeOffset At);
