namespace Calx.App.Pages.Answers;

/// <summary>What is said of one answer.</summary>
/// <param name="Sentence">A sentence.</param>
/// <param name="Marks">Its marks, as '1 of 2', or null where they are not shown.</param>
public sealed record SaidOfAnswer(string Sentence, string? Marks);
