namespace Calx.App.Pages.Answers;

/// <summary>One of the answers to choose from.</summary>
/// <param name="Id">As it is kept.</param>
/// <param name="Label">As it is read.</param>
public sealed record AnswerChoice(string Id, string Label);
