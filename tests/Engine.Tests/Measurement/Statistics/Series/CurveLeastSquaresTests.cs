using Calx.Measurement.Statistics.Nonlinear;
using Calx.Measurement.Statistics.Series;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

public class CurveLeastSquaresTests
{
    /// <summary>R's nls, and lm over a search for the half-life where the curve has a corner: tests/reference/scripts/series.R.
    /// Its search stops at 1e-6 of an uncertainty.</summary>
    [Fact]
    public void Start_loss_half_life_and_their_uncertainties_are_those_of_another_program()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("computed/series_nls.csv").Rows)
        {
            NonlinearFit fit = Converged(CurveLeastSquares.Fit(ReferenceSeries.Of(row.Text("case")), ReferenceSeries.Order(row)));
            string[] names = ["start", "loss", "half_life"];
            for (int k = 0; k < 3; k++)
            {
                double u = row.Number($"u_{names[k]}");
                Agree.Within(1e-5 * u, row.Number(names[k]), fit.Parameters[k]);
                Agree.Relative(1e-4, u, fit.StandardUncertainties[k]);
            }

            Agree.Relative(1e-6, row.Number("residual_sd"), fit.ResidualStandardDeviation);
            Assert.Equal(row.Number("df"), fit.DegreesOfFreedom);
        }
    }

    [Fact]
    public void Start_values_are_found_for_every_order_size_and_speed()
    {
        foreach (KineticOrder order in Enum.GetValues<KineticOrder>())
        {
            // A straight line that ends within two gaps, or after the series, hardly has a half-life, only a slope.
            foreach (double halfLife in (double[])[order == KineticOrder.Zeroth ? 13 : 7, 21, 64, 190, order == KineticOrder.Zeroth ? 280 : 400])
            {
                foreach (double loss in (double[])[1.3, -25, 0.04])
                {
                    var truth = new InventedSeries(order, 150, loss, halfLife) { Noise = 0, Decimals = 9 };
                    NonlinearFitResult result = CurveLeastSquares.Fit(truth.Draw(1, 1), order);
                    Assert.True(result is NonlinearFitResult.Converged, $"{truth}: {result}");
                    NonlinearFit fit = Converged(result);
                    Agree.Relative(1e-5, halfLife, fit.Parameters[2]);
                    Agree.Relative(1e-5, loss, fit.Parameters[1]);
                }
            }
        }
    }

    [Fact]
    public void A_delay_is_found_between_readings()
    {
        foreach (KineticOrder order in Enum.GetValues<KineticOrder>())
        {
            var truth = new InventedSeries(order, 150, 1.3, 80) { Noise = 0, Decimals = 9, Lag = 37 };
            NonlinearFit fit = Converged(CurveLeastSquares.Fit(truth.Draw(1, 1), order, true));
            Agree.Within(1e-3, 37, fit.Parameters[3]);
            Agree.Within(1e-2, 80, fit.Parameters[2]);
        }
    }

    [Fact]
    public void Three_readings_cannot_judge_three_parameters()
    {
        var truth = new InventedSeries(KineticOrder.First, 150, 1.3, 20) { Count = 3 };
        Assert.IsType<NonlinearFitResult.TooFewPoints>(CurveLeastSquares.Fit(truth.Draw(1, 1), KineticOrder.First));
    }

    private static NonlinearFit Converged(NonlinearFitResult result) => Assert.IsType<NonlinearFitResult.Converged>(result).Fit;
}
