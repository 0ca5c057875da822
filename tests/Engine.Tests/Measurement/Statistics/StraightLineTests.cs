using Calx.Measurement.Statistics;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class StraightLineTests
{
    [Fact]
    public void Thermometer_calibration_is_that_of_the_guide()
    {
        // JCGM 100:2008, H.3, tables H.6 and the text below: about 20 degrees, correction at 30 degrees.
        ReferenceTable data = ReferenceTable.Read("gum_h3_data.csv");
        double[] t = Array.ConvertAll(data.Column("t"), value => value - 20);
        LeastSquaresLine fit = Fitted(StraightLine.LeastSquares(t, data.Column("b")));
        ReferenceRow[] published = [.. ReferenceTable.Read("gum_h3_results.csv").Rows];

        Agree.Within(0.00005, published[0].Number("published"), fit.Line.Intercept);
        Agree.Within(0.00005, published[0].Number("published_u"), fit.Line.InterceptStandardUncertainty);
        Agree.Within(0.000005, published[1].Number("published"), fit.Line.Slope);
        Agree.Within(0.000005, published[1].Number("published_u"), fit.Line.SlopeStandardUncertainty);
        Agree.Within(0.0005, -0.930, fit.Line.Correlation);
        Agree.Within(0.00005, 0.0035, fit.ResidualStandardDeviation);
        Agree.Within(0.00005, published[4].Number("published"), fit.Line.At(10).Value);
        Agree.Within(0.00005, published[4].Number("published_u"), fit.Line.At(10).StandardUncertainty);
        Assert.Equal(9, fit.DegreesOfFreedom);
        Agree.Within(1e-8, published[0].Number("computed"), fit.Line.Intercept);
        Agree.Within(1e-7, published[4].Number("computed_u"), fit.Line.At(10).StandardUncertainty);
    }

    /// <summary>NIST statistical reference datasets; the line and the general fit are two ways to the same numbers.</summary>
    [Fact]
    public void Line_of_Norris_agrees_to_eleven_digits()
    {
        ReferenceTable data = ReferenceTable.Read("nist_linear_Norris.csv");
        LeastSquaresLine fit = Fitted(StraightLine.LeastSquares(data.Column("x"), data.Column("y")));
        Assert.True(Digits.Agreed(fit.Line.Intercept, Certified("Norris", "B0").Value) >= 11);
        Assert.True(Digits.Agreed(fit.Line.Slope, Certified("Norris", "B1").Value) >= 11);
        Assert.True(Digits.Agreed(fit.Line.InterceptStandardUncertainty, Certified("Norris", "B0").Deviation) >= 11);
        Assert.True(Digits.Agreed(fit.Line.SlopeStandardUncertainty, Certified("Norris", "B1").Deviation) >= 11);
        Assert.True(Digits.Agreed(fit.RSquared, Certified("Norris", "r_squared").Value) >= 11);
        Assert.True(Digits.Agreed(fit.FStatistic, Certified("Norris", "f_statistic").Value) >= 11);
    }

    [Fact]
    public void Line_through_the_origin_of_NoInt1_agrees_to_eleven_digits()
    {
        ReferenceTable data = ReferenceTable.Read("nist_linear_NoInt1.csv");
        LeastSquaresLine fit = Fitted(StraightLine.LeastSquaresThroughOrigin(data.Column("x"), data.Column("y")));
        Assert.True(Digits.Agreed(fit.Line.Slope, Certified("NoInt1", "B1").Value) >= 11);
        Assert.True(Digits.Agreed(fit.Line.SlopeStandardUncertainty, Certified("NoInt1", "B1").Deviation) >= 11);
        Assert.True(Digits.Agreed(fit.RSquared, Certified("NoInt1", "r_squared").Value) >= 11);
        Assert.True(Digits.Agreed(fit.FStatistic, Certified("NoInt1", "f_statistic").Value) >= 11);
        Assert.Equal(0, fit.Line.At(0).StandardUncertainty);
    }

    [Fact]
    public void Points_on_a_line_give_that_line_without_scatter()
    {
        LeastSquaresLine fit = Fitted(StraightLine.LeastSquares([1, 2, 4], [3, 5, 9]));
        Assert.Equal(2, fit.Line.Slope, 14);
        Assert.Equal(1, fit.Line.Intercept, 14);
        Assert.Equal(0, fit.ResidualStandardDeviation);
        Assert.Equal(double.PositiveInfinity, fit.FStatistic);
        Assert.Equal(0, fit.FProbability);
        Assert.Equal(0, fit.Line.Correlation);
    }

    [Fact]
    public void A_level_line_explains_nothing()
    {
        LeastSquaresLine fit = Fitted(StraightLine.LeastSquares([1, 2, 3, 4], [5, 5, 5, 5]));
        Assert.Equal(0, fit.RSquared);
        Assert.Equal(0, fit.FStatistic);
        Assert.Equal(1, fit.FProbability, 12);
    }

    [Fact]
    public void A_new_reading_is_less_certain_than_the_line()
    {
        LeastSquaresLine fit = Fitted(StraightLine.LeastSquares([0, 1, 2, 3], [0.1, 0.9, 2.1, 2.9]));
        double line = fit.Line.At(2).StandardUncertainty;
        double scatter = fit.ResidualStandardDeviation;
        Assert.Equal(Math.Sqrt((line * line) + (scatter * scatter)), fit.NewReadingAt(2).StandardUncertainty, 12);
        Assert.True(fit.Line.At(2).IntervalFor(0.95).Contains(2));
    }

    [Fact]
    public void Points_that_determine_no_line_say_why()
    {
        Assert.Contains("same x", Reason(StraightLine.LeastSquares([2, 2, 2], [1, 2, 3])), StringComparison.Ordinal);
        Assert.Contains("two points", Reason(StraightLine.LeastSquares([1, 2], [1, 2])), StringComparison.Ordinal);
        Assert.Contains("x = 0", Reason(StraightLine.LeastSquaresThroughOrigin([0, 0], [1, 2])), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => StraightLine.LeastSquares([], []));
        Assert.Throws<ArgumentException>(() => StraightLine.LeastSquares([1, 2, 3], [1, 2]));
        Assert.Throws<ArgumentException>(() => StraightLine.LeastSquares([1, 2, double.NaN], [1, 2, 3]));
    }

    [Fact]
    public void Moving_or_stretching_the_axes_does_the_same_to_the_line() =>
        Gen.Select(Gen.Double[0, 1].Array[4, 15], Gen.Double[-5, 5], Gen.Double[0.1, 10]).Always((noise, shift, scale) =>
        {
            double[] x = [.. Enumerable.Range(0, noise.Length).Select(i => (double)i)];
            FittedLine plain = Fitted(StraightLine.LeastSquares(x, noise)).Line;
            FittedLine moved = Fitted(StraightLine.LeastSquares(
                [.. x.Select(value => scale * (value + shift))], [.. noise.Select(value => (3 * value) + 1)])).Line;
            Agree.Within(1e-8, 3 * plain.Slope / scale, moved.Slope);
            Agree.Within(1e-8, (3 * plain.At(2).Value) + 1, moved.At(scale * (2 + shift)).Value);
            Agree.Within(1e-8, 3 * plain.At(2).StandardUncertainty, moved.At(scale * (2 + shift)).StandardUncertainty);
        }, iter: 200);

    private static LeastSquaresLine Fitted(LineResult result) => Assert.IsType<LineResult.Fitted>(result).Fit;

    private static string Reason(LineResult result) => Assert.IsType<LineResult.NotFitted>(result).Reason;

    private static (double Value, double Deviation) Certified(string dataset, string quantity)
    {
        ReferenceRow row = ReferenceTable.Read("nist_linear_certified.csv").Rows
            .Single(r => r.Text("dataset") == dataset && r.Text("quantity") == quantity);
        return (row.Number("value"), row.Has("standard_deviation") ? row.Number("standard_deviation") : 0);
    }
}
