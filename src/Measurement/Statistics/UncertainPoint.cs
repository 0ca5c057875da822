namespace Calx.Measurement.Statistics;

/// <summary>
/// A point of a graph that is uncertain in both directions, such as a gain of mass against a mass of sample: both came
/// from readings, and where they share a reading their errors are correlated.
/// </summary>
public sealed class UncertainPoint
{
    /// <summary>Takes a point.</summary>
    /// <param name="x">Where along the graph.</param>
    /// <param name="xStandardUncertainty">Its standard uncertainty, 0 or more.</param>
    /// <param name="y">The height.</param>
    /// <param name="yStandardUncertainty">Its standard uncertainty, above 0.</param>
    /// <param name="correlation">The correlation of the two errors, between -1 and 1, both excluded.</param>
    /// <exception cref="ArgumentException">x or y is not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An uncertainty or the correlation is out of its range.</exception>
    public UncertainPoint(
        double x, double xStandardUncertainty, double y, double yStandardUncertainty, double correlation = 0)
    {
        Require.Finite([x, y], 2, nameof(x));
        Require.Positive(yStandardUncertainty);
        if (!(xStandardUncertainty >= 0 && double.IsFinite(xStandardUncertainty)))
        {
            throw new ArgumentOutOfRangeException(
                nameof(xStandardUncertainty), xStandardUncertainty, "A standard uncertainty of 0 or more is needed.");
        }

        if (!(correlation > -1 && correlation < 1))
        {
            throw new ArgumentOutOfRangeException(
                nameof(correlation), correlation, "A correlation between -1 and 1, both excluded, is needed.");
        }

        X = x;
        XStandardUncertainty = xStandardUncertainty;
        Y = y;
        YStandardUncertainty = yStandardUncertainty;
        Correlation = correlation;
    }

    /// <summary>Where along the graph.</summary>
    public double X { get; }

    /// <summary>The standard uncertainty of <see cref="X"/>.</summary>
    public double XStandardUncertainty { get; }

    /// <summary>The height.</summary>
    public double Y { get; }

    /// <summary>The standard uncertainty of <see cref="Y"/>.</summary>
    public double YStandardUncertainty { get; }

    /// <summary>The correlation of the errors of x and y.</summary>
    public double Correlation { get; }
}
