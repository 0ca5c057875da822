using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Statistics;

/// <summary>
/// A straight line y = intercept + slope·x with the uncertainty of every point on it. Kept about the place where height
/// and slope are uncorrelated, so that a line far from x = 0 loses no digits.
/// </summary>
public sealed class FittedLine
{
    private readonly double centre;
    private readonly double centreVariance;
    private readonly double slopeVariance;

    internal FittedLine(double intercept, double slope, LineSpread spread, double degreesOfFreedom)
    {
        Intercept = intercept;
        Slope = slope;
        centre = spread.Centre;
        centreVariance = spread.CentreVariance;
        slopeVariance = spread.SlopeVariance;
        DegreesOfFreedom = degreesOfFreedom;
    }

    /// <summary>The height at x = 0, in the unit of y; exactly 0 for a line through the origin.</summary>
    public double Intercept { get; }

    /// <summary>The rise for each unit of x.</summary>
    public double Slope { get; }

    /// <summary>The standard uncertainty of <see cref="Intercept"/>; 0 for a line through the origin.</summary>
    public double InterceptStandardUncertainty => Math.Sqrt(centreVariance + (centre * centre * slopeVariance));

    /// <summary>The standard uncertainty of <see cref="Slope"/>.</summary>
    public double SlopeStandardUncertainty => Math.Sqrt(slopeVariance);

    /// <summary>The covariance of intercept and slope; negative where the points lie at positive x.</summary>
    public double Covariance => -centre * slopeVariance;

    /// <summary>The correlation of intercept and slope (JCGM 100:2008, H.3: r); 0 where either is exact.</summary>
    public double Correlation
    {
        get
        {
            double product = InterceptStandardUncertainty * SlopeStandardUncertainty;
            return product > 0 ? Covariance / product : 0;
        }
    }

    /// <summary>How well the uncertainties themselves are known: points less parameters; +∞ where they were given.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>The height of the line at a place, with its standard uncertainty (JCGM 100:2008, H.3.4).</summary>
    /// <exception cref="ArgumentException"><paramref name="x"/> is not finite.</exception>
    public LinePoint At(double x)
    {
        Require.Finite([x], 1);
        double distance = x - centre;
        double variance = centreVariance + (distance * distance * slopeVariance);
        return new LinePoint(x, Intercept + (Slope * x), Math.Sqrt(variance), DegreesOfFreedom);
    }
}

/// <summary>The place where height and slope are uncorrelated, and the variances there. <c>default</c> is an exact line.</summary>
internal readonly record struct LineSpread(double Centre, double CentreVariance, double SlopeVariance)
{
    public LineSpread Scaled(double factor) => new(Centre, CentreVariance * factor, SlopeVariance * factor);
}

/// <summary>A point on a fitted line.</summary>
public sealed class LinePoint
{
    internal LinePoint(double x, double value, double standardUncertainty, double degreesOfFreedom)
    {
        X = x;
        Value = value;
        StandardUncertainty = standardUncertainty;
        DegreesOfFreedom = degreesOfFreedom;
    }

    /// <summary>Where on the line.</summary>
    public double X { get; }

    /// <summary>The height of the line, in the unit of y.</summary>
    public double Value { get; }

    /// <summary>The standard uncertainty of the height: of the line itself, not of a new reading.</summary>
    public double StandardUncertainty { get; }

    /// <summary>The degrees of freedom of that uncertainty.</summary>
    public double DegreesOfFreedom { get; }

    /// <summary>The interval that holds the true height with a probability between 0 and 1, by Student's t.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverage"/> is not between 0 and 1.</exception>
    public CoverageInterval IntervalFor(double coverage)
    {
        Require.Probability(coverage);
        double half = -StudentT.Quantile((1 - coverage) / 2, DegreesOfFreedom) * StandardUncertainty;
        return new CoverageInterval(Value - half, Value + half, coverage);
    }
}
