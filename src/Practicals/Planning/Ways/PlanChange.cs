using Calx.Practicals.Clock;

namespace Calx.Practicals.Planning.Ways;

/// <summary>One thing that a teacher could do otherwise.</summary>
/// <param name="Id">Which: <c>prepared</c>, <c>balances+1</c>, <c>moved:brief</c> and so on.</param>
/// <param name="Label">The change, for people.</param>
/// <param name="Cost">What it costs, for people.</param>
/// <param name="Subject">What it changes: of several changes of one subject a plan takes one at most.</param>
/// <param name="Effort">How much it asks of people, in points: 1 for what a teacher just does, 2 for what needs somebody or something
/// else, 5 for another lesson (judgement).</param>
/// <param name="Apply">The plan with it.</param>
internal sealed record PlanChange(string Id, string Label, string Cost, string Subject, int Effort, Func<PlanSettings, PlanSettings> Apply);
