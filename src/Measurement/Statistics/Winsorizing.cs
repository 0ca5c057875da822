namespace Calx.Measurement.Statistics;

/// <summary>The iteration that Huber's proposal 2 and algorithm A share.</summary>
internal sealed class Winsorizing(ReadOnlySpan<double> values, double limit, double factor)
{
    private const int MostSteps = 10_000;

    /// <summary>A scale that has shrunk to this share of where it began is on its way to 0.</summary>
    private const double Vanishing = 1e-6;

    private const double Settled = 1e-14;

    private readonly double[] values = values.ToArray();
    private readonly double[] drawnIn = new double[values.Length];

    /// <summary>A spread of so little is that of the arithmetic which made the values, such as 0.1 + 0.2 beside 0.3.</summary>
    private readonly double roundOff = 1e-15 * Summary.Median(Array.ConvertAll(values.ToArray(), Math.Abs));

    /// <param name="consistency">What makes the median absolute deviation a first scale.</param>
    public RobustResult Settle(double consistency)
    {
        double centre = Summary.Median(values);
        double start = consistency * Summary.UnscaledMedianAbsoluteDeviation(values);
        if (start <= roundOff)
        {
            // More than half are equal (ISO 13528:2015, C.3, note): the plain spread is the only other place to begin.
            start = Summary.StandardDeviation(values);
        }

        return start <= roundOff
            ? new RobustResult.NoScale(centre, "all values are equal")
            : Iterate(centre, start);
    }

    private RobustResult Iterate(double median, double start)
    {
        double centre = median;
        double scale = start;
        for (int step = 1; step <= MostSteps; step++)
        {
            (double nextCentre, double nextScale) = Next(centre, scale);
            if (nextScale < Math.Max(Vanishing * start, roundOff))
            {
                return new RobustResult.NoScale(median, "more than half of the values are equal, so no spread is left");
            }

            double moved = Math.Max(Math.Abs(nextCentre - centre), Math.Abs(nextScale - scale));
            (centre, scale) = (nextCentre, nextScale);
            if (moved <= Math.Max(Settled * scale, roundOff / 8))
            {
                return new RobustResult.Estimated(centre, scale, values.Length, step);
            }
        }

        throw new ArithmeticException(
            $"Robust scale of {values.Length} values: not settled at {scale} after {MostSteps} steps.");
    }

    private (double Centre, double Scale) Next(double centre, double scale)
    {
        for (int i = 0; i < values.Length; i++)
        {
            drawnIn[i] = Math.Clamp(values[i], centre - (limit * scale), centre + (limit * scale));
        }

        Moments moments = Moments.Of(drawnIn);
        return (moments.Mean, factor * Math.Sqrt(moments.SumOfSquares / (values.Length - 1)));
    }
}
