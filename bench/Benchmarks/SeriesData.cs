using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics.Series;

namespace Calx.Bench.Benchmarks;

/// <summary>Invented groups of 'marble chips and acid': 300 readings, one every two seconds, of a display with two decimals.</summary>
internal static class SeriesData
{
    public const int Readings = 300;
    public const int Groups = 18;
    public const double Loss = 1.32;
    public const double HalfLife = 90;

    public static readonly TimeSeries[] All = [.. Enumerable.Range(0, Groups).Select(Draw)];

    private static TimeSeries Draw(int group)
    {
        var stream = new RandomStream(20061124, (ulong)group);
        TimedReading[] readings = [.. Enumerable.Range(0, Readings).Select(i =>
        {
            double left = Loss * Math.Pow(2, -2.0 * i / HalfLife);
            double reading = 181.08 + left + (0.01 * stream.NextNormal());
            return new TimedReading(new WrittenNumber(2 * i), new WrittenNumber(Math.Round((decimal)reading, 2)));
        })];
        return ((TimeSeriesResult.Series)TimeSeries.From(readings)).Value;
    }
}
