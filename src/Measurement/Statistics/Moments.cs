namespace Calx.Measurement.Statistics;

/// <summary>The mean of some values, held to 32 digits, and the sum of squares about it. <c>default</c> is of none.</summary>
internal readonly struct Moments
{
    private readonly DoubleDouble mean;

    private Moments(DoubleDouble mean, double sumOfSquares)
    {
        this.mean = mean;
        SumOfSquares = sumOfSquares;
    }

    public double Mean => mean.High;

    public double SumOfSquares { get; }

    public static Moments Of(ReadOnlySpan<double> values)
    {
        DoubleDouble sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        DoubleDouble mean = sum / values.Length;
        DoubleDouble squares = 0;
        foreach (double value in values)
        {
            double deviation = value - mean.High - mean.Low;
            squares += DoubleDouble.Product(deviation, deviation);
        }

        return new Moments(mean, squares.High);
    }

    /// <summary>How far a value lies from the mean: its low part matters where the spread is near the last digit.</summary>
    public double DeviationOf(double value) => value - mean.High - mean.Low;

    /// <summary>How far another mean lies from this one.</summary>
    public double DeviationOf(Moments other) => (other.mean - mean).High;
}
