using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics.Series;

/// <summary>
/// Student's distribution for one number of degrees of freedom, as a table with cubics between its entries: a quantile of a
/// mixture asks for it thousands of times. Off by less than 1e-7, which nobody sees in an interval.
/// </summary>
internal sealed class TailTable(double degreesOfFreedom)
{
    private const int StepsPerUnit = 32;
    private const int Units = 12;

    private readonly Lazy<double[]> table = new(() => [.. Enumerable.Range(-1, (StepsPerUnit * Units) + 4)
        .Select(i => StudentT.UpperTail((double)i / StepsPerUnit, degreesOfFreedom))]);

    /// <summary>The degrees of freedom; +∞ for the normal distribution.</summary>
    public double DegreesOfFreedom => degreesOfFreedom;

    /// <summary>The probability of a value at or below t.</summary>
    public double Cumulative(double t)
    {
        double size = Math.Abs(t);
        double upper = size < Units ? Between(size * StepsPerUnit)
            // Beyond twelve standard deviations of a normal distribution lies less than 2e-33.
            : double.IsPositiveInfinity(degreesOfFreedom) ? 0 : StudentT.UpperTail(size, degreesOfFreedom);
        return t > 0 ? 1 - upper : upper;
    }

    private double Between(double place)
    {
        int whole = (int)place;
        double x = place - whole;
        double[] entries = table.Value;
        (double a, double b, double c, double d) = (entries[whole], entries[whole + 1], entries[whole + 2], entries[whole + 3]);
        // Lagrange's cubic through the places -1, 0, 1, 2.
        return (-x * (x - 1) * (x - 2) / 6 * a) + ((x + 1) * (x - 1) * (x - 2) / 2 * b)
            - ((x + 1) * x * (x - 2) / 2 * c) + ((x + 1) * x * (x - 1) / 6 * d);
    }
}
