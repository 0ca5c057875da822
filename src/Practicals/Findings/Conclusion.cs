using System.Globalization;
using Calx.Chemistry.Amounts;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Readings;

namespace Calx.Practicals.Findings;

/// <summary>
/// The class's conclusion in three to six plain sentences: what the data show, how strongly, and what they cannot show.
/// </summary>
internal sealed class Conclusion
{
    private const int MostCausesNamed = 4;
    private const int MostGroupsNamed = 12;

    /// <summary>Odd results that make a mean so many times as uncertain have ruined it (judgement).</summary>
    private const double MeanIsRuined = 5;

    private readonly Practical practical;
    private readonly ClassReadings readings;
    private readonly Identifiability identifiability;
    private readonly IReadOnlyList<GroupFindings> groups;
    private readonly IReadOnlyList<ClassQuantity> pooled;

    public Conclusion(
        Practical practical,
        ClassReadings readings,
        Identifiability identifiability,
        IReadOnlyList<GroupFindings> groups,
        IReadOnlyList<ClassQuantity> pooled)
    {
        this.practical = practical;
        this.readings = readings;
        this.identifiability = identifiability;
        this.groups = groups;
        this.pooled = pooled;
    }

    private ClassQuantity? Key => pooled.FirstOrDefault(q => q.Quantity.Id == practical.Findings.Key);

    /// <summary>The sentences, in the order in which a teacher would say them.</summary>
    public IReadOnlyList<ConclusionSentence> Sentences(
        ChangeEvidence change, AcceptedResult accepted, FormulaRanking? formula, IReadOnlyList<EquationChoice> equations)
    {
        GroupFindings[] odd = [.. groups.Where(g => g.IsAnomalous)];
        var sentences = new List<ConclusionSentence>
        {
            new(ConclusionTopic.Change, change.Sentence, mentionsOdd: odd.Length > 0 && LeavesOddOut(change)),
            Key is ClassQuantity key
                ? new(ConclusionTopic.Value, Value(key))
                : new(ConclusionTopic.Value, NoValue(), mentionsOdd: odd.Length > 0),
        };
        if (accepted is AcceptedResult.Compared compared)
        {
            sentences.Add(new(ConclusionTopic.Accepted, Against(compared)));
        }

        if (equations.Count > 0)
        {
            sentences.Add(new(ConclusionTopic.Equations, Between(equations)));
        }
        else if (formula is FormulaRanking.Ranked ranked)
        {
            sentences.Add(new(
                ConclusionTopic.Formula,
                $"{ranked.Conclusion.TrimEnd('.')}; simple formulas were taken as likelier from the start, a judgement."));
        }

        if (readings.IsSimulated)
        {
            sentences.Insert(0, new(ConclusionTopic.Simulated, SimulatedData.Sentence));
        }

        sentences.AddRange(UncountedWords.Sentences(readings.Uncounted));
        if (odd.Length > 0)
        {
            sentences.Add(new(ConclusionTopic.OddResults, Odd(odd, named: true), Odd(odd, named: false), mentionsOdd: true));
        }

        if (practical.Findings.ConstantMass is not null)
        {
            sentences.Add(new(ConclusionTopic.ConstantMass, Completeness(named: true), Completeness(named: false)));
        }

        return sentences;
    }

    /// <summary>Whether the sentence about the change says that odd results are left out: those of few groups do.</summary>
    private bool LeavesOddOut(ChangeEvidence change) => change is ChangeEvidence.Unjudged
        || groups.Count(g => g.Find(practical.Findings.Change) is not null) < ClassVerdict.FewestForSigns;

    private static string Value(ClassQuantity key)
    {
        int decimals = Figures.DecimalsFor(key.StandardUncertainty);
        string unit = key.Quantity.UnitBehind;
        string spread = key.Between > 0
            ? $"and the groups differ by a further {Figures.Text(key.Between, Math.Max(decimals, Figures.DecimalsFor(key.Between)))}{unit}, more than that explains"
            : "and the groups differ by no more than that explains";
        string from = key.Count == 1 ? "One group gives" : $"{Count(key.Count)} groups together give";
        string alone = key.Count == 1
            ? $", uncertain by {Figures.Text(key.Within, decimals)}{unit} from the balance alone; one group cannot show how groups differ."
            : key.WithinIsFromTrials
            ? $"; the trials of one group scatter by {Figures.Text(key.Within, Figures.DecimalsFor(key.Within))}{unit}, {spread}."
            : $"; a single group is uncertain by {Figures.Text(key.Within, Figures.DecimalsFor(key.Within))}{unit} from the balance alone, {spread}.";
        return $"{from} {Figures.Text(key.Value, decimals)}{unit} as the {key.Quantity.Label} "
            + $"(95 % interval {Figures.Text(key.Interval.Low, decimals)} to {Figures.Text(key.Interval.High, decimals)}){alone}";
    }

