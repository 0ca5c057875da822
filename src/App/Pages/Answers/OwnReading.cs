namespace Calx.App.Pages.Answers;

/// <summary>A reading that a student works with.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Written">As written, with its unit.</param>
public sealed record OwnReading(string Label, string Written);
