namespace Calx.Measurement.Statistics;

/// <summary>The mean of some values, held as a pair of doubles, and the sum of squares about it. <c>default</c> is of none.</summary>
internal readonly struct Moments
{
    private readonly double remainder;

    private Moments(double mean, double remainder, double sumOfSquares, int count)
    {
        Mean = mean;
        this.remainder = remainder;
        SumOfSquares = sumOfSquares;
        Count = count;
    }

    public double Mean { get; }

    public double SumOfSquares { get; }

    public int Count { get; }

    public static Moments Of(ReadOnlySpan<double> values)
    {
        CompensatedSum sum = default;
        foreach (double value in values)
        {
            sum.Add(value);
        }

        (double mean, double remainder) = Divide(sum, values.Length);
        CompensatedSum squares = default;
        foreach (double value in values)
        {
            double deviation = value - mean - remainder;
            squares.AddProduct(deviation, deviation);
        }

        return new Moments(mean, remainder, squares.Value, values.Length);
    }

    /// <summary>How far a value lies from the mean: the remainder matters where the spread is near the last digit.</summary>
    public double DeviationOf(double value) => value - Mean - remainder;

    /// <summary>Total of n groups' sums about a common mean needs the distance between two means to full length.</summary>
    public double DeviationOf(Moments other) => other.Mean - Mean - (remainder - other.remainder);

    private static (double Mean, double Remainder) Divide(CompensatedSum sum, int count)
    {
        double mean = sum.Value / count;
        double left = Math.FusedMultiplyAdd(-mean, count, sum.Value) + sum.Remainder;
        return (mean, left / count);
    }
}
