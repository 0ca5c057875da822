using BenchmarkDotNet.Attributes;
using Calx.Measurement.Statistics.Nonlinear;
using Calx.Measurement.Statistics.Series;

namespace Calx.Bench.Benchmarks;

/// <summary>Curves through mass against time, 300 readings a group.</summary>
public class SeriesBenchmark
{
    private static readonly CurveSettings Independent = new(new SeriesNoise.Independent());
    private static readonly CurveSettings Delayed = new(new SeriesNoise.Independent(), CurveStart.Delayed);
    private static readonly CurveSettings Correlated = new(new SeriesNoise.Correlated());

    [Benchmark]
    public NonlinearFitResult LeastSquaresOneGroup() => CurveLeastSquares.Fit(SeriesData.All[0], KineticOrder.First);

    [Benchmark]
    public double CurveOneGroup() => Quantities(SeriesCurve.Fit(SeriesData.All[0], KineticOrder.First, Independent));

    [Benchmark]
    public double CurveWithNoiseFoundOneGroup() => Quantities(SeriesCurve.Fit(SeriesData.All[0], KineticOrder.First, Correlated));

    [Benchmark]
    public double CurveWithDelayOneGroup() => Quantities(SeriesCurve.Fit(SeriesData.All[0], KineticOrder.First, Delayed));

    [Benchmark]
    public double CurveEighteenGroups() => SeriesData.All.Sum(series => Quantities(SeriesCurve.Fit(series, KineticOrder.First, Independent)));

    [Benchmark]
    public int OrdersEighteenGroups() => SeriesData.All.Count(series => OrderComparison.Of(series, Independent) is OrderVerdict.Prefers);

    [Benchmark]
    public int DisturbancesEighteenGroups() => SeriesData.All.Sum(series =>
        ((DisturbanceResult.Searched)Disturbances.Find(series, KineticOrder.First, Independent)).Found.Count);

    /// <summary>What a page shows: half-life, loss, final value and rate, each with its interval.</summary>
    internal static double Quantities(CurveResult result) => result is CurveResult.Fitted { Curve: var curve }
        ? new[] { curve.HalfLife, curve.Loss, curve.FinalValue, curve.RateAtStart }.Sum(found => found.Interval(0.95).Width)
        : throw new InvalidOperationException("The series was not fitted.");
}
