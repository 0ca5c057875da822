using Calx.Measurement.Distributions;
using Calx.Measurement.Numbers;
using Calx.Measurement.Statistics;
using Calx.Measurement.Weighing;
using Calx.Practicals.Findings.History;

namespace Calx.Engine.Tests.Practicals.Findings.History;

// Invented checks of a balance of 0.01 g with a weight of 100 g. One reading is uncertain by √(0.7² + 1/12) = 0.757 divisions:
// the usual repeatability and the rounding.
public class BalanceHistoryTests
{
    private const double U = 0.7572;

    private static readonly DateOnly Start = new(2020, 1, 1);

    // Every four years, 1461 days exactly: errors 0, 2, 4, 6, 8 divisions rise by 0.5 a year. Σ(x − 8)² = 160, so the slope is
    // uncertain by 0.757/√160 = 0.0599, and Student's t for 3 degrees of freedom is 3.182.
    [Fact]
    public void A_steady_rise_is_a_drift_with_the_interval_that_the_balance_gives_it()
    {
        BalanceHistory history = Of(Yearly(0, 2, 4, 6, 8));

        var drift = Assert.IsType<Drift.Judged>(history.Drift);
        Assert.Equal("year", drift.Per);
        Assert.Equal(0.5, drift.Slope, 1e-9);
        Assert.Equal(0.5 - (3.182 * U / Math.Sqrt(160)), drift.Interval.Low, 1e-3);
        Assert.True(drift.IsBeyondChance);
        Assert.Equal(3, drift.ValueOn(Start.AddDays(1461 + 731)), 0.001);
        Assert.Contains(history.Sentences, s => s.StartsWith("The balance drifts by 0.50 divisions a year", StringComparison.Ordinal));
    }

    // The same slope from three checks: Student's t for 1 degree of freedom is 12.71, and chance explains it.
    [Fact]
    public void The_same_rise_in_three_checks_is_not_beyond_chance()
    {
        BalanceHistory history = Of(Yearly(0, 2, 4));

        Assert.False(Assert.IsType<Drift.Judged>(history.Drift).IsBeyondChance);
        Assert.Contains(history.Sentences, s => s.StartsWith("No drift beyond chance is seen: 0.5", StringComparison.Ordinal));
    }

    // Checks that scatter by more than the balance explains widen the interval to that of ordinary least squares.
    [Fact]
    public void Scatter_beyond_the_balance_is_judged_by_itself()
    {
        double[] x = [0, 4, 8, 12, 16, 20];
        double[] y = [0, 5, -4, 6, 1, -3];
        var drift = Assert.IsType<Drift.Judged>(Of(Yearly(0, 5, -4, 6, 1, -3)).Drift);
        var plain = Assert.IsType<LineResult.Fitted>(StraightLine.LeastSquares(x, y)).Fit.Line;

        Assert.Equal(plain.Slope, drift.Slope, 1e-9);
        Assert.Equal(StudentT.Quantile(0.975, 4) * plain.SlopeStandardUncertainty, drift.Interval.Width / 2, 1e-9);
    }

    // A balance that does not drift must be said to drift in at most 5 of 100 histories: rounding and scatter as above.
    [Fact]
    public void A_balance_that_stands_still_is_seldom_said_to_drift()
    {
        int histories = LongProofs.Cases(sample: 600, inFull: 20_000);
        int drifting = 0;
        for (int seed = 0; seed < histories; seed++)
        {
            var stream = new RandomStream(5000 + (ulong)seed, 0);
            BalanceHistory history = Of([.. Enumerable.Range(0, 8).Select(i => Check(60 * i, (int)Math.Round(0.7 * stream.NextNormal())))]);
            drifting += history.Drift is Drift.Judged { IsBeyondChance: true } ? 1 : 0;
        }

        Assert.InRange(drifting / (double)histories, 0, 0.05 + LongProofs.ThreeErrors(0.05, histories));
    }

    [Fact]
    public void Within_a_year_the_drift_is_told_by_the_month()
    {
        var drift = Assert.IsType<Drift.Judged>(Of([Check(0, 0), Check(30, 1), Check(60, 2), Check(90, 3)]).Drift);

        Assert.Equal(("month", 1), (drift.Per, Math.Round(drift.Slope, 9)));
    }

    [Fact]
    public void Three_checks_on_different_days_are_needed()
    {
        Assert.IsType<Drift.Unjudged>(Of([]).Drift);
        Assert.IsType<Drift.Unjudged>(Of([Check(0, 0), Check(9, 1)]).Drift);
        Assert.IsType<Drift.Unjudged>(Of([Check(0, 0), Check(0, 1), Check(9, 1), Check(9, 2)]).Drift);
        Assert.IsType<Drift.Judged>(Of([Check(0, 0), Check(9, 1), Check(18, 1)]).Drift);
        Assert.Equal("This balance has not been checked with a weight yet.", Assert.Single(Of([]).Sentences));
    }

    [Fact]
    public void Sentences_say_the_last_check_and_how_many_lie_within_a_division()
    {
        IReadOnlyList<string> sentences = Of([Check(9, -2), Check(0, 1)]).Sentences;

        Assert.Equal("At the last check a weight of 100.00 g was shown as 99.98 g: 2 divisions less.", sentences[0]);
        Assert.StartsWith("1 of 2 checks lie within one division", sentences[1], StringComparison.Ordinal);
        Assert.Contains("exactly that", Of([Check(0, 0)]).Sentences[0], StringComparison.Ordinal);
        Assert.Equal("All 2 checks lie within one division.", Of([Check(0, 1), Check(1, -1)]).Sentences[1]);
    }

    [Fact]
    public void A_misread_check_is_pointed_out_and_does_not_make_a_drift()
    {
        BalanceHistory history = Of([Check(0, 0), Check(60, 0), Check(120, 1), Check(180, 0), Check(240, -100)]);

        Assert.True(history.IsFar(history.Checks[^1]));
        Assert.Contains(history.Sentences, s => s.StartsWith("One check lies far from the others", StringComparison.Ordinal));
        Assert.False(Assert.IsType<Drift.Judged>(history.Drift).IsBeyondChance);
        Assert.Equal(5, history.Checks.Count);
    }

    [Fact]
    public void The_order_of_the_checks_does_not_matter()
    {
        BalanceCheckMade[] checks = [.. Yearly(0, 2, 1, 3, 2)];

        Assert.Equal(Of(checks).Sentences, Of([.. checks.Reverse()]).Sentences);
    }

    [Fact]
    public void A_weight_has_a_mass()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new BalanceCheckMade(Start, new WrittenNumber(0m), new WrittenNumber(0m)));
    }

    private static BalanceHistory Of(IReadOnlyList<BalanceCheckMade> checks) => BalanceHistory.Of(new Balance(0.01), checks);

    private static BalanceCheckMade[] Yearly(params int[] divisions) => [.. divisions.Select((d, i) => Check(1461 * i, d))];

    private static BalanceCheckMade Check(int day, int divisions) =>
        new(Start.AddDays(day), new WrittenNumber(100.00m), new WrittenNumber(100.00m + (0.01m * divisions)));
}
