using Calx.Measurement.Statistics.Series;

namespace Calx.Engine.Tests.Measurement.Statistics.Series;

public class OrderComparisonTests(ITestOutputHelper output)
{
    private static readonly CurveSettings Plain = new(new SeriesNoise.Independent());

    [Theory]
    [InlineData(KineticOrder.Zeroth, 140)]
    [InlineData(KineticOrder.First, 90)]
    [InlineData(KineticOrder.Second, 60)]
    public void A_lesson_over_several_half_lives_tells_the_order(KineticOrder order, double halfLife)
    {
        var prefers = Assert.IsType<OrderVerdict.Prefers>(OrderComparison.Of(new InventedSeries(order, 182.4, 1.32, halfLife).Draw(2, 2), Plain));
        Assert.Equal(order, prefers.Order);
        Assert.True(prefers.Probability > 0.99);
        Assert.Equal(1, prefers.Probabilities.Sum(), 1e-12);
    }

    [Fact]
    public void A_lesson_over_less_than_a_half_life_does_not()
    {
        var cannot = Assert.IsType<OrderVerdict.CannotTell>(
            OrderComparison.Of(new InventedSeries(KineticOrder.First, 182.4, 1.32, 300) { Count = 21, Noise = 0.02 }.Draw(2, 3), Plain));
        Assert.Contains("order both describe the readings", cannot.Reason, StringComparison.Ordinal);
        Assert.Equal(1, cannot.Probabilities.Sum(), 1e-12);
        Assert.All(cannot.Probabilities, probability => Assert.True(probability < 0.95));
    }

    [Fact]
    public void A_curve_that_is_none_of_the_three_is_said_to_be_none()
    {
        // A slow swing on top.
        var truth = new InventedSeries(KineticOrder.First, 182.4, 1.32, 90) { Disturbed = i => 0.06 * Math.Sin(i / 6.0) };
        var cannot = Assert.IsType<OrderVerdict.CannotTell>(OrderComparison.Of(truth.Draw(2, 4), Plain));
        Assert.Contains("none of the three", cannot.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_change_or_with_few_readings_nothing_is_compared()
    {
        Assert.Contains("scatter", Assert.IsType<OrderVerdict.NotCompared>(
            OrderComparison.Of(new InventedSeries(KineticOrder.First, 182.4, 0, 90).Draw(2, 5), Plain)).Reason, StringComparison.Ordinal);
        Assert.Contains("at least 4", Assert.IsType<OrderVerdict.NotCompared>(
            OrderComparison.Of(new InventedSeries(KineticOrder.First, 182.4, 1.3, 20) { Count = 3 }.Draw(2, 5), Plain)).Reason, StringComparison.Ordinal);
    }

    /// <summary>
    /// Orders drawn with probability 1/3 each, in series that decide little. For a calibrated judge the mean probability of the
    /// true order equals the mean of Σp², over truths drawn from its own prior; over the half-lives drawn here, of the length of
    /// a lesson, it may be a little too careful, by 0.03 at most, and not too bold, by three standard errors.
    /// </summary>
    [Fact]
    public void Probabilities_are_as_often_right_as_they_say()
    {
        int cases = LongProofs.Cases(60, 1500);
        var differences = new double[cases];
        int called = 0;
        int right = 0;
        for (int i = 0; i < cases; i++)
        {
            var order = (KineticOrder)(i % 3);
            double halfLife = 60 * Math.Exp(1.2 * ((i * 0.61803398874989485) % 1));
            TimeSeries series = new InventedSeries(order, 20, 1, halfLife) { Count = 16, Gap = 15, Noise = 0.03 }.Draw(21, (ulong)i);
            OrderVerdict verdict = OrderComparison.Of(series, Plain);
            IReadOnlyList<double> p = verdict switch
            {
                OrderVerdict.Prefers prefers => prefers.Probabilities,
                OrderVerdict.CannotTell cannot => cannot.Probabilities,
                _ => [1 / 3.0, 1 / 3.0, 1 / 3.0],
            };
            differences[i] = p[(int)order] - p.Sum(value => value * value);
            called += verdict is OrderVerdict.Prefers ? 1 : 0;
            right += verdict is OrderVerdict.Prefers { Order: var found } && found == order ? 1 : 0;
        }

        double mean = differences.Average();
        double error = Math.Sqrt(differences.Sum(value => (value - mean) * (value - mean)) / (cases - 1) / cases);
        output.WriteLine($"{cases} series: true order by {mean:0.000} ± {error:0.000} more probable than calibrated; {right} of {called} preferred are right");
        Assert.InRange(mean, -3 * error, Math.Max(0.03, 3 * error));
        Assert.True(called > cases / 20 && right >= (0.95 * called) - (3 * Math.Sqrt(0.0475 * called)), $"{right} of {called}");
    }
}
