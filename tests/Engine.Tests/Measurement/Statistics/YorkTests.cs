using Calx.Measurement.Statistics;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class YorkTests
{
    [Fact]
    public void Pearsons_data_with_Yorks_weights_give_Yorks_line()
    {
        // York et al., Am. J. Phys. 72 (2004) 367; the nine digits from the bfsl package's tests, recomputed to twelve.
        UncertainPoint[] points = [.. ReferenceTable.Read("york_pearson_data.csv").Rows.Select(row => new UncertainPoint(
            row.Number("x"), 1 / Math.Sqrt(row.Number("weight_x")), row.Number("y"), 1 / Math.Sqrt(row.Number("weight_y"))))];
        ReferenceRow[] published = [.. ReferenceTable.Read("york_pearson_results.csv").Rows];
        YorkLine fit = Fitted(StraightLine.WithErrorsInBoth(points));

        Agree.Within(1e-9, published[0].Number("intercept"), fit.Line.Intercept);
        Agree.Within(1e-9, published[0].Number("slope"), fit.Line.Slope);
        Agree.Within(1e-9, published[0].Number("se_intercept"), fit.Line.InterceptStandardUncertainty);
        Agree.Within(1e-9, published[0].Number("se_slope"), fit.Line.SlopeStandardUncertainty);
        // That package takes the covariance about the observed mean of x, York's paper about the adjusted one.
        Agree.Within(5e-5, published[0].Number("cov_slope_intercept"), fit.Line.Covariance);
        Agree.Within(1e-9, published[0].Number("chi2"), fit.ChiSquared);
        Agree.Within(1e-9, published[0].Number("reduced_chi2"), fit.ReducedChiSquared);
        Agree.Within(1e-9, published[0].Number("p_value"), fit.Probability);
        Agree.Within(1e-8, published[1].Number("se_intercept"), fit.LineWithScatter.InterceptStandardUncertainty);
        Agree.Within(1e-8, published[1].Number("se_slope"), fit.LineWithScatter.SlopeStandardUncertainty);
    }

    /// <summary>scipy.odr, and least squares over all true x where errors are correlated: tests/reference/scripts/york.py.</summary>
    [Fact]
    public void Lines_agree_with_two_general_minimisers_with_and_without_correlated_errors()
    {
        ReferenceTable points = ReferenceTable.Read("computed/york_points.csv");
        foreach (ReferenceRow row in ReferenceTable.Read("computed/york_lines.csv").Rows)
        {
            UncertainPoint[] mine = [.. points.Rows.Where(p => p.Text("case") == row.Text("case")).Select(p =>
                new UncertainPoint(p.Number("x"), p.Number("ux"), p.Number("y"), p.Number("uy"), p.Number("r")))];
            YorkLine fit = Fitted(row.Number("origin") == 1
                ? StraightLine.ThroughOriginWithErrorsInBoth(mine)
                : StraightLine.WithErrorsInBoth(mine));
            Agree.Within(1e-6, row.Number("intercept"), fit.Line.Intercept);
            Agree.Within(1e-6, row.Number("slope"), fit.Line.Slope);
            Agree.Relative(1e-6, row.Number("chi_squared"), fit.ChiSquared);
            // York's uncertainties are expectations; the minimisers' are those of the curvature at these very points.
            Agree.Relative(0.05, row.Number("u_slope"), fit.Line.SlopeStandardUncertainty);
        }
    }

    [Fact]
    public void Exact_x_and_equal_uncertainties_of_y_give_ordinary_least_squares()
    {
        double[] x = [0.1, 0.2, 0.3, 0.45];
        double[] y = [0.07, 0.13, 0.21, 0.29];
        UncertainPoint[] points = [.. x.Zip(y, (a, b) => new UncertainPoint(a, 0, b, 0.01))];
        var plain = Assert.IsType<LineResult.Fitted>(StraightLine.LeastSquares(x, y));
        YorkLine fit = Fitted(StraightLine.WithErrorsInBoth(points));
        Agree.Relative(1e-12, plain.Fit.Line.Slope, fit.Line.Slope);
        Agree.Relative(1e-12, plain.Fit.ResidualSumOfSquares / 1e-4, fit.ChiSquared);
    }

    [Fact]
    public void Exchanging_the_axes_turns_the_slope_upside_down()
    {
        UncertainPoint[] points = [.. ReferenceTable.Read("york_pearson_data.csv").Rows.Select(row => new UncertainPoint(
            row.Number("x"), 1 / Math.Sqrt(row.Number("weight_x")), row.Number("y"), 1 / Math.Sqrt(row.Number("weight_y")), 0.4))];
        UncertainPoint[] turned = [.. points.Reverse().Select(p => new UncertainPoint(
            p.Y, p.YStandardUncertainty, p.X, p.XStandardUncertainty, p.Correlation))];
        YorkLine fit = Fitted(StraightLine.WithErrorsInBoth(points));
        YorkLine other = Fitted(StraightLine.WithErrorsInBoth(turned));
        Agree.Relative(1e-10, 1 / fit.Line.Slope, other.Line.Slope);
        Agree.Relative(1e-10, fit.ChiSquared, other.ChiSquared);
    }

    [Fact]
    public void Scatter_beyond_the_uncertainties_widens_and_scatter_within_them_never_narrows()
    {
        UncertainPoint[] calm = [new(0, 0.1, 0, 0.1), new(1, 0.1, 1, 0.1), new(2, 0.1, 2.01, 0.1), new(3, 0.1, 3, 0.1)];
        YorkLine fit = Fitted(StraightLine.WithErrorsInBoth(calm));
        Assert.Equal(fit.Line.SlopeStandardUncertainty, fit.LineWithScatter.SlopeStandardUncertainty);
        Assert.Equal(2, fit.LineWithScatter.DegreesOfFreedom);
    }

    [Fact]
    public void Points_that_determine_no_line_say_why_and_senseless_uncertainties_are_refused()
    {
        UncertainPoint point = new(1, 0.1, 2, 0.1);
        Assert.IsType<YorkResult.NotFitted>(StraightLine.WithErrorsInBoth([point, point, point]));
        Assert.IsType<YorkResult.NotFitted>(StraightLine.ThroughOriginWithErrorsInBoth([point]));
        Assert.Throws<ArgumentOutOfRangeException>(() => new UncertainPoint(1, 0.1, 2, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new UncertainPoint(1, -0.1, 2, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new UncertainPoint(1, 0.1, 2, 0.1, 1));
        Assert.Throws<ArgumentException>(() => new UncertainPoint(double.NaN, 0.1, 2, 0.1));
    }

    private static YorkLine Fitted(YorkResult result) => Assert.IsType<YorkResult.Fitted>(result).Fit;

    // The bug it is named for: rounding over ten thousand points kept the slope from settling to the last bit.
    [Fact]
    public void A_line_through_ten_thousand_points_settles()
    {
        var stream = new Calx.Measurement.Distributions.RandomStream(3, 0);
        UncertainPoint[] points =
        [
            .. Enumerable.Range(0, 10_000).Select(_ =>
            {
                double x = 0.2 + (0.08 * stream.NextDouble());
                return new UncertainPoint(x + (0.01 * stream.NextNormal()), 0.01, (0.65 * x) + (0.01 * stream.NextNormal()), 0.01);
            }),
        ];

        var through = Assert.IsType<YorkResult.Fitted>(StraightLine.ThroughOriginWithErrorsInBoth(points));
        // Four standard errors: 4 · 0.01 · √(1 + 0.65²)/(0.241 · √10000) = 0.0020.
        Assert.Equal(0.65, through.Fit.Line.Slope, 0.002);
        Assert.IsType<YorkResult.Fitted>(StraightLine.WithErrorsInBoth(points));
    }
}
