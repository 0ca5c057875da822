using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics.Series;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

/// <summary>The invented series of tests/reference/scripts/series.R.</summary>
internal static class ReferenceSeries
{
    private static readonly ReferenceTable Readings = ReferenceTable.Read("computed/series_readings.csv");

    public static TimeSeries Of(string name)
    {
        TimedReading[] readings = [.. Readings.Rows.Where(row => row.Text("case") == name)
            .Select(row => new TimedReading(Number(row.Text("time")), Number(row.Text("reading"))))];
        return Assert.IsType<TimeSeriesResult.Series>(TimeSeries.From(readings)).Value;
    }

    public static KineticOrder Order(ReferenceRow row) => Enum.Parse<KineticOrder>(row.Text("order"));

    private static WrittenNumber Number(string text) => WrittenNumber.TryParse(text, out WrittenNumber number) ? number : throw new ArgumentException(text);
}
