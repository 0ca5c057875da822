using Calx.Measurement.Statistics.Series;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

public class DisturbancesTests
{
    private static readonly CurveSettings Plain = new(new SeriesNoise.Independent());
    private static readonly InventedSeries Quiet = new(KineticOrder.First, 182.4, 1.32, 90);

    [Fact]
    public void One_odd_reading_is_a_spike()
    {
        InventedSeries truth = Quiet with { Disturbed = i => i == 17 ? 0.12 : 0 };
        TimeSeries series = truth.Draw(4, 4);
        var spike = Assert.IsType<Disturbance.Spike>(Assert.Single(Found(truth)));
        Assert.Equal(17, spike.First);
        Assert.InRange(spike.Size, 0.08, 0.16);
        Assert.InRange(spike.Probability, 0, 0.01);
        Assert.Equal(
            $"The reading at 170, {series.Readings[17].Reading}, lies {spike.Size:F2} above the curve of the others.", spike.Sentence(series));
    }

    [Fact]
    public void Somebody_leaning_on_the_bench_is_a_run()
    {
        // Not equally hard all the time.
        var run = Assert.IsType<Disturbance.Run>(Assert.Single(Found(Quiet with { Disturbed = i => i is >= 20 and <= 25 ? 0.10 + (0.03 * (i % 3)) : 0 })));
        Assert.Equal((20, 25), (run.First, run.Last));
        Assert.InRange(run.Size, 0.10, 0.16);
    }

    [Fact]
    public void A_flask_that_was_moved_is_a_jump()
    {
        var jump = Assert.IsType<Disturbance.Jump>(Assert.Single(Found(Quiet with { Disturbed = i => i >= 28 ? -0.15 : 0 })));
        Assert.Equal((28, 60), (jump.First, jump.Last));
        Assert.InRange(jump.Size, -0.20, -0.10);
    }

    [Fact]
    public void Several_are_all_found()
    {
        IReadOnlyList<Disturbance> found = Found(Quiet with
        {
            Disturbed = i => (i == 9 ? 0.2 : 0) + (i is >= 40 and <= 44 ? 0.1 : 0) + (i >= 25 ? -0.3 : 0) + (i == 55 ? -0.11 : 0),
        });
        Assert.Equal([9, 25, 40, 55], found.Select(one => one.First));
        Assert.IsType<Disturbance.Jump>(found[1]);
        Assert.IsType<Disturbance.Run>(found[2]);
    }

    [Fact]
    public void Nothing_is_left_out_unless_it_is_asked_for()
    {
        TimeSeries series = (Quiet with { Disturbed = i => i >= 28 ? -0.15 : i == 9 ? 0.3 : 0 }).Draw(4, 4);
        FittedCurve asRead = Fitted(series, Plain);
        Assert.Equal(61, asRead.Residuals.Count);
        IReadOnlyList<Disturbance> found = Assert.IsType<DisturbanceResult.Searched>(Disturbances.Find(series, KineticOrder.First, Plain)).Found;
        Assert.Equal(asRead.HalfLife.Estimate, Fitted(series, Plain).HalfLife.Estimate);
        FittedCurve allowed = Fitted(series, Plain.Allowing(found));
        Assert.Equal(found, allowed.Settings.Disturbances);
        Assert.Equal(60, allowed.Residuals.Count);
        Assert.DoesNotContain(9, allowed.Places);
        Agree.Within(3 * allowed.Loss.StandardUncertainty, 1.32, allowed.Loss.Estimate);
        Agree.Within(3 * allowed.HalfLife.StandardUncertainty, 90, allowed.HalfLife.Estimate);
        Assert.InRange(allowed.WhiteNoise, 0.008, 0.013);
        Assert.All(allowed.Residuals, left => Assert.InRange(left, -0.04, 0.04));
        // As read, the loss takes the jump for its own.
        Assert.True(asRead.Loss.Estimate > 1.40);
    }

    /// <summary>At most 1 in 100 quiet series by the bound; of 400 no more than 4 + 3 · 2 are due to chance.</summary>
    [Fact]
    public void Quiet_series_are_seldom_called_disturbed()
    {
        int cases = LongProofs.Cases(25, 400);
        int called = Enumerable.Range(0, cases).Count(i =>
            Assert.IsType<DisturbanceResult.Searched>(Disturbances.Find(Quiet.Draw(11, (ulong)i), KineticOrder.First, Plain)).Found.Count > 0);
        Assert.InRange(called, 0, (0.01 * cases) + (3 * Math.Sqrt(0.01 * cases)));
    }

    [Fact]
    public void Known_correlated_noise_is_no_disturbance_and_a_jump_in_it_is()
    {
        var noise = new CurveSettings(new SeriesNoise.Known(0.003, 0.01, 40));
        InventedSeries wavy = Quiet with { Noise = 0.003, Shared = (0.01, 40), Decimals = 3 };
        Assert.Empty(Assert.IsType<DisturbanceResult.Searched>(Disturbances.Find(wavy.Draw(4, 6), KineticOrder.First, noise)).Found);
        var jump = Assert.IsType<Disturbance.Jump>(Assert.Single(Assert.IsType<DisturbanceResult.Searched>(
            Disturbances.Find((wavy with { Disturbed = i => i >= 30 ? 0.1 : 0 }).Draw(4, 6), KineticOrder.First, noise)).Found));
        Assert.Equal(30, jump.First);
    }

    [Fact]
    public void A_series_too_long_for_correlated_noise_is_not_searched()
    {
        TimeSeries series = (Quiet with { Count = 2001, Gap = 1 }).Draw(1, 1);
        var not = Assert.IsType<DisturbanceResult.NotSearched>(Disturbances.Find(series, KineticOrder.First, new CurveSettings(new SeriesNoise.Correlated())));
        Assert.Contains("2000", not.Reason, StringComparison.Ordinal);
    }

    private static IReadOnlyList<Disturbance> Found(InventedSeries truth) =>
        Assert.IsType<DisturbanceResult.Searched>(Disturbances.Find(truth.Draw(4, 4), KineticOrder.First, Plain)).Found;

    private static FittedCurve Fitted(TimeSeries series, CurveSettings settings) =>
        Assert.IsType<CurveResult.Fitted>(SeriesCurve.Fit(series, KineticOrder.First, settings)).Curve;
}
