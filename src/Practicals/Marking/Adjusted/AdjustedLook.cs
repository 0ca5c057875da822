namespace Calx.Practicals.Marking.Adjusted;

/// <summary>Something that looks as if it had been adjusted. For the teacher's eyes only: a question to ask, never an accusation, for chance does it too.</summary>
/// <param name="Student">Whose, or null where it is about the whole class.</param>
/// <param name="What">Id of the answer or the reading.</param>
/// <param name="Sentence">What is to be seen and what could be asked.</param>
/// <param name="Chance">How often chance alone would do it, 0 to 1: one such number or class in so many.</param>
public sealed record AdjustedLook(string? Student, string What, string Sentence, double Chance);
