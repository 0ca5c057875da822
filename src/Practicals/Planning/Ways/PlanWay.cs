using Calx.Practicals.Clock;

namespace Calx.Practicals.Planning.Ways;

/// <summary>A plan that may fit where this one does not: one change or several together.</summary>
/// <param name="Ids">Which changes.</param>
/// <param name="Changes">The changes, for people.</param>
/// <param name="Costs">What each costs, for people.</param>
/// <param name="Effort">How much they ask of people together, in points (docs/methods/planning.md).</param>
/// <param name="Settings">The plan.</param>
/// <param name="Fits">Probability that it fits the lesson.</param>
/// <param name="ClassRight">Probability that the class reaches the conclusion it reaches least probably.</param>
/// <param name="ClassRightNow">The same of the plan as it is.</param>
public sealed record PlanWay(
    IReadOnlyList<string> Ids,
    IReadOnlyList<string> Changes,
    IReadOnlyList<string> Costs,
    int Effort,
    PlanSettings Settings,
    Share Fits,
    double ClassRight,
    double ClassRightNow)
{
    /// <summary>A twentieth of the conclusion's probability weighs as much as a point of effort (judgement).</summary>
    private const double PointsForConclusion = 20;

    /// <summary>Effort and lost conclusion together, in points: by it ways are ranked.</summary>
    public double Burden => Effort + (PointsForConclusion * Math.Max(0, ClassRightNow - ClassRight));
}
