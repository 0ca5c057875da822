using Calx.Chemistry.Amounts;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Readings;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Findings;

/// <summary>What a class can say, in two to four short sentences for a wall: no name, no single group, no odd result.</summary>
public static class InShort
{
    /// <summary>The sentences, in the order in which they are read.</summary>
    /// <param name="findings">What the class's readings show.</param>
    /// <param name="accepted">Whether what follows from the accepted value is told: which equation or formula the value fits.</param>
    public static IReadOnlyList<string> Of(ClassFindings findings, bool accepted)
    {
        ArgumentNullException.ThrowIfNull(findings);
        var texts = new InShortTexts(findings.Language);
        ClassQuantity? key = findings.Class.Find(findings.Practical.Findings.Key);
        string?[] all =
        [
            Change(findings, texts),
            key is null ? NoValue(findings, texts) : Value(key, texts),
            accepted ? Told(findings, texts) : null,
            Uncounted(findings.Readings.Uncounted, texts),
        ];
        return [.. all.OfType<string>()];
    }

    private static string? Change(ClassFindings findings, InShortTexts texts) => findings.Class.Change switch
    {
        ChangeEvidence.Direction signs => Direction(findings, signs, texts),
        ChangeEvidence.Sameness { Shown: true } same => texts.Same(Band(same)),
        ChangeEvidence.Sameness same => texts.NotSame(Band(same)),
        _ => null,
    };

    private static string Direction(ClassFindings findings, ChangeEvidence.Direction signs, InShortTexts texts)
    {
        bool rises = findings.Practical.Findings.Expect == ExpectedChange.Rises;
        int weighed = findings.Groups.Count(g => g.Find(findings.Practical.Findings.Change) is not null);
        string which = ChangeTest.WhichGroups(
            rises, rises ? signs.Rose : signs.Fell, weighed, findings.Groups.Count, new ChangeTexts(findings.Language));
        // Too few groups for a test of signs are held against the balance: ChangeTest.
        return (weighed < ClassVerdict.FewestForSigns, signs.Shown) switch
        {
            (true, true) => texts.MoreThanBalance(which),
            (true, false) => texts.BalanceMayDo(which),
            (false, true) => texts.MoreThanChance(which),
            _ => texts.ChanceMayDo(which),
        };
    }

    private static string Band(ChangeEvidence.Sameness same) => same.BandInGrams.InFigures("0.####");

    private static string Value(ClassQuantity key, InShortTexts texts)
    {
        if (key.Count == 1)
        {
            return texts.OneGroup;
        }

        int decimals = Figures.DecimalsFor(key.StandardUncertainty);
        return texts.Value(
            key.Count.InFigures(), Figures.Text(key.Interval.Low, decimals), Figures.Text(key.Interval.High, decimals) + key.Quantity.UnitBehind);
    }

    private static string NoValue(ClassFindings findings, InShortTexts texts)
    {
        string id = findings.Practical.Findings.Key;
        return findings.Identifiability.Undetermined.FirstOrDefault(m => m.Quantity.Id == id)?.Why
            ?? texts.NoValue(findings.Practical.Quantities.First(q => q.Id == id).Label);
    }

    /// <summary>Which equation or formula it is, or how the value lies beside the accepted one.</summary>
    private static string? Told(ClassFindings findings, InShortTexts texts) =>
        Between(findings.Class.Equations, texts, new Wording(findings.Language))
        ?? (findings.Class.Formula is FormulaRanking.Ranked ranked ? FormulaWords.Of(ranked, findings.Language) : null)
        ?? (findings.Class.Accepted is AcceptedResult.Compared compared
            ? compared.IsBiased ? texts.FurtherThanChance : texts.WithinChance
            : null);

    private static string? Between(IReadOnlyList<EquationChoice> equations, InShortTexts texts, Wording wording)
    {
        string[] fit = [.. equations.Where(e => e.Fits).Select(e => e.Alternative.Label)];
        return (fit.Length, equations.Count) switch
        {
            (_, 0) => null,
            (0, _) => texts.FitsNone,
            (1, 1) => texts.FitsTheOne(fit[0]),
            (1, _) => texts.FitsOne(fit[0]),
            _ => texts.FitsSome(wording.And(fit)),
        };
    }

    private static string? Uncounted(IReadOnlyList<UncountedGroup> uncounted, InShortTexts texts)
    {
        int simulated = uncounted.OfType<UncountedGroup.Simulated>().Count();
        return simulated switch
        {
            0 => null,
            1 => texts.OneSimulated,
            _ => texts.SomeSimulated(simulated.InFigures()),
        };
    }
}
