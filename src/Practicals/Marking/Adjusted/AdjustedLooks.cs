using System.Globalization;
using Calx.Measurement.Distributions;
using Calx.Practicals.Marking.Judging;
using Calx.Practicals.Marking.Values;
using Calx.Practicals.Marking.Words;
using Calx.Practicals.Marking.Written;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Marking.Adjusted;

/// <summary>
/// Looks for answers that are the textbook's against the own readings, for readings that fit the textbook better than chance lets them, for repeated
/// weighings without scatter, and for two groups with the same digits (docs/methods/marking.md).
/// </summary>
internal sealed class AdjustedLooks(JudgingFacts facts, IReadOnlyDictionary<string, AskedValue> asked)
{
    /// <summary>What chance does more often than this is not worth a question. Judgement.</summary>
    private const double Rare = 0.01;

    /// <summary>A wrong value with an idea as probable as this has its explanation.</summary>
    private const double Explained = 0.5;

    /// <summary>Standard deviation of one weighing in divisions. Judgement, as elsewhere.</summary>
    private const double RepeatabilityInDivisions = 0.7;

    private static readonly Wording Said = new(EngineLanguage.British);

    public IReadOnlyList<AdjustedLook> Of(IReadOnlyList<MarkedWork> works, IReadOnlyList<OwnNumbers> readings)
    {
        (string Name, StudentWork Work, OwnNumbers Own)[] groups =
        [
            .. works.Zip(readings, (w, r) => (Name: w.Work.Group ?? w.Work.Student, w.Work, Own: r)).Where(g => g.Work.Readings.Count > 0)
                .DistinctBy(g => JudgementChoices.Folded(g.Name)),
        ];
        return
        [
            .. works.Zip(readings, (w, r) => TextbookAnswers(w, r)).SelectMany(l => l),
            .. TextbookReadings([.. groups.Select(g => g.Own)]),
            .. NoScatter([.. groups.Select(g => g.Work)]),
            .. SameDigits([.. groups.Where(g => g.Work.Group is not null).Select(g => g.Work)]),
        ];
    }

    private IEnumerable<AdjustedLook> TextbookAnswers(MarkedWork marked, OwnNumbers own)
    {
        if (TextbookReading(own) is not Func<string, double> textbook)
        {
            yield break;
        }

        foreach (AnswerMark mark in marked.Answers.Where(m => m.Verdict is Verdict.Wrong { Reason: null } && asked.ContainsKey(m.Answer.Id)))
        {
            double value = facts.ValueOf(asked[mark.Answer.Id], textbook);
            bool explained = mark.Ideas?.Candidates is [{ Probability: >= Explained }, ..];
            if (AnswerText.Read(mark.Given) is AnswerText.Number { IsCoarse: false } given && given.CouldBe(value) && !explained)
            {
                double chance = Math.Min(1, 2 * given.HalfWidth / (Math.Abs(value) * 1.5 * Math.Sqrt(2 * Math.PI)));
                yield return new AdjustedLook(
                    marked.Work.Student, mark.Answer.Id,
                    MarkReasons.OfClass.TextbookAnswer(mark.Answer.Label, mark.Given), chance);
            }
        }
    }

    /// <summary>The readings of a perfect run with the same sample: the last weighing as it should have been. Null where they cannot be told.</summary>
    private Func<string, double>? TextbookReading(OwnNumbers own)
    {
        string last = facts.LastReading;
        double off = facts.KeyDifference(own.Reading), slope = facts.KeyDifference(name => own.Reading(name) + (name == last ? 1 : 0)) - off;
        double there = own.Reading(last) - (off / slope);
        return double.IsFinite(there) ? name => name == last ? there : own.Reading(name) : null;
    }

