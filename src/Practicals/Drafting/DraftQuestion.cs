namespace Calx.Practicals.Drafting;

/// <summary>One plain question whose answer goes into a draft.</summary>
/// <param name="Key">The word by which a file of answers and a form call it.</param>
/// <param name="Ask">The question.</param>
/// <param name="Hint">What else helps to answer it; may be empty.</param>
/// <param name="Choices">The words that may be answered, or none where it is a text or a number.</param>
/// <param name="Default">What is taken where nothing is answered.</param>
public sealed record DraftQuestion(string Key, string Ask, string Hint, IReadOnlyList<DraftOption> Choices, string Default);
