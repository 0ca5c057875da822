using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Values;
using Calx.Practicals.Marking.Words;

namespace Calx.Practicals.Marking.Judging;

/// <summary>Judges 'complete or not' by the last two weighings: the same rule by which a class's groups are judged.</summary>
internal static class CompletenessJudge
{
    public static Judged Of(JudgementAnswer.OfCompleteness answer, string given, StudentWork work, OwnNumbers own, JudgingFacts facts)
    {
        ConstantMassDefinition rule = answer.Rule ?? throw new ArgumentException("The practical has no rule of constant mass.", nameof(answer));
        decimal[] weighings = [.. work.Readings.GetValueOrDefault(rule.Reading)?.Select(r => r.Value) ?? []];
        if (weighings.Length == 0)
        {
            return Judged.NotMarked(MarkReasons.Texts.ReadingMissing(rule.Reading));
        }

        IReadOnlyList<Choice> choices = JudgementChoices.Of(facts.Practical, answer);
        string expected = Expected(rule, weighings, own, facts);
        return (JudgementChoices.Meant(choices, given) ?? JudgementWords.Completeness(given)) is not string meant ? Judged.Unreadable(MarkReasons.Texts.YesOrNoExpected, expected)
            : meant == expected ? new Judged(new Verdict.Right(), expected)
            : Judged.Wrong(expected, given, expected == JudgementChoices.CannotTell ? KnownIdeas.OneWeighingEnough : KnownIdeas.ConstantMassMisjudged);
    }

    private static string Expected(ConstantMassDefinition rule, decimal[] weighings, OwnNumbers own, JudgingFacts facts)
    {
        if (weighings.Length < 2)
        {
            return JudgementChoices.CannotTell;
        }

        double sample = facts.Quantity(facts.Practical.Findings.Sample, own);
        double? wholeChange = sample > 0 ? sample * Math.Abs(facts.Ideal.ChangeOfOneGram) : null;
        decimal tolerance = ConstantMassRule.Tolerance(rule, Math.Pow(10, -own.Decimals));
        return ConstantMassRule.Verdict(weighings[^1] - weighings[^2], tolerance, wholeChange) switch
        {
            ConstantMassVerdict.Same => JudgementChoices.Complete,
            ConstantMassVerdict.CannotTell => JudgementChoices.CannotTell,
            _ => JudgementChoices.NotComplete,
        };
    }
}
