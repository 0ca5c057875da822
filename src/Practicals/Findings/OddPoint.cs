using System.Globalization;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Findings;

/// <summary>The odd result that is most worth talking about, with a question that leads to what happened and does not name
/// it.</summary>
internal static class OddPoint
{
    private const string Open = "Which of its weighings does not go with the others, and what could have made it so?";

    /// <summary>The point, or null where no result is odd.</summary>
    public static TalkingPoint? Of(ClassFindings findings)
    {
        GroupFindings[] odd = [.. findings.Groups.Where(g => g.IsAnomalous)];
        if (odd.Length == 0)
        {
            return null;
        }

        GroupFindings told = odd.OrderByDescending(Clearness).First();
        string others = odd.Length == 1 ? "It is left out of the class's value until it is explained."
            : string.Create(CultureInfo.InvariantCulture, $"It and {odd.Length - 1} more are left out of the class's value until they are explained.");
        string question = Question(told.Diagnosis);
        return new TalkingPoint(
            TalkingTopic.OddResult,
            $"Result to look into: {GroupReadings.InSentence(told.Name)}. {others} {question}",
            $"Result to look into: one group's. {others} {question}",
            mentionsOdd: true);
    }

    /// <summary>How surely something other than chance is known to have happened: from the surest the class learns most.</summary>
    private static double Clearness(GroupFindings group) =>
        group.Diagnosis is null || group.Diagnosis.First.Cause == Causes.AsExpected ? 0 : group.Diagnosis.First.Probability;

    /// <summary>The student's question, unless it is an order at the bench rather than something to talk about.</summary>
    private static string Question(GroupDiagnosis? diagnosis) => diagnosis switch
    {
        null => Open,
        { Decision: Decision.Taken { Verdict: Verdict.CheckReading or Verdict.StopTellYourTeacher or Verdict.CannotTell } } => Open,
        { First.Cause: Causes.AsExpected } => Open,
        _ => diagnosis.ForStudent,
    };
}
