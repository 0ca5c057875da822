using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Posterior;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Inference.Deciding;

/// <summary>Two sentences for the teacher: what probably happened and how surely, and what to do.</summary>
internal sealed class TeacherWords
{
    private readonly CausePosterior posterior;
    private readonly Practical practical;
    private readonly DiagnosisTexts texts;
    private readonly Wording wording;

    private TeacherWords(CausePosterior posterior)
    {
        this.posterior = posterior;
        practical = posterior.Hidden.Circumstances.Practical;
        (texts, wording) = (new DiagnosisTexts(posterior.Language), new Wording(posterior.Language));
    }

    /// <summary>Says it.</summary>
    public static string Of(CausePosterior posterior, Decision decision, NextStep next)
    {
        var words = new TeacherWords(posterior);
        // What comes before all arithmetic comes first here too.
        return decision is Decision.Taken { Verdict: Verdict.StopTellYourTeacher } stop
            ? $"{stop.Why} {words.What(decision)}"
            : $"{words.What(decision)} {words.Do(decision, next)}";
    }

    private string What(Decision decision)
    {
        if (decision is Decision.Taken { Verdict: Verdict.CheckReading, Reading: string read } look
            && posterior.Causes.FirstOrDefault(c => c.Reading == read && c.Present >= 0.5) is CauseProbability wrong)
        {
            // A second cause takes half of its share and none of its certainty.
            string certainty = This(wrong.Present, wrong.Label);
            return look.CannotBe ? texts.CannotBe(Written(read), ReadingNames.OfId(practical, read), certainty) : certainty;
        }

        CauseProbability first = posterior.Causes[0];
        if (first.Cause == Causes.AsExpected)
        {
            CauseProbability? second = posterior.Causes.Skip(1).FirstOrDefault();
            return first.Probability < 0.7 && second is not null && second.Probability >= 0.1
                ? ExpectedBefore(first.Probability, second) : Expected(first.Probability);
        }

        if (posterior.Tied.FirstOrDefault(t => t.Causes.Contains(first.Cause)) is TiedCauses tied)
        {
            string[] labels = [.. tied.Causes.Take(3).Select(id => posterior.Causes.First(c => c.Cause == id).Label)];
            (string probability, string names) = (wording.Percent(tied.Probability), wording.LongList(labels));
            return tied.Causes.Count > 3 ? texts.TiedAndMore(probability, names) : texts.Tied(probability, names);
        }

        // The reading to look at is named by the sentence on what to do.
        return first.Detail is string detail && decision is not Decision.Taken { Verdict: Verdict.CheckReading }
            ? This(first.Probability, first.Label, detail) : This(first.Probability, first.Label);
    }

    private string Written(string id)
    {
        WeighedRow row = posterior.Problem.Rows.First(r => r.Id == id);
        int decimals = Math.Max(0, (int)Math.Ceiling(-Math.Log10(row.DivisionInGrams) - 1e-9));
        return Figures.Text(row.Grams, decimals);
    }

    private string This(double probability, string cause)
    {
        string percent = wording.Percent(probability);
        return probability switch
        {
            >= 0.95 => texts.AlmostCertainlyThis(percent, cause),
            >= 0.7 => texts.ProbablyThis(percent, cause),
            >= 0.5 => texts.MoreLikelyThis(percent, cause),
            _ => texts.PerhapsThis(percent, cause),
        };
    }

    private string This(double probability, string cause, string size)
    {
        string percent = wording.Percent(probability);
        return probability switch
        {
            >= 0.95 => texts.AlmostCertainlySized(percent, cause, size),
            >= 0.7 => texts.ProbablySized(percent, cause, size),
            >= 0.5 => texts.MoreLikelySized(percent, cause, size),
            _ => texts.PerhapsSized(percent, cause, size),
        };
    }

    private string Expected(double probability)
    {
        string percent = wording.Percent(probability);
        return probability switch
        {
            >= 0.95 => texts.AlmostCertainlyExpected(percent),
            >= 0.7 => texts.ProbablyExpected(percent),
            >= 0.5 => texts.MoreLikelyExpected(percent),
            _ => texts.PerhapsExpected(percent),
        };
    }

    private string ExpectedBefore(double probability, CauseProbability second)
    {
        (string percent, string next) = (wording.Percent(probability), wording.Percent(second.Probability));
        return probability >= 0.5 ? texts.MoreLikelyExpectedNext(percent, second.Label, next) : texts.PerhapsExpectedNext(percent, second.Label, next);
    }

    private string Do(Decision decision, NextStep next)
    {
        if (decision is Decision.Taken { Verdict: Verdict.CheckReading or Verdict.CannotTell or Verdict.CoolAndReweigh } first)
        {
            return first.Why;
        }

        if (decision is Decision.Taken { Verdict: Verdict.Reheat } reheat)
        {
            return texts.HeatOnceMore(Wording.Small(reheat.Why));
        }

        if (posterior.Causes[0].Cause != Causes.AsExpected && next is NextStep.Do step)
        {
            return texts.ToTell(step.Label, Wording.Small(step.Why));
        }

        string? caution = practical.Faults.FirstOrDefault(f => f.Cause == posterior.Causes[0].Cause)?.Caution;
        return caution is not null ? new CauseTexts(posterior.Language).ForNextTime(caution) : decision is Decision.Taken done ? done.Why : texts.NothingToDo;
    }
}
