namespace Calx.App.Pages.Marking;

/// <summary>Where the teacher is among the answers in words.</summary>
/// <param name="At">Key of the one to be shown, or null for the next that waits.</param>
/// <param name="After">Key of the one behind which to go on, or null for the beginning.</param>
/// <param name="Only">Id of the one question that is looked at, or null for all.</param>
public sealed record WordPlace(string? At, string? After, string? Only);
