using Calx.Measurement.Statistics.Series;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

/// <summary>
/// Whether 90 % intervals hold the truth 90 times in 100: the readings drawn, the truth fixed. In full 90 ± 3 are asked of every
/// quantity in every scenario; the usual sample allows three standard errors.
/// </summary>
public class CoverageTests(ITestOutputHelper output)
{
    private static readonly InventedSeries Marble = new(KineticOrder.First, 182.4, 1.32, 90);
    private static readonly CurveSettings Independent = new(new SeriesNoise.Independent());

    [Theory]
    [InlineData(KineticOrder.Zeroth, 150)]
    [InlineData(KineticOrder.First, 90)]
    [InlineData(KineticOrder.Second, 60)]
    public void Independent_noise_of_a_display_with_two_decimals(KineticOrder order, double halfLife) =>
        Covered(Marble with { Order = order, HalfLife = halfLife }, Independent, 60, 2000);

    [Fact]
    public void Nine_readings_by_hand() =>
        Covered(Marble with { HalfLife = 60, Count = 9, Gap = 30 }, Independent, 60, 2000);

    [Fact]
    public void Readings_that_end_after_one_half_life_and_a_half() =>
        Covered(Marble with { Noise = 0.004, Decimals = 3, Count = 15 }, Independent, 60, 2000);

    [Fact]
    public void Correlated_noise_that_is_known() =>
        Covered(
            Marble with { Noise = 0.004, Shared = (0.01, 30) },
            new CurveSettings(new SeriesNoise.Known(0.004, 0.01, 30)),
            60,
            2000);

    [Fact]
    public void A_random_walk_that_is_known() =>
        Covered(
            Marble with { Noise = 0.006, WalkPerRootTime = 0.001 },
            new CurveSettings(new SeriesNoise.Known(0.006, walkPerRootTime: 0.001)),
            60,
            2000);

    [Fact]
    public void A_drift_of_known_size() =>
        Covered(Marble with { Drift = 5e-5 }, new CurveSettings(new SeriesNoise.Independent(), driftPerTime: 5e-5), 60, 2000);

    /// <summary>
    /// Readings that scatter by a fifth of the display's step: all of a plateau are rounded alike. What is carried for that is
    /// the most that rounding can do, so intervals of loss and final value hold more often than they say, and never less.
    /// </summary>
    [Fact]
    public void A_display_much_coarser_than_its_noise_makes_nothing_too_narrow()
    {
        int cases = LongProofs.Cases(60, 1000);
        int[] held = new int[3];
        for (int i = 0; i < cases; i++)
        {
            // The final value anywhere between two steps.
            InventedSeries truth = Marble with { Start = 182.4 + (0.01 * Spread(i, 0.61803398874989485)), Noise = 0.002 };
            FittedCurve curve = Assert.IsType<CurveResult.Fitted>(SeriesCurve.Fit(truth.Draw(8, (ulong)i), truth.Order, Independent)).Curve;
            held[0] += curve.HalfLife.Interval(0.9).Contains(90) ? 1 : 0;
            held[1] += curve.Loss.Interval(0.9).Contains(1.32) ? 1 : 0;
            held[2] += curve.FinalValue.Interval(0.9).Contains(truth.Start - 1.32) ? 1 : 0;
        }

        output.WriteLine($"half-life {100.0 * held[0] / cases:0.0}, loss {100.0 * held[1] / cases:0.0}, final value {100.0 * held[2] / cases:0.0}");
        double margin = cases >= 500 ? 0.03 : LongProofs.ThreeErrors(0.9, cases);
        Assert.All(held, count => Assert.True(count / (double)cases >= 0.9 - margin));
    }

    /// <summary>Which noise there is must be found from sixty readings as well. The truth is drawn too, from the stated prior:
    /// for one truth held fixed, intervals that average over the noise are too wide for some and too narrow for others.</summary>
    [Fact]
    public void Correlated_noise_that_is_found()
    {
        var settings = new CurveSettings(new SeriesNoise.Correlated());
        Covered(
            i =>
            {
                double share = Spread(i, 0.61803398874989485);
                double time = 10 * Math.Pow(20, Spread(i, 0.41421356237309515));
                return Marble with { Noise = 0.012 * Math.Sqrt(1 - share), Shared = (0.012 * Math.Sqrt(share), time), Decimals = 4 };
            },
            settings,
            30,
            1500);
    }

