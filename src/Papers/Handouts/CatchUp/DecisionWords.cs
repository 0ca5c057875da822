using Calx.Papers.Texts;
using Calx.Practicals.CatchUp;

namespace Calx.Papers.Handouts.CatchUp;

/// <summary>Decisions in a few words, for a table.</summary>
internal static class DecisionWords
{
    public static string Of(PackDecision decision, CatchUpKeyTexts texts) => decision.Verdict switch
    {
        "reheat" => texts.Reheat,
        PackDecision.ConstantMass => texts.Stop,
        "cool-and-reweigh" => texts.CoolAndReweigh,
        "check-reading" => texts.CheckReading,
        "cannot-tell" => texts.CannotTell,
        _ => decision.Verdict,
    };
}
