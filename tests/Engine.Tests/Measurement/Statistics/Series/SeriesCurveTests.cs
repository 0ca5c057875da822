using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics.Series;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

public class SeriesCurveTests
{
    private static readonly CurveSettings Plain = new(new SeriesNoise.Independent());

    /// <summary>R's nls (tests/reference/scripts/series.R), whose straightened curve is nearly the whole story in these series.</summary>
    [Theory]
    [InlineData("marble", KineticOrder.First)]
    [InlineData("peroxide", KineticOrder.First)]
    [InlineData("rising", KineticOrder.First)]
    [InlineData("slow", KineticOrder.First)]
    [InlineData("hyper", KineticOrder.Second)]
    public void Independent_noise_gives_nearly_what_least_squares_gives(string name, KineticOrder order)
    {
        ReferenceRow row = ReferenceTable.Read("computed/series_nls.csv").Rows
            .Single(row => row.Text("case") == name && ReferenceSeries.Order(row) == order);
        FittedCurve curve = Fitted(ReferenceSeries.Of(name), order, Plain);
        foreach ((SeriesQuantity found, string quantity) in (ValueTuple<SeriesQuantity, string>[])
            [(curve.Start, "start"), (curve.Loss, "loss"), (curve.HalfLife, "half_life")])
        {
            double u = row.Number($"u_{quantity}");
            Agree.Within(0.08 * u, row.Number(quantity), found.Estimate);
            Agree.Relative(quantity == "loss" ? 0.10 : 0.04, u, found.StandardUncertainty);
        }
    }

