namespace Calx.App.Pages.Answers;

/// <summary>What a student reads of the own answers: sentences that tell no value, and marks only once the teacher has opened them.</summary>
/// <param name="ByQuestion">By the question's id.</param>
/// <param name="Whole">Of all of them together, or null.</param>
/// <param name="Marks">The marks of all together, as '11 of 14', or null.</param>
public sealed record StudentFeedback(IReadOnlyDictionary<string, SaidOfAnswer> ByQuestion, string? Whole, string? Marks);
