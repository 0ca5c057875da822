using Calx.Practicals.Definition;

namespace Calx.Practicals.Planning;

/// <summary>What the groups of a plan will probably work out for one answer.</summary>
/// <param name="Answer">The answer.</param>
/// <param name="Worked">Its value from the readings to expect, unrounded, in the answer's unit.</param>
/// <param name="Low">2.5 of 100 groups lie below, whose faults count among them.</param>
/// <param name="High">2.5 of 100 groups lie above.</param>
public sealed record ExpectedAnswer(AnswerDefinition Answer, double Worked, double Low, double High);
