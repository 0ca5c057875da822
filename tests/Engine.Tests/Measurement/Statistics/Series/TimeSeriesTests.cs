using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics.Series;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

public class TimeSeriesTests
{
    [Fact]
    public void Readings_keep_their_decimals_and_the_last_of_them_is_the_resolution()
    {
        TimeSeries series = Taken(TimeSeries.From([At("0", "182.40"), At("10", "182.3"), At("20.5", "182.25")]));
        Assert.Equal(0.01, series.Resolution, 1e-15);
        Assert.Equal("182.40", series.Readings[0].Reading.ToString());
        Assert.Equal([0.0, 10.0, 20.5], series.Times.ToArray());
        Assert.Equal(20.5, series.Span);
        Assert.Equal(0.02, Taken(TimeSeries.From([At("0", "1.40"), At("10", "1.42"), At("20", "1.44")], 0.02)).Resolution);
    }

    [Fact]
    public void A_time_without_a_reading_is_a_gap()
    {
        TimeSeries series = Taken(TimeSeries.From([At("0", "3"), At("1", null), At("2", "2"), At("3", "1")]));
        Assert.Equal(3, series.Readings.Count);
        Assert.Equal([0.0, 2.0, 3.0], series.Times.ToArray());
    }

    [Fact]
    public void A_time_that_does_not_go_on_is_named_with_its_line()
    {
        var faulty = Assert.IsType<TimeSeriesResult.Faulty>(TimeSeries.From([At("0", "3"), At("10", "2"), At("10", "1"), At("20", "1")]));
        Assert.Equal(2, faulty.Place);
        Assert.Equal("the time 10 does not come after 10", faulty.Reason);
    }

    [Fact]
    public void Two_readings_are_no_series_nor_are_twenty_thousand_and_one()
    {
        var few = Assert.IsType<TimeSeriesResult.Faulty>(TimeSeries.From([At("0", "3"), At("1", null), At("2", "2")]));
        Assert.Null(few.Place);
        Assert.Equal("a series has 3 to 20000 readings; this one has 2", few.Reason);
        TimedReading[] many = [.. Enumerable.Range(0, 20_001).Select(i => new TimedReading(new WrittenNumber(i), new WrittenNumber(1.5m)))];
        Assert.IsType<TimeSeriesResult.Faulty>(TimeSeries.From(many));
        Assert.IsType<TimeSeriesResult.Series>(TimeSeries.From(many[..20_000]));
        Assert.IsType<TimeSeriesResult.Faulty>(TimeSeries.From([]));
        Assert.Throws<ArgumentOutOfRangeException>(() => TimeSeries.From(many[..5], 0));
    }

    private static TimedReading At(string time, string? reading) => new(Number(time), reading is null ? null : Number(reading));

    private static WrittenNumber Number(string text) => WrittenNumber.TryParse(text, out WrittenNumber number) ? number : throw new ArgumentException(text);

    private static TimeSeries Taken(TimeSeriesResult result) => Assert.IsType<TimeSeriesResult.Series>(result).Value;
}
