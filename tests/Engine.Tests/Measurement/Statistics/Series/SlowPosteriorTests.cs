using Calx.Measurement.Statistics.Series;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

/// <summary>
/// The probability of every parameter on a lattice, with nothing integrated in closed form and the covariance written out,
/// beside the nodes. Priors as the documentation states them.
/// </summary>
public class SlowPosteriorTests(ITestOutputHelper output)
{
    private static readonly InventedSeries Truth =
        new(KineticOrder.First, 20, 1, 45) { Count = 10, Gap = 20, Noise = 0.03, Decimals = 9 };

    [Theory]
    [InlineData(KineticOrder.First)]
    [InlineData(KineticOrder.Second)]
    public void Half_life_loss_and_orders_agree_with_a_lattice_of_four_parameters(KineticOrder truth)
    {
        TimeSeries series = (Truth with { Order = truth }).Draw(5, 3);
        double[] lattice = new double[2];
        double[] nodes = new double[2];
        foreach (KineticOrder order in (KineticOrder[])[KineticOrder.First, KineticOrder.Second])
        {
            FittedCurve curve = Fit(series, order, new SeriesNoise.Independent());
            nodes[(int)order - 1] = curve.Nodes.LogEvidence;
            lattice[(int)order - 1] = Compared(series, curve).LogEvidence;
        }

        Agree.Within(0.03, lattice[1] - lattice[0], nodes[1] - nodes[0]);
    }

    [Fact]
    public void A_line_that_ends_agrees_with_a_lattice_of_four_parameters() =>
        Compared(
            (Truth with { Order = KineticOrder.Zeroth }).Draw(5, 3),
            Fit((Truth with { Order = KineticOrder.Zeroth }).Draw(5, 3), KineticOrder.Zeroth, new SeriesNoise.Independent()));

