using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Measurement.Weighing;
using Calx.Practicals.Texts;

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
    private readonly HistoryTexts texts;

    private BalanceHistory(Balance balance, BalanceCheckMade[] checks, EngineLanguage language)
    {
        this.balance = balance;
        texts = new HistoryTexts(language);
        Checks = checks;
        double u = balance.ReadingStandardUncertainty() / balance.ResolutionInGrams;
        double[] errors = [.. checks.Select(ErrorInDivisions)];
        median = errors.Length < FewestForScatter ? 0 : Summary.Median(errors);
        scatter = errors.Length < FewestForScatter ? double.PositiveInfinity : Math.Max(u, Summary.MedianAbsoluteDeviation(errors));
        Drift = DriftRule.Of(texts.ThreeChecks, texts.NoLineOfChecks, [.. checks.Where(c => !IsFar(c)).Select(c => (c.Day, ErrorInDivisions(c), u))]);
        Sentences = checks.Length == 0
            ? [texts.NotChecked]
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
    /// <param name="language">The language of the sentences; British where nothing else is said.</param>
    public static BalanceHistory Of(Balance balance, IReadOnlyList<BalanceCheckMade> checks, EngineLanguage? language = null)
    {
        ArgumentNullException.ThrowIfNull(balance);
        ArgumentNullException.ThrowIfNull(checks);
        return new BalanceHistory(balance, [.. checks.OrderBy(c => c.Day)], language ?? EngineLanguage.British);
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
        (string marked, string shown, string off) = (last.Weight.ToString(), last.Shown.ToString(), Math.Abs(error).InFigures("0.##"));
        return error switch
        {
            0 => texts.ShownExactly(marked, shown),
            -1 => texts.ShownOneLess(marked, shown, off),
            1 => texts.ShownOneMore(marked, shown, off),
            < 0 => texts.ShownLess(marked, shown, off),
            _ => texts.ShownMore(marked, shown, off),
        };
    }

    private string Within()
    {
        int within = Checks.Count(IsWithin);
        if (within == Checks.Count)
        {
            return Checks.Count == 1 ? texts.ItIsWithin : texts.AllWithin(within.InFigures());
        }

        return Checks.Count == 1 ? texts.ItIsNotWithin : texts.SomeWithin(within.InFigures(), Checks.Count.InFigures());
    }

    private string? Far()
    {
        int far = Checks.Count(IsFar);
        return far switch
        {
            0 => null,
            1 => texts.OneFar,
            _ => texts.SomeFar(far.InFigures()),
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
        string slope = Figures.Text(drift.Slope, decimals);
        string moved = drift.IsByYear ? texts.BalanceByYear(slope, low, high) : texts.BalanceByMonth(slope, low, high);
        return drift.IsBeyondChance ? texts.BalanceDrifts(moved) : texts.BalanceDoesNot(moved);
    }
}
