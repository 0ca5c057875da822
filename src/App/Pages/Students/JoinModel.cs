namespace Calx.App.Pages.Students;

/// <summary>The page on which a device joins a lesson.</summary>
/// <param name="Typed">What was typed, to be put right.</param>
/// <param name="Fault">What was wrong, or null.</param>
/// <param name="HasSeat">Whether the device is in a lesson already.</param>
public sealed record JoinModel(string Typed, string? Fault, bool HasSeat);