    private string NoValue()
    {
        MissingReadings? missing = identifiability.Undetermined.FirstOrDefault(m => m.Quantity.Id == practical.Findings.Key);
        if (missing is null)
        {
            QuantityDefinition key = practical.Quantities.First(q => q.Id == practical.Findings.Key);
            return groups.Any(g => g.IsAnomalous && g.Find(key.Id) is not null)
                ? $"No group without an odd result gives the {key.Label}."
                : $"No group's readings give the {key.Label}.";
        }

        string why = practical.Findings.Formula is null ? missing.Why : $"{missing.Why.TrimEnd('.')}, so no formula can follow.";
        return practical.Findings.EmptyAdvice is string advice ? $"{why} {advice}" : why;
    }

    private static string Against(AcceptedResult.Compared compared)
    {
        ClassQuantity value = compared.Value;
        int decimals = Figures.DecimalsFor(value.StandardUncertainty);
        string unit = value.Quantity.UnitBehind;
        string accepted = Figures.Text(compared.Accepted, IsWhole(compared.Accepted) ? 0 : Math.Max(decimals, 2)) + unit;
        string distance = Figures.Text(Math.Abs(value.Value - compared.Accepted), decimals) + unit;
        string side = value.Value < compared.Accepted ? "below" : "above";
        if (!compared.IsBiased)
        {
            double half = (value.Interval.High - value.Interval.Low) / 2;
            return $"The accepted value is {accepted}: the class lies {distance} {side} it, which chance explains ({Chance(compared.P)}); "
                + $"a bias of less than about {Figures.Text(half, decimals)}{unit} would not be seen in these data.";
        }

        string pull = compared.CausesThatPull.Count == 0
            ? "No cause named for this practical pulls this way alone."
            : $"What pulls this way: {Listed(compared.CausesThatPull)}; the masses pooled here do not say which.";
        return $"The accepted value is {accepted}: the class lies {distance} {side} it, more than chance explains ({Chance(compared.P)}), "
            + $"and averaging more groups would not remove it. {pull}";
    }

