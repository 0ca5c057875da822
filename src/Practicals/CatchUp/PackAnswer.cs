using Calx.Practicals.Definition;

namespace Calx.Practicals.CatchUp;

/// <summary>An answer worked from a student's own readings, for one who stopped after a certain heating.</summary>
/// <param name="Heating">After which heating, from 1.</param>
/// <param name="Answer">The answer.</param>
/// <param name="Value">Its value, unrounded, in the answer's unit.</param>
/// <param name="Low">Least value that a right working gives: docs/methods/catch-up.md.</param>
/// <param name="High">Greatest.</param>
public sealed record PackAnswer(int Heating, AnswerDefinition Answer, double Value, double Low, double High);
