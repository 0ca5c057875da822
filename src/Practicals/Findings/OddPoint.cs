using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Deciding;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>The odd result that is most worth talking about, with a question that leads to what happened and does not name
/// it.</summary>
internal static class OddPoint
{
    /// <summary>The point, or null where no result is odd.</summary>
    public static TalkingPoint? Of(ClassFindings findings)
    {
        GroupFindings[] odd = [.. findings.Groups.Where(g => g.IsAnomalous)];
        if (odd.Length == 0)
        {
            return null;
        }

        GroupFindings told = odd.OrderByDescending(Clearness).First();
        var texts = new TalkingTexts(findings.Language);
        string others = odd.Length == 1 ? texts.OneLeftOut : texts.SomeLeftOut((odd.Length - 1).InFigures());
        string question = Question(told.Diagnosis, texts.OddOpen);
        return new TalkingPoint(
            TalkingTopic.OddResult,
            texts.LookIntoNamed(new Wording(findings.Language).Group(told.Name), others, question),
            texts.LookInto(others, question),
            mentionsOdd: true);
    }

    /// <summary>How surely something other than chance is known to have happened: from the surest the class learns most.</summary>
    private static double Clearness(GroupFindings group) =>
        group.Diagnosis is null || group.Diagnosis.First.Cause == Causes.AsExpected ? 0 : group.Diagnosis.First.Probability;

    /// <summary>The student's question, unless it is an order at the bench rather than something to talk about.</summary>
    private static string Question(GroupDiagnosis? diagnosis, string open) => diagnosis switch
    {
        null => open,
        { Decision: Decision.Taken { Verdict: Verdict.CheckReading or Verdict.StopTellYourTeacher or Verdict.CannotTell } } => open,
        { First.Cause: Causes.AsExpected } => open,
        _ => diagnosis.ForStudent,
    };
}
