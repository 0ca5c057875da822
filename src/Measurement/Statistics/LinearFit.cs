using Calx.Measurement.Distributions;

namespace Calx.Measurement.Statistics;

/// <summary>Coefficients found by least squares, with what the scatter about the fit says of them.</summary>
public sealed class LinearFit
{
    private readonly double[,] inverse;

    internal LinearFit(OrthogonalFactors factors, bool withIntercept)
    {
        inverse = factors.InverseOfNormal();
        Coefficients = factors.Solve();
        ResidualSumOfSquares = factors.ResidualSquares;
        ResidualDegreesOfFreedom = factors.Rows - factors.Count;
        RegressionDegreesOfFreedom = factors.Count - (withIntercept ? 1 : 0);
        DoubleDouble explained = 0;
        for (int k = withIntercept ? 1 : 0; k < factors.Count; k++)
        {
            explained += factors.SquareOf(k);
        }

        RegressionSumOfSquares = explained.High;
        StandardErrors = [.. Enumerable.Range(0, factors.Count).Select(k => Math.Sqrt(Covariance(k, k)))];
    }

    /// <summary>The coefficients in the order of the columns, the intercept first where one was fitted.</summary>
    public IReadOnlyList<double> Coefficients { get; }

    /// <summary>The standard uncertainty of each coefficient from the scatter about the fit.</summary>
    public IReadOnlyList<double> StandardErrors { get; }

    /// <summary>The sum of squares about the fit.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>Points less coefficients, 1 or more.</summary>
    public int ResidualDegreesOfFreedom { get; }

    /// <summary>The sum of squares that the fit explains: about the mean with an intercept, about 0 without.</summary>
    public double RegressionSumOfSquares { get; }

    /// <summary>How many coefficients beside the intercept.</summary>
    public int RegressionDegreesOfFreedom { get; }

    /// <summary>The standard deviation about the fit, in the unit of y.</summary>
    public double ResidualStandardDeviation => Math.Sqrt(ResidualSumOfSquares / ResidualDegreesOfFreedom);

    /// <summary>The share of the sum of squares that the fit explains; 0 where y does not vary.</summary>
    public double RSquared =>
        RegressionSumOfSquares > 0 ? RegressionSumOfSquares / (RegressionSumOfSquares + ResidualSumOfSquares) : 0;

    /// <summary>The F of all coefficients beside the intercept; +∞ where the fit is exact, 0 where y does not vary.</summary>
    public double FStatistic =>
        RegressionSumOfSquares > 0
            ? RegressionSumOfSquares / RegressionDegreesOfFreedom / (ResidualSumOfSquares / ResidualDegreesOfFreedom)
            : 0;

    /// <summary>The chance of such an F or more if y depended on none of the columns.</summary>
    public double FProbability => FisherF.UpperTail(FStatistic, RegressionDegreesOfFreedom, ResidualDegreesOfFreedom);

    /// <summary>The covariance of two coefficients, counted from 0.</summary>
    public double Covariance(int left, int right) =>
        inverse[left, right] * ResidualSumOfSquares / ResidualDegreesOfFreedom;
}

/// <summary>Whether coefficients could be found.</summary>
public abstract record LinearFitResult
{
    private LinearFitResult()
    {
    }

    /// <summary>There is a fit.</summary>
    public sealed record Fitted : LinearFitResult
    {
        internal Fitted(LinearFit fit) => Fit = fit;

        /// <summary>The coefficients and how well they fit.</summary>
        public LinearFit Fit { get; }
    }

    /// <summary>The points do not determine the coefficients and their uncertainty.</summary>
    public sealed record NotFitted : LinearFitResult
    {
        internal NotFitted(string reason) => Reason = reason;

        /// <summary>Why not, in a plain clause.</summary>
        public string Reason { get; }
    }
}