    private IEnumerable<AdjustedLook> TextbookReadings(IReadOnlyList<OwnNumbers> groups)
    {
        (bool Exact, double Chance)[] each = [.. groups.Select(Exact).OfType<(bool, double)>()];
        int exact = each.Count(e => e.Exact);
        double chance = AtLeast(exact, [.. each.Select(e => e.Chance)]);
        if (exact > 1 && chance < Rare)
        {
            yield return new AdjustedLook(null, facts.LastReading, MarkReasons.OfClass.TextbookReadings(Number(exact), Number(each.Length), Number(each.Sum(e => e.Chance))), chance);
        }
    }

    private (bool Exact, double Chance)? Exact(OwnNumbers own)
    {
        double off = facts.KeyDifference(own.Reading), division = Math.Pow(10, -own.Decimals);
        if (!double.IsFinite(off))
        {
            return null;
        }

        double spread = Math.Sqrt(Math.Pow(facts.SpreadOfKeyDifference(own), 2) + Math.Pow(facts.BalanceSpreadOfKeyDifference(own, division), 2));
        double half = division / 2;
        return (Math.Abs(off) <= half * (1 + 1e-9), StandardNormal.Cumulative(half / spread) - StandardNormal.Cumulative(-half / spread));
    }

    private static IEnumerable<AdjustedLook> NoScatter(IReadOnlyList<StudentWork> groups)
    {
        (string Reading, int Count, bool Same)[] repeats =
        [
            .. groups.SelectMany(g => g.Readings.Where(r => r.Value.Count > 1).Select(r => (r.Key, r.Value.Count, r.Value.Select(v => v.Value).Distinct().Count() == 1))),
        ];
        double chance = repeats.Aggregate(1.0, (p, r) => p * Equal(r.Count));
        if (repeats.Length > 1 && Array.TrueForAll(repeats, r => r.Same) && chance < Rare)
        {
            yield return new AdjustedLook(null, repeats[0].Reading, MarkReasons.OfClass.NoScatter(Number(repeats.Length), Number(RepeatabilityInDivisions)), chance);
        }
    }

    private static IEnumerable<AdjustedLook> SameDigits(IReadOnlyList<StudentWork> groups)
    {
        const int Fewest = 3;
        const double OneInSoMany = 1e-4;
        foreach (IGrouping<string, StudentWork> same in groups.Where(g => g.Readings.Sum(r => r.Value.Count) >= Fewest)
            .GroupBy(g => string.Join(' ', g.Readings.OrderBy(r => r.Key, StringComparer.Ordinal).Select(r => $"{r.Key} {string.Join(' ', r.Value)}"))).Where(g => g.Count() > 1))
        {
            string[] names = [.. same.Select(s => Said.Group(s.Group!))];
            yield return new AdjustedLook(null, "readings", MarkReasons.OfClass.SameDigits(Said.And(names)), OneInSoMany);
        }
    }

    private static string Number(double number) => number.ToString("0.#", CultureInfo.InvariantCulture);

    /// <summary>Probability that so many weighings of one mass show the same: over where the mass lies between two divisions.</summary>
    private static double Equal(int weighings)
    {
        const int Steps = 50;
        double sum = 0;
        for (int i = 0; i < Steps; i++)
        {
            double at = (i + 0.5) / Steps;
            for (int digit = -4; digit <= 5; digit++)
            {
                double shown = StandardNormal.Cumulative((digit + 0.5 - at) / RepeatabilityInDivisions) - StandardNormal.Cumulative((digit - 0.5 - at) / RepeatabilityInDivisions);
                sum += Math.Pow(shown, weighings) / Steps;
            }
        }

        return sum;
    }

    /// <summary>Probability of at least so many hits, each with its own chance.</summary>
    private static double AtLeast(int hits, double[] chances)
    {
        double[] law = new double[chances.Length + 1];
        law[0] = 1;
        for (int i = 0; i < chances.Length; i++)
        {
            for (int k = i + 1; k >= 0; k--)
            {
                law[k] = (law[k] * (1 - chances[i])) + (k > 0 ? law[k - 1] * chances[i] : 0);
            }
        }

        return law.Skip(hits).Sum();
    }
}
