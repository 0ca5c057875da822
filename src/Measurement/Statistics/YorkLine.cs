namespace Calx.Measurement.Statistics;

/// <summary>A line through points uncertain in both directions, and whether they agree with their uncertainties.</summary>
public sealed class YorkLine
{
    internal YorkLine(double intercept, double slope, LineSpread spread, YorkAgreement agreement)
    {
        ChiSquared = agreement.ChiSquared;
        Count = agreement.Count;
        DegreesOfFreedom = agreement.Count - agreement.Parameters;
        Steps = agreement.Steps;
        Line = new FittedLine(intercept, slope, spread, double.PositiveInfinity);
        LineWithScatter = new FittedLine(
            intercept, slope, spread.Scaled(Math.Max(1, ReducedChiSquared)), DegreesOfFreedom);
    }

    /// <summary>The line with the uncertainty that the points' own uncertainties give it.</summary>
    public FittedLine Line { get; }

    /// <summary>
    /// The same line with its uncertainty widened by √(χ²/ν) where the points scatter more than their uncertainties say
    /// (Birge's ratio), never narrowed; its intervals use Student's t.
    /// </summary>
    public FittedLine LineWithScatter { get; }

    /// <summary>The weighted sum of squared distances from the line.</summary>
    public double ChiSquared { get; }

    /// <summary>How many points.</summary>
    public int Count { get; }

    /// <summary>Points less parameters, 1 or more.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>χ²/ν: near 1 where points and uncertainties agree.</summary>
    public double ReducedChiSquared => ChiSquared / DegreesOfFreedom;

    /// <summary>The chance of so large a χ² if the points lay on a line within their uncertainties.</summary>
    public double Probability => Distributions.ChiSquared.UpperTail(ChiSquared, DegreesOfFreedom);

    /// <summary>How many steps the slope took to settle.</summary>
    public int Steps { get; }
}

/// <summary>How well points agree with a line.</summary>
internal sealed record YorkAgreement(double ChiSquared, int Count, int Parameters, int Steps);

/// <summary>Whether a line could be fitted to points uncertain in both directions.</summary>
public abstract record YorkResult
{
    private YorkResult()
    {
    }

    /// <summary>There is a line.</summary>
    public sealed record Fitted : YorkResult
    {
        internal Fitted(YorkLine fit) => Fit = fit;

        /// <summary>The line and how well it fits.</summary>
        public YorkLine Fit { get; }
    }

    /// <summary>The points do not determine a line.</summary>
    public sealed record NotFitted : YorkResult
    {
        internal NotFitted(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}
