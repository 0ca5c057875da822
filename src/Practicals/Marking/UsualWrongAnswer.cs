using Calx.Practicals.Definition;
using Calx.Practicals.Marking.Ideas;

namespace Calx.Practicals.Marking;

/// <summary>A wrong value that students come to, worked from given readings.</summary>
/// <param name="Answer">The answer that was asked for.</param>
/// <param name="Value">The wrong value.</param>
/// <param name="Ideas">What it reveals, the most usual first: more than one where several ways of working end at the same value.</param>
public sealed record UsualWrongAnswer(AnswerDefinition Answer, double Value, IReadOnlyList<Idea> Ideas);