    /// <summary>nlme's gnls with a given autoregression (tests/reference/scripts/series.R); its uncertainties go with the scale it found.</summary>
    [Fact]
    public void A_known_autoregression_gives_what_generalised_least_squares_gives()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("computed/series_gnls.csv").Rows)
        {
            TimeSeries series = ReferenceSeries.Of(row.Text("case"));
            double gap = series.Times[1] - series.Times[0];
            var noise = new SeriesNoise.Known(0, row.Number("sigma"), -gap / Math.Log(row.Number("phi")));
            FittedCurve curve = Fitted(series, ReferenceSeries.Order(row), new CurveSettings(noise));
            Agree.Within(0.05 * row.Number("u_half_life"), row.Number("half_life"), curve.HalfLife.Estimate);
            Agree.Within(0.05 * row.Number("u_loss"), row.Number("loss"), curve.Loss.Estimate);
            Agree.Relative(0.02, row.Number("u_half_life"), curve.HalfLife.StandardUncertainty);
            Agree.Relative(0.02, row.Number("u_loss"), curve.Loss.StandardUncertainty);
            Agree.Relative(0.02, row.Number("u_start"), curve.Start.StandardUncertainty);
        }
    }

    [Fact]
    public void An_autoregression_is_found_from_the_scatter()
    {
        // Drawn with a correlation of 0.7 between neighbours 5 apart (a time of 14) and a standard deviation of 0.010.
        FittedCurve curve = Fitted(ReferenceSeries.Of("wavy"), KineticOrder.First, new CurveSettings(new SeriesNoise.Correlated()));
        Assert.InRange(curve.SharedNoiseTime!.Value, 5, 60);
        Assert.InRange(Math.Sqrt((curve.SharedNoise * curve.SharedNoise) + (curve.WhiteNoise * curve.WhiteNoise)), 0.007, 0.013);
        FittedCurve plain = Fitted(ReferenceSeries.Of("wavy"), KineticOrder.First, Plain);
        // √((1 + 0.7)/(1 - 0.7)) = 2.4 for a mean of such readings.
        Assert.InRange(curve.Loss.StandardUncertainty / plain.Loss.StandardUncertainty, 1.6, 4.5);
        Assert.True(plain.Wandering > 5);
        Assert.True(Math.Abs(curve.Wandering) < 3);
    }

    [Fact]
    public void Rates_follow_from_half_lives()
    {
        FittedCurve first = Fitted(ReferenceSeries.Of("marble"), KineticOrder.First, Plain);
        Agree.Relative(1e-4, Math.Log(2) / first.HalfLife.Estimate, first.RateConstant!.Estimate);
        Agree.Relative(1e-2, Math.Log(2) * first.Loss.Estimate / first.HalfLife.Estimate, first.RateAtStart.Estimate);
        Agree.Within(1e-3, first.Start.Estimate - first.Loss.Estimate, first.FinalValue.Estimate);
        Assert.Null(first.Lag);
        Assert.Null(first.WholeLoss);
        FittedCurve zeroth = Fitted(ReferenceSeries.Of("line"), KineticOrder.Zeroth, Plain);
        Assert.Null(zeroth.RateConstant);
        Agree.Relative(1e-2, 0.5 * zeroth.Loss.Estimate / zeroth.HalfLife.Estimate, zeroth.RateAtStart.Estimate);
    }

    [Fact]
    public void Other_units_and_another_zero_change_nothing_but_the_units()
    {
        var truth = new InventedSeries(KineticOrder.First, 182.4, 1.32, 90) { Count = 40, Decimals = 2 };
        FittedCurve grams = Fitted(truth.Draw(3, 3), KineticOrder.First, Plain);
        FittedCurve milligrams = Fitted(Changed(truth.Draw(3, 3), 1, 1000, 0), KineticOrder.First, Plain);
        FittedCurve minutes = Fitted(Changed(truth.Draw(3, 3), 1 / 64m, 1, -182), KineticOrder.First, Plain);
        Agree.Relative(1e-6, grams.HalfLife.Estimate, milligrams.HalfLife.Estimate);
        Agree.Relative(1e-6, 1000 * grams.Loss.StandardUncertainty, milligrams.Loss.StandardUncertainty);
        Agree.Relative(1e-6, grams.HalfLife.Estimate / 64, minutes.HalfLife.Estimate);
        Agree.Within(1e-6, grams.FinalValue.Estimate - 182, minutes.FinalValue.Estimate);
        Agree.Relative(1e-6, grams.RateAtStart.StandardUncertainty * 64, minutes.RateAtStart.StandardUncertainty);
    }

    [Fact]
    public void A_gap_in_the_readings_widens_what_they_say_and_moves_nothing()
    {
        var truth = new InventedSeries(KineticOrder.First, 182.4, 1.32, 90);
        TimeSeries whole = truth.Draw(3, 5);
        TimeSeries gapped = Assert.IsType<TimeSeriesResult.Series>(TimeSeries.From(
            [.. whole.Readings.Select((reading, i) => i is > 3 and < 15 ? reading with { Reading = null } : reading)])).Value;
        FittedCurve all = Fitted(whole, KineticOrder.First, Plain);
        FittedCurve fewer = Fitted(gapped, KineticOrder.First, Plain);
        Assert.Equal(50, fewer.Residuals.Count);
        Assert.InRange(fewer.HalfLife.StandardUncertainty / all.HalfLife.StandardUncertainty, 1.02, 2.5);
        Assert.InRange(Math.Abs(fewer.HalfLife.Estimate - all.HalfLife.Estimate) / fewer.HalfLife.StandardUncertainty, 0, 3);
    }

    [Fact]
    public void A_drift_that_may_be_there_widens_the_final_value()
    {
        var truth = new InventedSeries(KineticOrder.First, 182.4, 1.32, 90);
        FittedCurve still = Fitted(truth.Draw(3, 7), KineticOrder.First, Plain);
        FittedCurve drifting = Fitted(truth.Draw(3, 7), KineticOrder.First, new CurveSettings(new SeriesNoise.Independent(), driftPerTime: 1e-4));
        Assert.InRange(drifting.FinalValue.StandardUncertainty / still.FinalValue.StandardUncertainty, 2, 20);
        // Over a plateau of several half-lives the readings tell the drift themselves, so that a far larger one adds little.
        FittedCurve wild = Fitted(truth.Draw(3, 7), KineticOrder.First, new CurveSettings(new SeriesNoise.Independent(), driftPerTime: 1e-2));
        Assert.InRange(wild.FinalValue.StandardUncertainty / drifting.FinalValue.StandardUncertainty, 0.9, 2);
    }

    [Fact]
    public void A_delayed_start_is_found_and_leaves_half_life_and_loss_alone()
    {
        var truth = new InventedSeries(KineticOrder.First, 182.4, 1.32, 90) { Lag = 34, Noise = 0.004, Decimals = 3 };
        FittedCurve curve = Fitted(truth.Draw(3, 9), KineticOrder.First, new CurveSettings(new SeriesNoise.Independent(), CurveStart.Delayed));
        Near(34, curve.Lag!);
        Near(90, curve.HalfLife);
        Near(1.32, curve.Loss);
        Near(1.32 * Math.Log(2) / 90, curve.RateAtStart);
        Assert.InRange(curve.Lag!.StandardUncertainty, 0.2, 3);
    }

    /// <summary>
    /// Marble and acid in words: 1.5 g of gas forms at a rate in proportion to what is left to form, and the first 0.3 g stay in
    /// solution. The readings begin to fall when 0.3 g have formed, and fall by 1.2 g.
    /// </summary>
    [Fact]
    public void Gas_that_stays_in_solution_counts_as_made_but_not_as_lost()
    {
        double k = Math.Log(2) / 80;
        double lag = Math.Log(1.5 / 1.2) / k;
        var truth = new InventedSeries(KineticOrder.First, 182.4, 1.2, 80) { Lag = lag, Noise = 0.003, Decimals = 3 };
        FittedCurve curve = Fitted(truth.Draw(3, 10), KineticOrder.First, new CurveSettings(new SeriesNoise.Independent(), CurveStart.GasHeldBack));
        Near(1.2, curve.Loss);
        Near(1.5, curve.WholeLoss!);
        Near(0.3, curve.HeldBack!);
        Near(1.5 * k, curve.RateAtStart);
    }

    [Fact]
    public void What_the_readings_do_not_show_is_said()
    {
        var level = new InventedSeries(KineticOrder.First, 182.4, 0, 90);
        Assert.Contains("scatter", Reason(level), StringComparison.Ordinal);
        Assert.Contains("scatter", Reason(level with { Noise = 0 }), StringComparison.Ordinal);
        var early = new InventedSeries(KineticOrder.First, 182.4, 1.32, 2000) { Count = 31 };
        Assert.Contains("end before", Reason(early), StringComparison.Ordinal);
        var quick = new InventedSeries(KineticOrder.First, 182.4, 1.32, 1.5);
        Assert.Contains("read more often", Reason(quick), StringComparison.Ordinal);
        var few = new InventedSeries(KineticOrder.First, 182.4, 1.32, 20) { Count = 3 };
        var result = Assert.IsType<CurveResult.TooFewReadings>(SeriesCurve.Fit(few.Draw(1, 1), KineticOrder.First, Plain));
        Assert.Equal("3 readings are too few for this curve: at least 4 are needed", result.Reason);
    }

    [Fact]
    public void Readings_that_all_lie_on_the_curve_are_still_rounded()
    {
        var truth = new InventedSeries(KineticOrder.First, 182.4, 1.32, 90) { Noise = 0, Decimals = 2 };
        FittedCurve curve = Fitted(truth.Draw(1, 1), KineticOrder.First, Plain);
        // A level that is always rounded alike is known to 0.01/√12 only, however many readings there are.
        Assert.InRange(curve.FinalValue.StandardUncertainty, 0.0025, 0.0045);
        Assert.True(curve.FinalValue.Interval(0.95).Contains(182.4 - 1.32));
    }

    [Fact]
    public void Twenty_thousand_readings_are_no_trouble()
    {
        var truth = new InventedSeries(KineticOrder.First, 182.4, 1.32, 3000) { Count = 20_000, Gap = 1 };
        FittedCurve curve = Fitted(truth.Draw(2, 2), KineticOrder.First, Plain);
        Near(3000, curve.HalfLife);
        Assert.InRange(curve.HalfLife.StandardUncertainty, 0.5, 5);
    }

    [Fact]
    public void Whatever_is_read_the_answer_is_a_number_or_a_reason()
    {
        SeriesNoise[] noises = [new SeriesNoise.Independent(), new SeriesNoise.Correlated(), new SeriesNoise.Wandering(), new SeriesNoise.Known(0.1, 0.2, 3)];
        Gen.Select(Gen.Int[3, 9], Gen.Int[0, 3], Gen.Int[0, 2], Gen.Int[1, 400], Gen.Int[-5000, 5000]).Always((count, noise, order, gap, wild) =>
        {
            TimedReading[] readings = [.. Enumerable.Range(0, count).Select(i => new TimedReading(
                new WrittenNumber((i * gap) + (i * i * (decimal)(wild % 7 == 0 ? 100 : 1))),
                new WrittenNumber(((wild * (i + 1) * (i + 3)) % 997) / 100m)))];
            TimeSeries series = Assert.IsType<TimeSeriesResult.Series>(TimeSeries.From(readings)).Value;
            foreach (CurveStart start in Enum.GetValues<CurveStart>())
            {
                var settings = new CurveSettings(noises[noise], start, wild % 2 == 0 ? 0.01 : 0);
                if (SeriesCurve.Fit(series, (KineticOrder)order, settings) is CurveResult.Fitted { Curve: var curve })
                {
                    SeriesQuantity?[] all = [curve.Start, curve.Loss, curve.FinalValue, curve.HalfLife, curve.RateAtStart, curve.Lag, curve.WholeLoss];
                    Assert.All(all.Where(one => one is not null), one => Assert.True(
                        double.IsFinite(one!.Estimate) && one.StandardUncertainty > 0 && double.IsFinite(one.Interval(0.95).Width)));
                    Assert.All(curve.Residuals, left => Assert.True(double.IsFinite(left)));
                }

                Assert.NotNull(OrderComparison.Of(series, settings));
            }

            Assert.NotNull(CurveLeastSquares.Fit(series, (KineticOrder)order));
            Assert.NotNull(Disturbances.Find(series, (KineticOrder)order, new CurveSettings(noises[noise])));
            Assert.NotNull(InitialSlope.Of(series));
        }, 30);
    }

    [Fact]
    public void Assumptions_that_make_no_sense_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new SeriesNoise.Known(-1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SeriesNoise.Known(1, 1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SeriesNoise.Known(1, 1, 5, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SeriesNoise.Known(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => new CurveSettings(new SeriesNoise.Independent(), driftPerTime: -1));
    }

    private static TimeSeries Changed(TimeSeries series, decimal time, decimal factor, decimal zero) =>
        Assert.IsType<TimeSeriesResult.Series>(TimeSeries.From(
            [.. series.Readings.Select(reading => new TimedReading(
                new(reading.Time.Value * time), new((reading.Reading!.Value.Value * factor) + zero)))],
            series.Resolution * (double)factor)).Value;

    // Three and a half standard uncertainties: with a fixed seed this is no gamble.
    private static void Near(double truth, SeriesQuantity found) =>
        Agree.Within(3.5 * found.StandardUncertainty, truth, found.Estimate);

    private static string Reason(InventedSeries truth) =>
        Assert.IsType<CurveResult.NotDetermined>(SeriesCurve.Fit(truth.Draw(1, 4), truth.Order, Plain)).Reason;

    private static FittedCurve Fitted(TimeSeries series, KineticOrder order, CurveSettings settings) =>
        Assert.IsType<CurveResult.Fitted>(SeriesCurve.Fit(series, order, settings)).Curve;
}