    [Fact]
    public void A_random_walk_that_is_found()
    {
        var settings = new CurveSettings(new SeriesNoise.Wandering());
        Covered(
            i =>
            {
                // Quantiles of the half-Cauchy of the walk over a gap of 10, held to what a balance could do.
                double ratio = Math.Min(4, Math.Tan(Math.PI / 2 * Spread(i, 0.61803398874989485)));
                return Marble with { Noise = 0.008, WalkPerRootTime = 0.008 * ratio / Math.Sqrt(10), Loss = 5, Decimals = 4 };
            },
            settings,
            30,
            1500);
    }

    [Fact]
    public void A_lag_that_is_found() =>
        Covered(
            Marble with { Lag = 34, Count = 31, Gap = 20 },
            new CurveSettings(new SeriesNoise.Independent(), CurveStart.Delayed),
            10,
            600);

    /// <summary>What happens when correlated noise is taken for independent: why the assumption matters.</summary>
    [Fact]
    public void Correlated_noise_taken_for_independent_makes_intervals_far_too_narrow()
    {
        int cases = LongProofs.Cases(60, 500);
        int held = Enumerable.Range(0, cases).Count(i => SeriesCurve.Fit(
            (Marble with { Noise = 0.004, Shared = (0.01, 30) }).Draw(8, (ulong)i), KineticOrder.First, Independent)
            is CurveResult.Fitted { Curve: var curve } && curve.Loss.Interval(0.9).Contains(1.32));
        output.WriteLine($"{100.0 * held / cases:0.0} of 100");
        Assert.True(held < 0.75 * cases);
    }

    private static double Spread(int i, double step) => ((i + 0.5) * step) % 1;

    private void Covered(InventedSeries truth, CurveSettings settings, int sample, int inFull) =>
        Covered(_ => truth, settings, sample, inFull);

    private void Covered(Func<int, InventedSeries> truths, CurveSettings settings, int sample, int inFull)
    {
        int cases = LongProofs.Cases(sample, inFull);
        string[] names = ["half-life", "loss", "final value", "rate at start", settings.Start == CurveStart.AtFirstReading ? "start" : "lag"];
        int[] held = new int[names.Length];
        int fitted = 0;
        for (int i = 0; i < cases; i++)
        {
            InventedSeries truth = truths(i);
            if (SeriesCurve.Fit(truth.Draw(8, (ulong)i), truth.Order, settings) is not CurveResult.Fitted { Curve: var curve })
            {
                continue;
            }

            fitted++;
            double speed = truth.Loss / truth.HalfLife
                * (truth.Order switch { KineticOrder.Zeroth => 0.5, KineticOrder.First => Math.Log(2), _ => 1 });
            (SeriesQuantity Found, double True)[] all =
            [
                (curve.HalfLife, truth.HalfLife),
                (curve.Loss, truth.Loss),
                (curve.FinalValue, truth.Start - truth.Loss),
                (curve.RateAtStart, speed),
                (curve.Lag ?? curve.Start, curve.Lag is null ? truth.Start : truth.Lag),
            ];
            for (int k = 0; k < all.Length; k++)
            {
                held[k] += all[k].Found.Interval(0.9).Contains(all[k].True) ? 1 : 0;
            }
        }

        double margin = cases >= 500 ? 0.03 : LongProofs.ThreeErrors(0.9, cases);
        output.WriteLine($"{fitted} of {cases} fitted; {string.Join(", ", names.Select((name, k) => $"{name} {100.0 * held[k] / fitted:0.0}"))}");
        Assert.True(fitted > 0.97 * cases);
        Assert.All(held, count => Assert.InRange(count / (double)fitted, 0.9 - margin, 0.9 + margin));
    }
}
