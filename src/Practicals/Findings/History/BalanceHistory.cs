using System.Globalization;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Measurement.Weighing;

namespace Calx.Practicals.Findings.History;

/// <summary>What the checks of one balance show over time, in divisions of its display.</summary>
public sealed class BalanceHistory
{
    /// <summary>A balance that shows a weight within so many divisions is taken to be right (judgement).</summary>
    public const double ToleranceInDivisions = 1;

    /// <summary>A check so many times the scatter away from the others was misread, or the balance was knocked: judgement.</summary>
    private const double FarScatters = 8;

    /// <summary>With fewer checks than this none can be far from the others.</summary>
    private const int FewestForScatter = 3;

    private readonly Balance balance;
    private readonly double median;
    private readonly double scatter;

    private BalanceHistory(Balance balance, BalanceCheckMade[] checks)
    {
        this.balance = balance;
        Checks = checks;
        double u = balance.ReadingStandardUncertainty() / balance.ResolutionInGrams;
        double[] errors = [.. checks.Select(ErrorInDivisions)];
        median = errors.Length < FewestForScatter ? 0 : Summary.Median(errors);
        scatter = errors.Length < FewestForScatter ? double.PositiveInfinity : Math.Max(u, Summary.MedianAbsoluteDeviation(errors));
        Drift = DriftRule.Of("checks", [.. checks.Where(c => !IsFar(c)).Select(c => (c.Day, ErrorInDivisions(c), u))]);
        Sentences = checks.Length == 0
            ? ["This balance has not been checked with a weight yet."]
            : [.. new[] { Last(), Within(), Far(), Moved() }.OfType<string>()];
    }

    /// <summary>The checks by date.</summary>
    public IReadOnlyList<BalanceCheckMade> Checks { get; }

    /// <summary>Whether the error drifts, in divisions.</summary>
    public Drift Drift { get; }

    /// <summary>What the checks show, one to four sentences for the teacher.</summary>
    public IReadOnlyList<string> Sentences { get; }

    /// <summary>Reads the checks of a balance.</summary>
    /// <param name="balance">The balance.</param>
    /// <param name="checks">Its checks, in any order.</param>
    public static BalanceHistory Of(Balance balance, IReadOnlyList<BalanceCheckMade> checks)
    {
        ArgumentNullException.ThrowIfNull(balance);
        ArgumentNullException.ThrowIfNull(checks);
        return new BalanceHistory(balance, [.. checks.OrderBy(c => c.Day)]);
    }

    /// <summary>Shown less marked, in divisions of the display.</summary>
    public double ErrorInDivisions(BalanceCheckMade check)
    {
        ArgumentNullException.ThrowIfNull(check);
        // Whole divisions stay whole: both are decimals.
        return (double)(check.ErrorInGrams / (decimal)balance.ResolutionInGrams);
    }

    /// <summary>Whether a check lies within the tolerance.</summary>
    public bool IsWithin(BalanceCheckMade check) => Math.Abs(ErrorInDivisions(check)) <= ToleranceInDivisions + 1e-9;

    /// <summary>Whether a check lies so far from the others that it is to be made again; the drift leaves it out.</summary>
    public bool IsFar(BalanceCheckMade check) => Math.Abs(ErrorInDivisions(check) - median) > FarScatters * scatter;

    private string Last()
    {
        BalanceCheckMade last = Checks[^1];
        double error = ErrorInDivisions(last);
        string off = error == 0 ? "exactly that" : $"{Divisions(Math.Abs(error))} {(error < 0 ? "less" : "more")}";
        return $"At the last check a weight of {last.Weight} g was shown as {last.Shown} g: {off}.";
    }

    private string Within()
    {
        int within = Checks.Count(IsWithin);
        if (within == Checks.Count)
        {
            return Checks.Count == 1
                ? "It lies within one division." : string.Create(CultureInfo.InvariantCulture, $"All {Checks.Count} checks lie within one division.");
        }

        string count = Checks.Count == 1 ? "It does not lie within one division"
            : string.Create(CultureInfo.InvariantCulture, $"{within} of {Checks.Count} checks lie within one division");
        return $"{count}: differences of masses taken on this one balance suffer little, a difference between this balance and another suffers all of it.";
    }

    private string? Far()
    {
        int far = Checks.Count(IsFar);
        return far switch
        {
            0 => null,
            1 => "One check lies far from the others and is left out of the drift: make it again, and look whether it was misread.",
            _ => string.Create(CultureInfo.InvariantCulture, $"{far} checks lie far from the others and are left out of the drift: make them again, and look whether they were misread."),
        };
    }

    private string Moved()
    {
        if (Drift is not Drift.Judged drift)
        {
            return ((Drift.Unjudged)Drift).Reason;
        }

        int decimals = Figures.DecimalsFor(drift.Interval.Width / 4);
        string low = Figures.Text(drift.Interval.Low, decimals);
        string high = Figures.Text(drift.Interval.High, decimals);
        string slope = $"{Figures.Text(drift.Slope, decimals)} divisions a {drift.Per} (95 % interval {low} to {high})";
        return drift.IsBeyondChance
            ? $"The balance drifts by {slope}, more than chance explains: it needs adjusting, and checking more often."
            : $"No drift beyond chance is seen: {slope}.";
    }

    private static string Divisions(double number) =>
        string.Create(CultureInfo.InvariantCulture, $"{number:0.##} division{(number == 1 ? string.Empty : "s")}");
}
