using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>
/// Two sentences for the student: a question that leads to the cause without naming it, and what to think or do next. No
/// digits, no probabilities, no accepted value, nothing to touch or smell.
/// </summary>
internal static class StudentWords
{
    /// <summary>Says it.</summary>
    public static string Of(CausePosterior posterior, Decision decision)
    {
        var texts = new StudentTexts(posterior.Language);
        switch (decision)
        {
            case Decision.Taken { Verdict: Verdict.StopTellYourTeacher }:
                return texts.Stop;
            case Decision.Taken { Verdict: Verdict.CheckReading }:
                return texts.TypeAll(new Wording(posterior.Language).Decimals(Decimals(posterior)));
            case Decision.Taken { Verdict: Verdict.CannotTell }:
                return texts.CannotTell;
            case Decision.Taken { Verdict: Verdict.CoolAndReweigh }:
                return texts.WeighedWarm;
            case Decision.Taken { Verdict: Verdict.Reheat }:
                return texts.NotAllReacted;
            default:
                break;
        }

        CauseProbability first = posterior.Causes[0];
        return first.Cause == Causes.AsExpected
            ? texts.AsExpected
            : first.Probability >= 0.5 ? Question(first.Cause, texts) : texts.Open;
    }

    private static string Question(string cause, StudentTexts texts) => cause switch
    {
        "not-all-reacted" => texts.NotAllReacted,
        "product-lost" => texts.ProductLost,
        "side-reaction" => texts.SideReaction,
        "tarnished-sample" => texts.TarnishedSample,
        "damp-vessel" => texts.DampVessel,
        "not-dry" => texts.NotDry,
        "overheated" => texts.Overheated,
        "regained-water" => texts.RegainedWater,
        "weighed-warm" => texts.WeighedWarm,
        "zero-shifted" => texts.ZeroShifted,
        "spilled" => texts.Spilled,
        "extra-mass" => texts.ExtraMass,
        _ => texts.Open,
    };

    private static int Decimals(CausePosterior posterior) =>
        posterior.Problem.Rows.Where(r => r.IsReading).Select(r => r.DivisionInGrams).DefaultIfEmpty(0.01)
            .Max(d => Math.Max(0, (int)Math.Ceiling(-Math.Log10(d) - 1e-9)));
}
