using Calx.Measurement.Expressions;
using Calx.Measurement.Statistics;
using Calx.Measurement.Statistics.Nonlinear;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Statistics.Nonlinear;

public class NonlinearLeastSquaresTests
{
    private static readonly double[] Times = [0, 1, 2, 3, 5, 8, 12];

    [Fact]
    public void A_straight_line_gives_what_linear_least_squares_gives()
    {
        double[] y = [1.02, 1.49, 2.05, 2.47, 3.52, 5.01, 6.98];
        LinearFit line = Assert.IsType<LinearFitResult.Fitted>(LinearLeastSquares.Polynomial(Times, y, 1)).Fit;
        NonlinearFit fit = Converged(Problem("a+b*t", ["a", "b"], y, [100, -7]));
        for (int k = 0; k < 2; k++)
        {
            Agree.Relative(1e-12, line.Coefficients[k], fit.Parameters[k]);
            Agree.Relative(1e-11, line.StandardErrors[k], fit.StandardUncertainties[k]);
        }

        Agree.Relative(1e-11, line.Covariance(0, 1), fit.Covariance(0, 1));
        Agree.Relative(1e-11, line.ResidualSumOfSquares, fit.ResidualSumOfSquares);
        // At t = 4 the line is a + 4b; JCGM 100:2008, 5.2.2 with the covariance above.
        double u = Math.Sqrt(line.Covariance(0, 0) + (8 * line.Covariance(0, 1)) + (16 * line.Covariance(1, 1)));
        Agree.Relative(1e-11, u, fit.StandardUncertaintyOf([1, 4]));
    }

    [Fact]
    public void A_reading_with_half_the_uncertainty_counts_as_four_readings()
    {
        double[] y = [10.1, 6.2, 3.6, 2.3, 0.8, 0.2, 0.1];
        double[] uncertainties = [1, 1, 0.5, 1, 1, 1, 1];
        NonlinearFit weighted = Converged(Problem("a*exp(-k*t)", ["a", "k"], y, [5, 1]).Weighted(uncertainties));
        NonlinearFit repeated = Converged(Problem(
            "a*exp(-k*t)", ["a", "k"], [.. y, y[2], y[2], y[2]], [5, 1], [.. Times, 2, 2, 2]));
        Agree.Relative(1e-10, repeated.Parameters[1], weighted.Parameters[1]);
        Agree.Relative(1e-10, repeated.CovarianceAsGiven(1, 1), weighted.CovarianceAsGiven(1, 1));
        Assert.Equal(5, weighted.DegreesOfFreedom);
    }

    [Fact]
    public void Drawn_exponentials_without_noise_are_found_from_a_rate_that_is_ten_times_off()
    {
        Gen.Select(Gen.Double[0.5, 50], Gen.Double[0.05, 1.5], Gen.Double[-20, 20]).Always((size, rate, level) =>
        {
            double[] y = [.. Times.Select(t => level + (size * Math.Exp(-rate * t)))];
            double far = rate < 0.3 ? 10 * rate : rate / 10;
            NonlinearFit fit = Converged(Problem("c+a*exp(-k*t)", ["c", "a", "k"], y, [y[^1], y[0] - y[^1], far]));
            Agree.Within(1e-8, rate, fit.Parameters[2]);
            Agree.Within(1e-7 * size, size, fit.Parameters[1]);
        });
    }

    [Fact]
    public void The_unit_of_a_parameter_does_not_change_the_answer()
    {
        double[] y = [10.1, 6.2, 3.6, 2.3, 0.8, 0.2, 0.1];
        NonlinearFit inSeconds = Converged(Problem("a*exp(-k*t)", ["a", "k"], y, [5, 1]));
        NonlinearFit inYears = Converged(Problem("a*exp(-k*t)", ["a", "k"], y, [5, 3.2e7], [.. Times.Select(t => t / 3.2e7)]));
        Agree.Relative(1e-10, inSeconds.Parameters[1] * 3.2e7, inYears.Parameters[1]);
        Agree.Relative(1e-10, inSeconds.StandardUncertainties[1] * 3.2e7, inYears.StandardUncertainties[1]);
    }

