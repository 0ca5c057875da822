using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Marking.Ideas;
using Calx.Practicals.Marking.Values;
using Calx.Practicals.Marking.Words;

namespace Calx.Practicals.Marking.Judging;

/// <summary>Which groups of the class are odd, by the rule by which a class's result is judged, from the readings that its students handed in.</summary>
internal sealed class OddGroupsOfClass
{
    /// <summary>A reading's standard uncertainty in divisions: repeatability 0.7 (judgement) and rounding √(1/12).</summary>
    public const double ReadingInDivisions = 0.757;

    private readonly string[] groups;
    private readonly HashSet<string> odd = new(StringComparer.Ordinal);
    private readonly bool canTell;

    public OddGroupsOfClass(IReadOnlyList<StudentWork> works, IReadOnlyList<OwnNumbers> readings, JudgingFacts facts)
    {
        (string Group, OwnNumbers Own)[] each =
        [
            .. works.Zip(readings, (w, r) => (w.Group, Own: r)).Where(g => g.Group is not null && double.IsFinite(facts.Quantity(facts.Practical.Findings.Key, g.Own)))
                .DistinctBy(g => JudgementChoices.Folded(g.Group!)).Select(g => (g.Group!, g.Own)),
        ];
        groups = [.. works.Select(w => w.Group).OfType<string>().DistinctBy(JudgementChoices.Folded)];
        canTell = each.Length >= OddGroups.FewestForScatter;
        var impossible = new bool[each.Length];
        for (int i = 0; i < each.Length; i++)
        {
            MeasuredValue change = Value(each[i].Own, facts, facts.Practical.Findings.Change);
            int sign = facts.Practical.Findings.Expect switch { ExpectedChange.Rises => 1, ExpectedChange.Falls => -1, _ => 0 };
            impossible[i] = sign * change.Value < -2 * change.StandardUncertainty;
        }

        var judged = new JudgedQuantities(facts.Practical, facts.Ideal, facts.Practical.Findings.Key, IsFound);
        foreach (QuantityDefinition quantity in judged.All)
        {
            bool[] marks = [.. impossible];
            new OddGroups(each.Length).Mark([.. each.Select(g => Value(g.Own, facts, quantity.Id))], marks, judged.All.Count);
            odd.UnionWith(each.Where((_, i) => marks[i]).Select(g => JudgementChoices.Folded(g.Group)));
        }

        bool IsFound(string id) =>
            each.Where((g, i) => !impossible[i] && double.IsFinite(facts.Quantity(id, g.Own))).Count() >= OddGroups.FewestForScatter;
    }

    /// <summary>Judges a group that a student named.</summary>
    public Judged Judge(string given)
    {
        if (groups.Length == 0)
        {
            return Judged.NotMarked(MarkReasons.Texts.GroupsUnknown);
        }

        string[] named = [.. groups.Where(g => odd.Contains(JudgementChoices.Folded(g)))];
        string expected = !canTell ? MarkReasons.Texts.ChoiceTooFewGroups : named.Length == 0 ? MarkReasons.Texts.ChoiceNoGroup : named.Aggregate(MarkReasons.Texts.GroupsOr);
        string folded = JudgementChoices.Folded(given);
        Choice[] choices = [new(JudgementChoices.None, MarkReasons.Texts.ChoiceNoGroup), new(JudgementChoices.CannotTell, MarkReasons.Texts.ChoiceTooFewGroups)];
        string? meant = Group(folded) ?? JudgementChoices.Meant(choices, given);
        bool right = !canTell ? meant == JudgementChoices.CannotTell || meant == JudgementChoices.None
            : named.Length == 0 ? meant == JudgementChoices.None
            : meant is not null && odd.Contains(meant);
        return meant is null ? Judged.Unreadable(MarkReasons.Texts.GroupExpected, expected)
            : right ? new Judged(new Verdict.Right(), expected)
            : Judged.Wrong(expected, given, KnownIdeas.ScatterTakenForOdd);
    }

    /// <summary>A group by its name, or by its number alone: 'group 4' and '4' are the same.</summary>
    private string? Group(string folded) => groups.Select(JudgementChoices.Folded)
        .FirstOrDefault(g => g == folded || g == $"group{folded}" || $"group{g}" == folded);

    private static MeasuredValue Value(OwnNumbers own, JudgingFacts facts, string quantity)
    {
        double value = facts.Quantity(quantity, own), division = Math.Pow(10, -own.Decimals), variance = 0;
        foreach (ReadingDefinition reading in facts.Practical.Readings)
        {
            double moved = facts.Quantity(quantity, own, reading.Id, JudgingFacts.DivisionOf(reading, division)) - value;
            variance += double.IsFinite(moved) ? moved * moved : 0;
        }

        return new MeasuredValue(value, ReadingInDivisions * Math.Sqrt(variance));
    }
}
