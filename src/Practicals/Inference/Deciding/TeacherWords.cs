using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>Two sentences for the teacher: what probably happened and how surely, and what to do.</summary>
internal static class TeacherWords
{
    /// <summary>Says it.</summary>
    public static string Of(CausePosterior posterior, Decision decision, NextStep next) =>
        // What comes before all arithmetic comes first here too.
        decision is Decision.Taken { Verdict: Verdict.StopTellYourTeacher } stop
            ? $"{stop.Why} {What(posterior, decision)}"
            : $"{What(posterior, decision)} {Do(posterior, decision, next)}";

    private static string What(CausePosterior posterior, Decision decision)
    {
        if (decision is Decision.Taken { Verdict: Verdict.CheckReading, Reading: string read } look
            && posterior.Causes.FirstOrDefault(c => c.Reading == read && c.Present >= 0.5) is CauseProbability wrong)
        {
            // A second cause takes half of its share and none of its certainty.
            string certainty = $"{Strength(wrong.Present)} this ({Percents.Of(wrong.Present)}): {wrong.Label}.";
            return look.CannotBe ? $"This reading cannot be: {Written(posterior, read)}, beside the others. {certainty}" : certainty;
        }

        CauseProbability first = posterior.Causes[0];
        if (first.Cause == Causes.AsExpected)
        {
            CauseProbability? second = posterior.Causes.Skip(1).FirstOrDefault();
            string open = first.Probability < 0.7 && second is not null && second.Probability >= 0.1
                ? $"; next comes that {second.Label} ({Percents.Of(second.Probability)})" : string.Empty;
            return $"{Strength(first.Probability)} all went as expected ({Percents.Of(first.Probability)}){open}.";
        }

        if (posterior.Tied.FirstOrDefault(t => t.Causes.Contains(first.Cause)) is TiedCauses tied)
        {
            string[] labels = [.. tied.Causes.Take(3).Select(id => posterior.Causes.First(c => c.Cause == id).Label)];
            string more = tied.Causes.Count > 3 ? ", or another cause of the same kind" : string.Empty;
            return $"The weighings cannot tell these apart ({Percents.Of(tied.Probability)} together): {string.Join("; ", labels)}{more}.";
        }

        // The reading to look at is named by the sentence on what to do.
        string size = first.Detail is string detail && decision is not Decision.Taken { Verdict: Verdict.CheckReading } ? $", {detail}" : string.Empty;
        return $"{Strength(first.Probability)} this ({Percents.Of(first.Probability)}): {first.Label}{size}.";
    }

    private static string Written(CausePosterior posterior, string id)
    {
        WeighedRow row = posterior.Problem.Rows.First(r => r.Id == id);
        int decimals = Math.Max(0, (int)Math.Ceiling(-Math.Log10(row.DivisionInGrams) - 1e-9));
        return $"{Figures.Text(row.Grams, decimals)} g as '{ReadingNames.OfId(posterior.Hidden.Circumstances.Practical, id)}'";
    }

    private static string Strength(double probability) => probability switch
    {
        >= 0.95 => "Almost certainly",
        >= 0.7 => "Probably",
        >= 0.5 => "More likely than not",
        _ => "Perhaps",
    };

    private static string Do(CausePosterior posterior, Decision decision, NextStep next)
    {
        if (decision is Decision.Taken { Verdict: Verdict.CheckReading or Verdict.CannotTell or Verdict.CoolAndReweigh } first)
        {
            return first.Why;
        }

        if (decision is Decision.Taken { Verdict: Verdict.Reheat } reheat)
        {
            return $"Heat once more: {char.ToLowerInvariant(reheat.Why[0])}{reheat.Why[1..]}";
        }

        if (posterior.Causes[0].Cause != Causes.AsExpected && next is NextStep.Do step)
        {
            return $"To tell, {step.Label}: {char.ToLowerInvariant(step.Why[0])}{step.Why[1..]}";
        }

        string? caution = posterior.Hidden.Circumstances.Practical.Faults.FirstOrDefault(f => f.Cause == posterior.Causes[0].Cause)?.Caution;
        return caution is not null ? $"For next time: {caution}." : decision is Decision.Taken done ? done.Why : "There is nothing to do.";
    }
}
