using Calx.Measurement.Statistics.Series;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

/// <summary>The filter against the whole covariance matrix, at uneven times.</summary>
public class NoiseFilterTests
{
    private static readonly double[] Times = [0, 1, 2.5, 3, 7, 8, 20, 21, 22.2, 40];
    private static readonly double[] Readings = [0.3, -0.2, 0.8, 1.4, -2.1, 0.05, 0.6, 0.9, -1.2, 3.3];

    [Theory]
    [InlineData(0.4, 1.3, 5, 0)]
    [InlineData(0, 2, 3, 0)]
    [InlineData(0.4, 0, 1, 0.2)]
    [InlineData(1.7, 0, 1, 0)]
    public void Sum_of_squares_and_determinant_are_those_of_the_matrix(double white, double shared, double time, double walk)
    {
        var filter = new NoiseFilter(Times, new NoiseNode(white, shared, time, walk, 0, true));
        var whitened = new double[Times.Length];
        filter.Apply(Readings, whitened);
        (double squares, double logDeterminant) = Dense.Of(Dense.Covariance(Times, white, shared, time, walk), Readings, Readings);
        Agree.Relative(1e-11, squares, whitened.Sum(value => value * value));
        Agree.Within(1e-11, logDeterminant, filter.LogDeterminant);
    }
}
