using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Engine.Tests.Measurement.Uncertainty;

/// <summary>
/// Monte Carlo against the examples of JCGM 101:2008, clause 9, as kept in reference/jcgm101_results.csv: published figures
/// and an independent run of four million draws. Seeds are fixed. Bounds: half a unit of the last digit published plus five
/// standard errors; ends of the shortest interval, which settle slowly, to 4 % of u for 200 000 draws.
/// </summary>
public sealed class MonteCarloTests
{
    private const int Draws = 200_000;

    public static TheoryData<string> Rows =>
        [.. ReferenceTable.Read("jcgm101_results.csv").Rows
            .Where(row => row.Text("method") == "MCM").Select(row => row.Text("case"))];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Examples_of_JCGM_101_clause_9_agree(string name)
    {
        ReferenceRow row = ReferenceTable.Read("jcgm101_results.csv").Rows
            .Single(row => row.Text("method") == "MCM" && row.Text("case") == name);
        double scale = row.Text("example") == "9.4" ? 1e6 : 1;
        MonteCarloResult result = Finished(MonteCarlo.Run(
            Model(name), new MonteCarloSettings(Draws, coverage: row.Number("p"))));
        double u = row.Number("check_u");
        Agree.Within((5 * u / Math.Sqrt(Draws)) + Rounding(row.Text("check_y")), row.Number("check_y"), scale * result.Value);
        Agree.Within((0.01 * u) + Rounding(row.Text("check_u")), u, scale * result.StandardUncertainty);
        // The last digit of the published figures comes from another set of draws.
        Agree.Within((0.012 * u) + (2 * Rounding(row.Text("published_u"))), row.Number("published_u"), scale * result.StandardUncertainty);
        double ends = (row.Number("p") > 0.98 ? 0.08 : 0.04) * u;
        Agree.Within(ends + Rounding(row.Text("check_low")), row.Number("check_low"), scale * result.Shortest.Low);
        Agree.Within(ends + Rounding(row.Text("check_high")), row.Number("check_high"), scale * result.Shortest.High);
    }

    [Fact]
    public void Mass_calibration_has_the_deviation_and_width_found_by_quadrature()
    {
        // Closed form and Gauss–Legendre quadrature, bench/peers/montecarlo.py 'exact': 0.075480 and 0.29913.
        MonteCarloResult result = Finished(MonteCarlo.Run(
            MonteCarloModels.MassCalibration(), new MonteCarloSettings(1_000_000)));
        Agree.Within(5 * 0.07548 / 1000, 1.234, result.Value);
        Agree.Within(5 * 0.07548 / Math.Sqrt(2e6), 0.075480, result.StandardUncertainty);
        Agree.Within(6e-4, 0.29913, result.Shortest.Width);
        Agree.Within(1e-3, 0.29913, result.Symmetric.Width);
    }

    [Fact]
    public void Sum_of_four_rectangular_inputs_has_the_interval_known_in_closed_form()
    {
        // JCGM 101:2008, 9.2.3: ±2√3 (2 − (3/5)^¼), here for the symmetric interval too.
        double end = 2 * Math.Sqrt(3) * (2 - Math.Pow(0.6, 0.25));
        MonteCarloResult result = Finished(MonteCarlo.Run(
            MonteCarloModels.FourRectangulars(1), new MonteCarloSettings(1_000_000)));
        Agree.Within(0.02, -end, result.Symmetric.Low);
        Agree.Within(0.02, end, result.Symmetric.High);
        Agree.Within(0.02, 2 * end, result.Shortest.Width);
    }

    [Fact]
    public void A_skewed_result_has_the_shortest_interval_published_for_ln_x()
    {
        // NPL report DEM-ES-011, 9.2 (reference/mc_other_examples.csv): y −0.665, u 0.606, [−1.895, 0.095].
        MeasurementModel model = MonteCarloModels.Of("ln(x)", ("x", new RectangularInput(0.1, 1.1)));
        MonteCarloResult result = Finished(MonteCarlo.Run(model, new MonteCarloSettings(1_000_000)));
        Agree.Within(0.0035, -0.665, result.Value);
        Agree.Within(0.0025, 0.606, result.StandardUncertainty);
        Agree.Within(0.005, -1.895, result.Shortest.Low);
        Agree.Within(0.001, 0.095, result.Shortest.High);
        // The quantiles of ln x at 2.5 % and 97.5 %: ln 0.125 and ln 1.075.
        Agree.Within(0.01, Math.Log(0.125), result.Symmetric.Low);
        Agree.Within(0.001, Math.Log(1.075), result.Symmetric.High);
    }

    [Fact]
    public void Any_number_of_threads_gives_the_same_bytes()
    {
        MonteCarloResult[] results = [.. new[] { 1, 2, 3, 7 }.Select(threads => Finished(MonteCarlo.Run(
            MonteCarloModels.GaugeBlock(), new MonteCarloSettings(50_001, 9, threads, keepSortedDraws: true))))];
        foreach (MonteCarloResult other in results[1..])
        {
            Assert.Equal(Bits(results[0]), Bits(other));
            Assert.Equal(results[0].SortedDraws, other.SortedDraws);
        }
    }

    [Fact]
    public void Intervals_are_the_same_whether_all_draws_are_sorted_or_only_the_tails()
    {
        foreach (double coverage in (double[])[0.5, 0.9, 0.95, 0.999])
        {
            MonteCarloResult tails = Finished(MonteCarlo.Run(
                MonteCarloModels.MassCalibration(), new MonteCarloSettings(60_000, coverage: coverage)));
            MonteCarloResult all = Finished(MonteCarlo.Run(
                MonteCarloModels.MassCalibration(), new MonteCarloSettings(60_000, coverage: coverage, keepSortedDraws: true)));
            Assert.Equal(Bits(all), Bits(tails));
            Assert.Equal(all.SortedDraws!.Order(), all.SortedDraws);
        }
    }

