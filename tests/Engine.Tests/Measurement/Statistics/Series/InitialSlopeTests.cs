using Calx.Measurement.Statistics.Series;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

public class InitialSlopeTests
{
    [Fact]
    public void The_slope_of_an_exponential_is_found_without_its_law()
    {
        // -L k = -1.32 · ln 2 / 90.
        InitialSlope slope = Found(new InventedSeries(KineticOrder.First, 182.4, 1.32, 90) { Noise = 0.002, Decimals = 3, Gap = 2, Count = 400 });
        Agree.Within(3 * slope.StandardUncertainty, -1.32 * Math.Log(2) / 90, slope.Slope);
        Assert.InRange(slope.StandardUncertainty, 1e-4, 5e-4);
        // A third of an exponential is gone after T · log₂(3/2) = 52.6.
        Assert.InRange(slope.ReadingsUsed, 25, 28);
    }

    /// <summary>Without noise what is left is the cubic term of the exponential: 1.6 % of the slope.</summary>
    [Fact]
    public void A_parabola_is_off_by_less_than_a_fiftieth()
    {
        InitialSlope slope = Found(new InventedSeries(KineticOrder.First, 182.4, 1.32, 90) { Noise = 0, Decimals = 9, Gap = 1, Count = 900 });
        Agree.Relative(0.02, -1.32 * Math.Log(2) / 90, slope.Slope);
        Assert.True(Math.Abs(slope.Slope + (1.32 * Math.Log(2) / 90)) > 0.01 * 1.32 * Math.Log(2) / 90);
    }

    [Fact]
    public void A_parabola_without_scatter_has_its_own_slope()
    {
        // Readings 10 - 2t + 0.05t² up to where the change has a third of its way: the last reading is at 16, and -19.2 the whole.
        var series = new InventedSeries(KineticOrder.Zeroth, 10, 0, 1) { Noise = 0, Decimals = 9, Gap = 1, Count = 17, Disturbed = i => (-2 * i) + (0.05 * i * i) };
        InitialSlope slope = Found(series with { Gap = 0.5, Count = 33, Disturbed = i => (-2 * (i / 2.0)) + (0.05 * (i / 2.0) * (i / 2.0)) });
        Agree.Within(1e-7, -2, slope.Slope);
    }

    [Fact]
    public void The_interval_covers_the_truth_nine_times_in_ten()
    {
        int cases = LongProofs.Cases(200, 2000);
        var truth = new InventedSeries(KineticOrder.First, 182.4, 1.32, 90) { Gap = 4, Count = 151 };
        int held = Enumerable.Range(0, cases).Count(i => InitialSlope.Of(truth.Draw(31, (ulong)i)) is InitialSlopeResult.Found { Slope: var slope }
            && slope.Interval(0.9).Contains(-1.32 * Math.Log(2) / 90));
        double margin = cases >= 1000 ? 0.03 : LongProofs.ThreeErrors(0.9, cases);
        Assert.InRange(held / (double)cases, 0.9 - margin, 0.9 + margin);
    }

    [Fact]
    public void Too_few_readings_at_the_start_are_said()
    {
        var quick = new InventedSeries(KineticOrder.First, 182.4, 1.32, 20);
        Assert.Contains("at least 5", Assert.IsType<InitialSlopeResult.NotFound>(InitialSlope.Of(quick.Draw(1, 1))).Reason, StringComparison.Ordinal);
        var level = new InventedSeries(KineticOrder.First, 182.4, 0, 20) { Noise = 0 };
        Assert.Equal("the readings end where they began", Assert.IsType<InitialSlopeResult.NotFound>(InitialSlope.Of(level.Draw(1, 1))).Reason);
    }

    private static InitialSlope Found(InventedSeries truth) => Assert.IsType<InitialSlopeResult.Found>(InitialSlope.Of(truth.Draw(1, 2))).Slope;
}