    private Lattice Compared(TimeSeries series, FittedCurve curve)
    {
        Lattice lattice = Lattice.Of(series, curve.Order, curve);
        output.WriteLine(
            $"{curve.Order}: half-life {lattice.HalfLifeMedian:g5} {curve.HalfLife.Estimate:g5}, u {lattice.HalfLifeSpread:g4} {curve.HalfLife.StandardUncertainty:g4}, "
            + $"loss {lattice.LossMedian:g5} {curve.Loss.Estimate:g5}, u {lattice.LossSpread:g4} {curve.Loss.StandardUncertainty:g4}");
        // The lattice's steps are a sixth of an uncertainty and more: its quantiles are good to a few hundredths.
        Agree.Within(0.03 * curve.HalfLife.StandardUncertainty, lattice.HalfLifeMedian, curve.HalfLife.Estimate);
        Agree.Relative(0.03, lattice.HalfLifeSpread, curve.HalfLife.StandardUncertainty);
        // The prior of the loss counts at its best value only, which leaves out a shift of u²/L, up to 0.05 u here.
        Agree.Within(0.07 * curve.Loss.StandardUncertainty, lattice.LossMedian, curve.Loss.Estimate);
        Agree.Relative(0.03, lattice.LossSpread, curve.Loss.StandardUncertainty);
        return lattice;
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Noise_found_from_the_scatter_agrees_with_whole_covariance_matrices(bool walk)
    {
        InventedSeries truth = Truth with { Count = 16, Gap = 12, Noise = 0.01, Shared = walk ? (0, 1) : (0.03, 25), WalkPerRootTime = walk ? 0.004 : 0 };
        TimeSeries series = truth.Draw(5, 11);
        SeriesNoise noise = walk ? new SeriesNoise.Wandering() : new SeriesNoise.Correlated();
        FittedCurve curve = Fit(series, KineticOrder.First, noise);
        (double median, double spread, _) = SlowHalfLife(series, noise, KineticOrder.First, 0);
        Agree.Within(0.03 * spread, median, curve.HalfLife.Estimate);
        Agree.Relative(0.03, spread, curve.HalfLife.StandardUncertainty);
    }

    [Fact]
    public void A_drift_in_known_noise_agrees_with_whole_covariance_matrices()
    {
        const double drift = 4e-4;
        TimeSeries series = (Truth with { Drift = drift }).Draw(5, 12);
        var noise = new SeriesNoise.Known(0.03, 0.02, 40);
        double[] slow = new double[2];
        double[] nodes = new double[2];
        foreach (KineticOrder order in (KineticOrder[])[KineticOrder.First, KineticOrder.Second])
        {
            FittedCurve curve = Assert.IsType<CurveResult.Fitted>(
                SeriesCurve.Fit(series, order, new CurveSettings(noise, driftPerTime: drift))).Curve;
            (double median, double spread, double logEvidence) = SlowHalfLife(series, noise, order, drift);
            Agree.Within(0.03 * spread, median, curve.HalfLife.Estimate);
            Agree.Relative(0.03, spread, curve.HalfLife.StandardUncertainty);
            (slow[(int)order - 1], nodes[(int)order - 1]) = (logEvidence, curve.Nodes.LogEvidence);
        }

        Agree.Within(0.01, slow[1] - slow[0], nodes[1] - nodes[0]);
    }

    private static FittedCurve Fit(TimeSeries series, KineticOrder order, SeriesNoise noise) =>
        Assert.IsType<CurveResult.Fitted>(SeriesCurve.Fit(series, order, new CurveSettings(noise))).Curve;

    // p(T) ∝ Σ over noise of prior · |V|^-½ |XᵀV⁻¹X|^-½ RSS^(-ν/2) / L: Searle, Casella, McCulloch 1992, 6.6.
    private static (double Median, double Spread, double LogEvidence) SlowHalfLife(
        TimeSeries series, SeriesNoise noise, KineticOrder order, double drift)
    {
        double[] times = [.. series.Times];
        double[] y = [.. series.Values];
        double[] ones = [.. y.Select(_ => 1.0)];
        var factors = NoiseNode.Of(noise, new SeriesRows(series, []))
            .Select(node => (node.LogPrior, Factor: Dense.Cholesky(
                Drifting(Dense.Covariance(times, node.White, node.Shared, node.SharedTime, node.WalkPerTime)))))
            .ToArray();
        double[] halfLives = [.. Enumerable.Range(0, 500).Select(i => 4 * Math.Exp(Math.Log(1000) * i / 499))];
        double[] logs = [.. halfLives.Select(halfLife =>
        {
            double[] gone = [.. times.Select(t => order == KineticOrder.First ? 1 - Math.Pow(2, -t / halfLife) : t / (halfLife + t))];
            double[] heights = [.. factors.Select(factor => Height(factor.Factor, factor.LogPrior, gone))];
            double best = heights.Max();
            return best + Math.Log(heights.Sum(height => Math.Exp(height - best)));
        })];
        double[] weights = [.. logs.Select(log => Math.Exp(log - logs.Max()))];
        (double median, double spread) = Quantiles(halfLives, weights);
        return (median, spread, logs.Max() + Math.Log(weights.Sum()));

        double[,] Drifting(double[,] covariance)
        {
            for (int i = 0; i < times.Length; i++)
            {
                for (int j = 0; j < times.Length; j++)
                {
                    covariance[i, j] += drift * drift * times[i] * times[j];
                }
            }

            return covariance;
        }

        double Height(double[,] factor, double logPrior, double[] gone)
        {
            double[] a = Dense.Forward(factor, ones);
            double[] b = Dense.Forward(factor, gone);
            double[] c = Dense.Forward(factor, y);
            (double aa, double ab, double bb) = (Dot(a, a), Dot(a, b), Dot(b, b));
            (double ac, double bc) = (Dot(a, c), Dot(b, c));
            double determinant = (aa * bb) - (ab * ab);
            double start = ((bb * ac) - (ab * bc)) / determinant;
            double slope = ((aa * bc) - (ab * ac)) / determinant;
            double[] left = [.. c.Select((value, i) => value - (start * a[i]) - (slope * b[i]))];
            double logs = Enumerable.Range(0, c.Length).Sum(i => Math.Log(factor[i, i]));
            double scatter = noise is SeriesNoise.Known ? Dot(left, left) / 2 : (c.Length - 2) / 2.0 * Math.Log(Dot(left, left));
            return logPrior - logs - (Math.Log(determinant) / 2) - scatter
                - Math.Log(Math.Abs(slope));
        }
    }

    private static double Dot(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).Sum();

    internal static (double Median, double Spread) Quantiles(double[] places, double[] weights)
    {
        double total = weights.Sum();
        double At(double probability)
        {
            double sum = 0;
            for (int i = 0; i < places.Length; i++)
            {
                double next = sum + (weights[i] / total);
                if (next >= probability)
                {
                    // Each place stands for the stretch half-way to its neighbours.
                    double low = i > 0 ? (places[i - 1] + places[i]) / 2 : places[i];
                    double high = i + 1 < places.Length ? (places[i] + places[i + 1]) / 2 : places[i];
                    return low + ((high - low) * (probability - sum) / (next - sum));
                }

                sum = next;
            }

            return places[^1];
        }

        return (At(0.5), (At(0.84134474606854293) - At(0.15865525393145707)) / 2);
    }

    private sealed record Lattice(double LogEvidence, double HalfLifeMedian, double HalfLifeSpread, double LossMedian, double LossSpread)
    {
        private const int Points = 81;

        public static Lattice Of(TimeSeries series, KineticOrder order, FittedCurve curve)
        {
            double[] times = [.. series.Times];
            double[] y = [.. series.Values];
            double[] starts = Around(curve.Start, 7);
            double[] losses = Around(curve.Loss, 9);
            double[] halfLives = [.. Around(curve.HalfLife, 7).Where(halfLife => halfLife > 1)];
            double[] scales = [.. Enumerable.Range(0, Points).Select(i => curve.WhiteNoise * Math.Exp(-1.4 + (3.6 * i / Points)))];
            double[] byHalfLife = new double[halfLives.Length];
            double[] byLoss = new double[losses.Length];
            double top = -1e300;
            for (int pass = 0; pass < 2; pass++)
            {
                for (int h = 0; h < halfLives.Length; h++)
                {
                    double[] gone = [.. times.Select(t => order switch
                    {
                        KineticOrder.Zeroth => Math.Min(1, t / (2 * halfLives[h])),
                        KineticOrder.First => 1 - Math.Pow(2, -t / halfLives[h]),
                        _ => t / (halfLives[h] + t),
                    })];
                    for (int l = 0; l < losses.Length; l++)
                    {
                        foreach (double start in starts)
                        {
                            double squares = 0;
                            for (int i = 0; i < y.Length; i++)
                            {
                                double left = y[i] - start + (losses[l] * gone[i]);
                                squares += left * left;
                            }

                            foreach (double scale in scales)
                            {
                                // Even in ln(scale) and ln(half-life): the half-life's own lattice is even in itself, hence 1/T.
                                double log = (-y.Length * Math.Log(scale)) - (squares / (2 * scale * scale))
                                    - Math.Log(Math.Abs(losses[l])) - Math.Log(halfLives[h]);
                                top = pass == 0 ? Math.Max(top, log) : top;
                                double height = pass == 0 ? 0 : Math.Exp(log - top);
                                byHalfLife[h] += height;
                                byLoss[l] += height;
                            }
                        }
                    }
                }
            }

            double cell = (starts[1] - starts[0]) * (losses[1] - losses[0]) * (halfLives[1] - halfLives[0]) * Math.Log(scales[1] / scales[0]);
            (double halfLife, double spread) = Quantiles(halfLives, byHalfLife);
            (double loss, double lossSpread) = Quantiles(losses, byLoss);
            return new Lattice(top + Math.Log(byLoss.Sum() * cell), halfLife, spread, loss, lossSpread);
        }

        private static double[] Around(SeriesQuantity quantity, double far) => [.. Enumerable.Range(0, Points).Select(i =>
            quantity.Estimate + (quantity.StandardUncertainty * far * ((2.0 * i / (Points - 1)) - 1)))];
    }
}