    [Fact]
    public void Draws_that_are_all_alike_have_an_interval_without_width()
    {
        MeasurementModel model = MonteCarloModels.Of("x", ("x", new NormalInput(-2.5, 0)));
        MonteCarloResult result = Finished(MonteCarlo.Run(model, new MonteCarloSettings(50_000)));
        Assert.Equal(new CoverageInterval(-2.5, -2.5, 0.95), result.Shortest);
        Assert.Equal(0, result.StandardUncertainty);
    }

    [Fact]
    public void Inputs_of_which_one_follows_from_the_other_cancel()
    {
        MeasurementModel model = MonteCarloModels.Of(
            "a - b", [new InputCorrelation("a", "b", 1)], ("a", new NormalInput(5, 0.1)), ("b", new NormalInput(3, 0.1)));
        MonteCarloResult result = Finished(MonteCarlo.Run(model, new MonteCarloSettings(10_000)));
        Agree.Within(1e-12, 2, result.Value);
        Agree.Within(1e-12, 0, result.StandardUncertainty);
    }

    [Fact]
    public void A_correlation_of_an_input_that_is_not_normal_is_refused_in_words()
    {
        MeasurementModel model = MonteCarloModels.Of(
            "a - b", [new InputCorrelation("a", "b", 0.5)], ("a", new NormalInput(5, 0.1)), ("b", new RectangularInput(2, 3)));
        var outcome = Assert.IsType<MonteCarloOutcome.CannotDraw>(MonteCarlo.Run(model, new MonteCarloSettings()));
        Assert.StartsWith("b has a correlation but is not normal", outcome.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Draws_without_a_value_are_counted_and_explained()
    {
        // A normal input of mean 3 is negative in 1.35 draws of a thousand: 135 of 100 000, give or take 12.
        MeasurementModel model = MonteCarloModels.Of("sqrt(x)", ("x", new NormalInput(3, 1)));
        var outcome = Assert.IsType<MonteCarloOutcome.DrawsFailed>(MonteCarlo.Run(model, new MonteCarloSettings(100_000)));
        Assert.Equal(100_000, outcome.Examined);
        Assert.InRange(outcome.Failed, 135 - 58, 135 + 58);
        Assert.Contains("sqrt(x)", outcome.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Counting_of_failed_draws_ends_at_a_thousand_and_says_among_how_many()
    {
        MeasurementModel model = MonteCarloModels.Of("ln(x)", ("x", new NormalInput(0, 1)));
        var outcome = Assert.IsType<MonteCarloOutcome.DrawsFailed>(MonteCarlo.Run(model, new MonteCarloSettings(100_000)));
        Assert.Equal(1000, outcome.Failed);
        Assert.InRange(outcome.Examined, 1800, 2200);
    }

    [Fact]
    public void A_stopped_calculation_ends_with_the_cancellation_exception()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        var settings = new MonteCarloSettings(10_000_000, cancellation: source.Token);
        Assert.ThrowsAny<OperationCanceledException>(() => MonteCarlo.Run(MonteCarloModels.MassCalibration(), settings));
        Assert.ThrowsAny<OperationCanceledException>(
            () => MonteCarlo.RunAdaptive(MonteCarloModels.MassCalibration(), 1, settings));
    }

    [Fact]
    public void Settings_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new MonteCarloSettings(draws: 999));
        Assert.Throws<ArgumentOutOfRangeException>(() => new MonteCarloSettings(draws: 100_000_001));
        Assert.Throws<ArgumentOutOfRangeException>(() => new MonteCarloSettings(draws: 1000, coverage: 0.999));
        Assert.Throws<ArgumentOutOfRangeException>(() => new MonteCarloSettings(coverage: 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => new MonteCarloSettings(threads: -1));
    }

    internal static MonteCarloResult Finished(MonteCarloOutcome outcome)
        => Assert.IsType<MonteCarloOutcome.Finished>(outcome).Result;

    private static long[] Bits(MonteCarloResult result) =>
    [
        .. new[]
        {
            result.Value, result.StandardUncertainty, result.Shortest.Low, result.Shortest.High, result.Symmetric.Low,
            result.Symmetric.High,
        }.Select(BitConverter.DoubleToInt64Bits),
    ];

    private static MeasurementModel Model(string name) => name switch
    {
        "4 normals" => MonteCarloModels.FourNormals(),
        "4 equal rectangulars" => MonteCarloModels.FourRectangulars(1),
        "X4 ten times wider" => MonteCarloModels.FourRectangulars(10),
        "mass calibration" => MonteCarloModels.MassCalibration(),
        "r=0 x1=0.000" => MonteCarloModels.MicrowavePower(0, 0),
        "r=0 x1=0.010" => MonteCarloModels.MicrowavePower(0.010, 0),
        "r=0 x1=0.050" => MonteCarloModels.MicrowavePower(0.050, 0),
        "r=0.9 x1=0.000" => MonteCarloModels.MicrowavePower(0, 0.9),
        "r=0.9 x1=0.010" => MonteCarloModels.MicrowavePower(0.010, 0.9),
        "r=0.9 x1=0.050" => MonteCarloModels.MicrowavePower(0.050, 0.9),
        "gauge block" => MonteCarloModels.GaugeBlock(),
        _ => throw new InvalidOperationException($"No model is called {name}."),
    };

    private static double Rounding(string written)
    {
        int point = written.IndexOf('.', StringComparison.Ordinal);
        return 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - written.Length);
    }
}
