using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>Parameters found by nonlinear least squares, with what the scatter about the curve says of them.</summary>
/// <remarks>
/// Covariances are those of the curve straightened at the least, σ²(JᵀJ)⁻¹: good where the curve bends little over the
/// uncertainty of the parameters. A parameter at a bound counts as exact.
/// </remarks>
public sealed class NonlinearFit
{
    private readonly double[,] inverse;

    internal NonlinearFit(NonlinearProblem problem, TrustRegion search, double[,] inverse)
    {
        this.inverse = inverse;
        Names = problem.Model.Parameters;
        Parameters = search.Point.Parameters;
        AtBound = [.. Enumerable.Range(0, Parameters.Count).Except(search.Free).Select(k => Names[k])];
        ResidualSumOfSquares = search.Point.SumOfSquares;
        DegreesOfFreedom = problem.Model.Points - search.Free.Count;
        Residuals = [.. search.Point.Residuals.Select((part, i) => part * problem.StandardUncertainties[i])];
        StandardUncertainties = [.. Enumerable.Range(0, Parameters.Count).Select(k => Math.Sqrt(Covariance(k, k)))];
        Steps = search.Steps;
    }

    /// <summary>The names of the parameters.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>The parameters, in the order of the names.</summary>
    public IReadOnlyList<double> Parameters { get; }

    /// <summary>The standard uncertainty of each parameter from the scatter about the curve.</summary>
    public IReadOnlyList<double> StandardUncertainties { get; }

    /// <summary>The names of the parameters that lie at a bound and would lie beyond it if they could.</summary>
    public IReadOnlyList<string> AtBound { get; }

    /// <summary>The sum of squares about the curve, each over the square of its uncertainty where those were given.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>Readings less parameters that are not at a bound, 1 or more.</summary>
    public int DegreesOfFreedom { get; }

    /// <summary>The standard deviation about the curve: in the unit of the readings, or, where uncertainties were given, by
    /// how many times the readings scatter more than those say.</summary>
    public double ResidualStandardDeviation => Math.Sqrt(ResidualSumOfSquares / DegreesOfFreedom);

    /// <summary>Reading less curve, in the unit of the readings.</summary>
    public IReadOnlyList<double> Residuals { get; }

    /// <summary>How many steps the search tried.</summary>
    public int Steps { get; }

    /// <summary>The covariance of two parameters, counted from 0, from the scatter about the curve.</summary>
    public double Covariance(int left, int right) =>
        inverse[left, right] * ResidualSumOfSquares / DegreesOfFreedom;

    /// <summary>The covariance of two parameters if the given uncertainties of the readings are right, whatever the scatter.</summary>
    public double CovarianceAsGiven(int left, int right) => inverse[left, right];

    /// <summary>The standard uncertainty of a quantity that follows from the parameters, from the scatter.</summary>
    /// <param name="derivatives">Its derivative by each parameter.</param>
    /// <exception cref="ArgumentException">There are not as many derivatives as parameters.</exception>
    public double StandardUncertaintyOf(ReadOnlySpan<double> derivatives)
    {
        Require.SameLength(derivatives, Parameters.Count);
        double sum = 0;
        for (int i = 0; i < derivatives.Length; i++)
        {
            for (int j = 0; j < derivatives.Length; j++)
            {
                sum += derivatives[i] * derivatives[j] * Covariance(i, j);
            }
        }

        return Math.Sqrt(Math.Max(0, sum));
    }

    /// <summary>The interval of a parameter by Student's t.</summary>
    /// <param name="parameter">Which, counted from 0.</param>
    /// <param name="coverage">Between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="coverage"/> is not between 0 and 1.</exception>
    public CoverageInterval Interval(int parameter, double coverage)
    {
        Require.Probability(coverage);
        double half = -StudentT.Quantile((1 - coverage) / 2, DegreesOfFreedom) * StandardUncertainties[parameter];
        return new CoverageInterval(Parameters[parameter] - half, Parameters[parameter] + half, coverage);
    }
}
