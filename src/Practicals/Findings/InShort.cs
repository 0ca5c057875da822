using System.Globalization;
using Calx.Chemistry.Amounts;
using Calx.Measurement.Numbers;
using Calx.Practicals.Definition;
using Calx.Practicals.Inference.Concluding;
using Calx.Practicals.Readings;

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
        ClassQuantity? key = findings.Class.Find(findings.Practical.Findings.Key);
        string?[] all =
        [
            Change(findings),
            key is null ? NoValue(findings) : Value(key),
            accepted ? Told(findings.Class) : null,
            Uncounted(findings.Readings.Uncounted),
        ];
        return [.. all.OfType<string>()];
    }

    private static string? Change(ClassFindings findings) => findings.Class.Change switch
    {
        ChangeEvidence.Direction signs => Direction(findings, signs),
        ChangeEvidence.Sameness { Shown: true } same => $"The mass stayed the same within {Band(same)}.",
        ChangeEvidence.Sameness same => $"A change of mass of more than {Band(same)} is not excluded.",
        _ => null,
    };

    private static string Direction(ClassFindings findings, ChangeEvidence.Direction signs)
    {
        bool rises = findings.Practical.Findings.Expect == ExpectedChange.Rises;
        int weighed = findings.Groups.Count(g => g.Find(findings.Practical.Findings.Change) is not null);
        string which = ChangeTest.WhichGroups(rises ? "rose" : "fell", rises ? signs.Rose : signs.Fell, weighed, findings.Groups.Count);
        // Too few groups for a test of signs are held against the balance: ChangeTest.
        string what = weighed < ClassVerdict.FewestForSigns ? "the balance" : "chance";
        return $"{which}: {(signs.Shown ? $"more than {what} explains" : $"{what} may do that")}.";
    }

    private static string Band(ChangeEvidence.Sameness same) => $"{same.BandInGrams.ToString("0.####", CultureInfo.InvariantCulture)} g";

    private static string Value(ClassQuantity key)
    {
        if (key.Count == 1)
        {
            return "One group cannot show what others would find.";
        }

        int decimals = Figures.DecimalsFor(key.StandardUncertainty);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"From {key.Count} groups, chance leaves {Figures.Text(key.Interval.Low, decimals)} to {Figures.Text(key.Interval.High, decimals)}{key.Quantity.UnitBehind} open; a mistake that all groups share would not show.");
    }

    private static string NoValue(ClassFindings findings)
    {
        string id = findings.Practical.Findings.Key;
        return findings.Identifiability.Undetermined.FirstOrDefault(m => m.Quantity.Id == id)?.Why
            ?? $"These readings give no value of the {findings.Practical.Quantities.First(q => q.Id == id).Label}.";
    }

    /// <summary>Which equation or formula it is, or how the value lies beside the accepted one.</summary>
    private static string? Told(ClassResult result) =>
        Between(result.Equations)
        ?? (result.Formula is FormulaRanking.Ranked ranked ? $"{ranked.Conclusion.TrimEnd('.')}." : null)
        ?? (result.Accepted is AcceptedResult.Compared compared
            ? compared.IsBiased ? "The class lies further from the accepted value than chance explains." : "Chance explains how far the class lies from the accepted value."
            : null);

    private static string? Between(IReadOnlyList<EquationChoice> equations)
    {
        string[] fit = [.. equations.Where(e => e.Fits).Select(e => e.Alternative.Label)];
        return (fit.Length, equations.Count) switch
        {
            (_, 0) => null,
            (0, _) => "The value fits none of the equations.",
            (1, 1) => $"The value fits the reaction {fit[0]}.",
            (1, _) => $"The value fits the reaction {fit[0]} and no other.",
            _ => $"The value does not decide between the reactions {string.Join(", ", fit[..^1])} and {fit[^1]}.",
        };
    }

    private static string? Uncounted(IReadOnlyList<UncountedGroup> uncounted)
    {
        int simulated = uncounted.OfType<UncountedGroup.Simulated>().Count();
        return simulated switch
        {
            0 => null,
            1 => "One group went on with simulated readings and is not counted.",
            _ => string.Create(CultureInfo.InvariantCulture, $"{simulated} groups went on with simulated readings and are not counted."),
        };
    }
}
