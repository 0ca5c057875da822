namespace Calx.App.Pages.Keeping;

/// <summary>A file that was written into the data folder, or why it was not.</summary>
/// <param name="Path">Where it is, or null.</param>
/// <param name="Fault">Why there is none, in a sentence, or null.</param>
public sealed record SavedFile(string? Path, string? Fault);