    [Fact]
    public void Parameters_that_only_move_together_are_named()
    {
        double[] y = [10.1, 6.2, 3.6, 2.3, 0.8, 0.2, 0.1];
        var twins = Assert.IsType<NonlinearFitResult.NotIdentified>(
            NonlinearLeastSquares.Fit(Problem("a*b*exp(-k*t)", ["a", "b", "k"], y, [5, 1, 1])));
        Assert.Equal(["a", "b"], twins.Parameters);
        Assert.Equal("the readings do not tell a and b apart", twins.Reason);
        var idle = Assert.IsType<NonlinearFitResult.NotIdentified>(
            NonlinearLeastSquares.Fit(Problem("a*exp(-k*t)+0*c", ["a", "k", "c"], y, [5, 1, 1])));
        Assert.Equal("the readings say nothing about c", idle.Reason);
    }

    [Fact]
    public void A_parameter_stops_at_its_bound_and_is_named()
    {
        // The slope of these readings is 1: held to 0.5 at most, the line's height is their mean less half their mean time.
        double[] y = [.. Times.Select(t => 3 + t)];
        NonlinearFit fit = Converged(Problem("a+b*t", ["a", "b"], y, [0, 0.2])
            .Bounded([double.NegativeInfinity, 0], [double.PositiveInfinity, 0.5]));
        Assert.Equal(["b"], fit.AtBound);
        Assert.Equal(0.5, fit.Parameters[1]);
        Agree.Within(1e-12, y.Average() - (0.5 * Times.Average()), fit.Parameters[0]);
        Assert.Equal(0, fit.StandardUncertainties[1]);
        Assert.Equal(6, fit.DegreesOfFreedom);
    }

    [Fact]
    public void Bounds_that_do_not_matter_change_nothing()
    {
        double[] y = [10.1, 6.2, 3.6, 2.3, 0.8, 0.2, 0.1];
        NonlinearProblem free = Problem("a*exp(-k*t)", ["a", "k"], y, [5, 1]);
        Assert.Equal(Converged(free).Parameters[1], Converged(free.Bounded([0, 0], [1000, 1000])).Parameters[1], 1e-13);
    }

    [Fact]
    public void What_cannot_be_fitted_says_why()
    {
        double[] y = [10.1, 6.2, 3.6, 2.3, 0.8, 0.2, 0.1];
        var few = Assert.IsType<NonlinearFitResult.TooFewPoints>(
            NonlinearLeastSquares.Fit(Problem("a*exp(-k*t)", ["a", "k"], [1, 2], [1, 1], [0, 1])));
        Assert.Equal("2 readings cannot judge 2 parameters: at least 3 are needed", few.Reason);
        var nowhere = Assert.IsType<NonlinearFitResult.DidNotConverge>(
            NonlinearLeastSquares.Fit(Problem("a*ln(k*t+1)", ["a", "k"], y, [1, -1])));
        Assert.Equal("the curve has no value at the start", nowhere.Reason);
        Assert.Throws<ArgumentException>(() => Problem("a+b*t", ["a", "b"], y, [1]));
        Assert.Throws<ArgumentException>(() => Problem("a+b*t", ["a", "b"], [double.NaN, .. y[1..]], [1, 1]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Problem("a+b*t", ["a", "b"], y, [1, 1]).Weighted(new double[7]));
        Assert.Throws<ArgumentException>(() => Problem("a+b*t", ["a", "b"], y, [1, 1]).Bounded([1, 1], [1, 2]));
    }

    [Fact]
    public void A_curve_that_has_no_value_on_the_way_is_walked_round()
    {
        double[] y = [.. Times.Select(t => 2 * Math.Log((0.5 * t) + 1))];
        NonlinearFit fit = Converged(Problem("a*ln(k*t+1)", ["a", "k"], y, [0.1, 30]));
        Agree.Within(1e-8, 0.5, fit.Parameters[1]);
    }

    private static NonlinearProblem Problem(string formula, string[] names, double[] y, double[] start, double[]? times = null) =>
        new(
            new FormulaModel(Expression.Parse(formula).Value, names, new Dictionary<string, double[]> { ["t"] = times ?? Times }),
            y,
            start);

    private static NonlinearFit Converged(NonlinearProblem problem) =>
        Assert.IsType<NonlinearFitResult.Converged>(NonlinearLeastSquares.Fit(problem)).Fit;
}
