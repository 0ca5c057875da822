using Calx.Measurement.Weighing;
using Calx.Practicals.Clock;
using Calx.Practicals.Model;
using Calx.Practicals.Readings;
using Calx.Practicals.Watching;

namespace Calx.Engine.Tests.Practicals.Gauges;

/// <summary>A lesson that reads clocks and thermometers while it runs.</summary>
public class GaugeWatchTests
{
    private static readonly LessonWatch Watch = new(new PlanSettings(GaugeBench.Electrolysis, 8, [new Balance(0.01)], 100), GaugeBench.Weights, seed: 5);

    private static readonly (string, string)[] Before = [("anodeBefore", "12.83"), ("cathodeBefore", "10.47"), ("current", "0.40")];

    [Theory]
    [InlineData("1200", false)]
    [InlineData("1215", false)]
    [InlineData("2100", true)]
    [InlineData("20", true)]
    public void A_time_that_cannot_be_is_asked_about_in_words_that_fit_any_instrument(string written, bool asked)
    {
        // Of twenty ordinary entries some are asked about anyway; of a slip all are.
        ReadingQuery[] queries = [.. Enumerable.Range(1, 20).Select(i => Watch.QueryFor(Group(Before), new Weighing("time", 1), GaugeBench.Number(written), (UInt128)i << 70))];

        Assert.Equal(asked, queries.All(q => q is ReadingQuery.LookAgain));
        Assert.DoesNotContain(queries, q => q is ReadingQuery.WrongDecimals);
        Assert.All(queries.OfType<ReadingQuery.LookAgain>(), q => Assert.Equal("Look again at the display.", q.ForStudent));
    }

    [Fact]
    public void What_comes_next_has_its_own_unit_and_no_decimals_of_a_balance()
    {
        NextReading next = Watch.Now(Group(Before), new LessonMoment(40, 100, 10, 90), classBegan: true).Next!;

        Assert.Equal("time", next.Weighing.Reading);
        Assert.Equal("s", next.Unit);
        Assert.Null(next.Decimals);
    }

    private static GroupAtWork Group((string, string)[] readings) => new(1, 1, new Balance(0.01), GaugeBench.Group(GaugeBench.Electrolysis, readings));
}