    private static string Between(IReadOnlyList<EquationChoice> equations)
    {
        string[] fit = [.. equations.Where(e => e.Fits).Select(Named)];
        string[] not = [.. equations.Where(e => !e.Fits).Select(Named)];
        return (fit.Length, not.Length) switch
        {
            (0, _) => $"The value fits none of the equations: {Joined(not, "nor")}.",
            (1, 0) => $"The value fits the reaction {fit[0]}.",
            (1, _) => $"Of the equations the class decides between, the value fits the reaction {fit[0]} and not {Joined(not, "or")}.",
            (_, 0) => $"The value does not decide between the reactions {Joined(fit, "and")}.",
            _ => $"The value excludes the reaction {Joined(not, "and")} but does not decide between {Joined(fit, "and")}.",
        };

        static string Named(EquationChoice choice) => $"{choice.Alternative.Label} ({Figures.Text(choice.Expected, 3)})";
        static string Joined(string[] names, string last) =>
            names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} {last} {names[^1]}";
    }

    private string Odd(GroupFindings[] odd, bool named)
    {
        string names = string.Join(", ", odd.Take(MostGroupsNamed).Select(g => GroupReadings.InSentence(g.Name)))
            + (odd.Length > MostGroupsNamed ? $" and {Count(odd.Length - MostGroupsNamed).ToLowerInvariant()} more" : string.Empty);
        string with = Key is { WithAllGroups: PooledValue all } key ? $" {WithOdd(key, all, odd.Length == 1 ? "it" : "them")}" : string.Empty;
        string lead = odd.Length == 1 ? "One group has an odd result" : $"{Count(odd.Length)} groups have an odd result";
        return $"{lead} and {(odd.Length == 1 ? "is" : "are")} left out of these values until explained{(named ? $": {names}" : string.Empty)}.{with}";
    }

    /// <summary>The class with its odd results. A mean that they have ruined is no value of the class, and is not given as one.</summary>
    private static string WithOdd(ClassQuantity key, PooledValue all, string them)
    {
        string unit = key.Quantity.UnitBehind;
        string median = Figures.Text(key.Median, Figures.DecimalsFor(key.StandardUncertainty)) + unit;
        string mean = Figures.WithUncertainty(all.Value, all.StandardUncertainty) + unit;
        bool isRuined = all.StandardUncertainty > MeanIsRuined * key.StandardUncertainty;
        return isRuined
            ? $"With {them} the class's median, which a few odd results hardly move, is {median}; the mean would be dragged to {mean}, which is no value of this class."
            : $"With {them} the class's median is {median} and its mean {mean}.";
    }

    private string Completeness(bool named)
    {
        GroupFindings[] judged = [.. groups.Where(g => g.ConstantMass?.LastChangeInGrams is not null)];
        if (judged.Length == 0)
        {
            return "No group weighed twice after heating, so these readings cannot show that the reaction was complete.";
        }

        GroupFindings[] not = [.. judged.Where(g => g.ConstantMass!.Verdict != ConstantMassVerdict.Same)];
        if (not.Length == judged.Length)
        {
            return judged.Length == 1
                ? $"The one group that reheated did not reach constant mass: {judged[0].ConstantMass!.Words}."
                : judged.Length == 2
                ? "Neither of the two groups that reheated reached constant mass, so the reaction was not shown to be complete."
                : $"None of the {Count(judged.Length).ToLowerInvariant()} groups that reheated reached constant mass, so the reaction was not shown to be complete.";
        }

        return $"{WhoReached(judged, not, named)} reached constant mass; {StillOpen(judged)}.";
    }

    private static string WhoReached(GroupFindings[] judged, GroupFindings[] not, bool named)
    {
        if (not.Length == 0)
        {
            return judged.Length switch
            {
                1 => "The one group that reheated",
                2 => "Both groups that reheated",
                _ => $"All {Count(judged.Length).ToLowerInvariant()} groups that reheated",
            };
        }

        string names = named && not.Length <= MostGroupsNamed ? $" (not {string.Join(", ", not.Select(g => GroupReadings.InSentence(g.Name)))})" : string.Empty;
        return $"{Count(judged.Length - not.Length)} of the {Count(judged.Length).ToLowerInvariant()} groups that reheated{names}";
    }

    /// <summary>What constant mass leaves open, for groups whose result is not odd: the bound takes the readings at their word.</summary>
    private static string StillOpen(GroupFindings[] judged)
    {
        double[] bounds =
        [
            .. judged.Where(g => !g.IsAnomalous && g.ConstantMass!.Verdict == ConstantMassVerdict.Same)
                .Select(g => g.ConstantMass!.UnreactedAtMost).OfType<double>(),
        ];
        if (bounds.Length == 0)
        {
            return "how much was still unreacted cannot be said from these readings";
        }

        string least = string.Create(CultureInfo.InvariantCulture, $"{100 * bounds.Min():F0} %");
        string most = string.Create(CultureInfo.InvariantCulture, $"{100 * bounds.Max():F0} %");
        string range = least == most ? $"up to {most}" : $"up to {least} in the best case and up to {most} in the worst";
        return $"on this balance that can still leave {range} unreacted, if nothing was lost";
    }

    private static string Listed(IReadOnlyList<FaultDefinition> causes)
    {
        string[] names = [.. causes.Take(MostCausesNamed).Select(c => c.Label)];
        return names.Length == 1 ? names[0] : string.Join("; ", names[..^1]) + "; or " + names[^1];
    }

    private static string Chance(double p) =>
        p < 0.001 ? "p < 0.001" : string.Create(CultureInfo.InvariantCulture, $"p = {p:F3}");

    private static bool IsWhole(double value) => Math.Abs(value - Math.Round(value)) < 1e-9;

    private static string Count(int n) => n switch
    {
        0 => "None", 1 => "One", 2 => "Two", 3 => "Three", 4 => "Four", 5 => "Five", 6 => "Six", 7 => "Seven",
        8 => "Eight", 9 => "Nine", 10 => "Ten", 11 => "Eleven", 12 => "Twelve",
        _ => n.ToString(CultureInfo.InvariantCulture),
    };
}
