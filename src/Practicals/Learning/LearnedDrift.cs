using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Measurement.Uncertainty;
using Calx.Practicals.Texts;

namespace Calx.Practicals.Learning;

/// <summary>How fast the error of a balance moves: a straight line through its checks, each weighted by its uncertainty.</summary>
public sealed class LearnedDrift
{
    /// <summary>A faster drift in divisions a year is told: judgement.</summary>
    public const double WorthTellingAYear = 0.5;

    /// <summary>Two checks always lie on a line.</summary>
    private const int FewestDays = 3;

    private LearnedDrift(string balance, double perMonth, CoverageInterval interval, int checks, EngineLanguage language)
    {
        (Balance, PerMonth, Interval, Checks) = (balance, perMonth, interval, checks);
        if (!interval.Contains(0) && 12 * Math.Abs(perMonth) > WorthTellingAYear)
        {
            int decimals = Figures.DecimalsFor(3 * interval.Width);
            Sentence = new LearningTexts(language).BalanceDrifts(
                balance, Figures.Text(12 * perMonth, decimals), Figures.Text(12 * interval.Low, decimals), Figures.Text(12 * interval.High, decimals));
        }
    }

    /// <summary>Name of the balance.</summary>
    public string Balance { get; }

    /// <summary>Change of its error in divisions a month.</summary>
    public double PerMonth { get; }

    /// <summary>90 % interval of <see cref="PerMonth"/> by Student's t; wider where the checks scatter more than their uncertainties
    /// say, never narrower.</summary>
    public CoverageInterval Interval { get; }

    /// <summary>How many checks it rests on.</summary>
    public int Checks { get; }

    /// <summary>What a teacher is told; null where the drift is small, or no more than chance.</summary>
    public string? Sentence { get; }

    /// <summary>The drift of one balance; null with checks at fewer than three times.</summary>
    internal static LearnedDrift? Of(string balance, IReadOnlyList<BalanceCheckSeen> checks, EngineLanguage language)
    {
        if (checks.Select(c => c.Month).Distinct().Count() < FewestDays)
        {
            return null;
        }

        UncertainPoint[] points =
        [
            .. checks.OrderBy(c => c.Month).ThenBy(c => c.ErrorInDivisions).ThenBy(c => c.StandardUncertaintyInDivisions)
                .Select(c => new UncertainPoint(c.Month, 0, c.ErrorInDivisions, c.StandardUncertaintyInDivisions)),
        ];
        if (StraightLine.WithErrorsInBoth(points) is not YorkResult.Fitted fitted)
        {
            return null;
        }

        FittedLine line = fitted.Fit.LineWithScatter;
        double half = StudentT.Quantile((1 + RateRule.Coverage) / 2, line.DegreesOfFreedom) * line.SlopeStandardUncertainty;
        return new LearnedDrift(
            balance, line.Slope, new CoverageInterval(line.Slope - half, line.Slope + half, RateRule.Coverage), points.Length, language);
    }
}
