using Calx.Measurement.Distributions;
using Calx.Practicals.Learning;

namespace Calx.Engine.Tests.Practicals.Learning;

/// <summary>Lessons drawn with known truth.</summary>
public sealed class LearningSimulationTests
{
    private static readonly TimePrior Prior = new(Drawn.Cooling);

    [Fact]
    public void Errors_of_times_fall_as_lessons_come_together()
    {
        const double Truth = 0.35, Between = 0.12;
        int cases = LongProofs.Cases(20, 600);
        double[] errors = [.. new[] { 1, 5, 20 }.Select(n => Math.Sqrt(Enumerable.Range(0, cases).Average(c =>
        {
            var stream = new RandomStream(81, (ulong)c);
            PastLesson[] lessons = [.. Enumerable.Range(0, n).Select(i => Drawn.Lesson(stream, Prior, i, Truth, Between, Prior.Spread))];
            Timed timed = TimeRule.Of(Drawn.Cooling, Drawn.Step, lessons, Drawn.NewClass);
            return Math.Pow(Math.Log(timed.Mean.Low * timed.Mean.High) / 2 - Math.Log(Drawn.Cooling.Mean) - Truth, 2);
        })))];
        double law = Math.Sqrt((Between * Between) + (Prior.Spread * Prior.Spread / 12));
        Assert.True(errors[0] > errors[1] && errors[1] > errors[2]);
        Assert.InRange(errors[1] / errors[2], 1.3, 3.2);
        Assert.InRange(errors[2] / (law / Math.Sqrt(20)), 0.6, 1.5);
    }

    [Fact]
    public void Errors_of_rates_fall_as_lessons_come_together()
    {
        const double Truth = 0.4, Kappa = 12;
        int cases = LongProofs.Cases(30, 1000);
        double[] errors = [.. new[] { 1, 5, 20 }.Select(n => Math.Sqrt(Enumerable.Range(0, cases).Average(c =>
        {
            var stream = new RandomStream(82, (ulong)c);
            var law = new BetaInput(Kappa * Truth, Kappa * (1 - Truth));
            ClassCount[] counts = [.. Enumerable.Range(0, n).Select(i => Drawn.Count(i, 12, Drawn.Binomial(stream, 12, law.Draw(stream))))];
            return Math.Pow(RateRule.Of(0.2, counts, Drawn.NewClass, 12).Rate - Truth, 2);
        })))];
        double law = Math.Sqrt(Truth * (1 - Truth) * ((1 / (Kappa + 1)) + (Kappa / (Kappa + 1) / 12)));
        Assert.True(errors[0] > errors[1] && errors[1] > errors[2]);
        Assert.InRange(errors[1] / errors[2], 1.3, 3.2);
        Assert.InRange(errors[2] / (law / Math.Sqrt(20)), 0.6, 1.5);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void Nine_intervals_of_times_in_ten_hold_the_truth(int lessons)
    {
        int cases = LongProofs.Cases(40, 2000);
        int mean = 0, group = 0;
        for (int c = 0; c < cases; c++)
        {
            var stream = new RandomStream(83, (ulong)((c * 10) + lessons));
            double truth = TimeRule.FileScale * stream.NextNormal() / Math.Sqrt(ChiSquared(stream, 4) / 4);
            double between = TimeRule.LessonScale * Math.Abs(stream.NextNormal());
            double spread = Prior.Spread * Math.Sqrt(TimeRule.FileGroups / ChiSquared(stream, 10));
            PastLesson[] seen = [.. Enumerable.Range(0, lessons).Select(i => Drawn.Lesson(stream, Prior, i, truth, between, spread, bell: 0.5))];
            Timed timed = TimeRule.Of(Drawn.Cooling, Drawn.Step, seen, Drawn.NewClass);
            mean += timed.Mean.Contains(Drawn.Cooling.Mean * Math.Exp(truth)) ? 1 : 0;
            double next = truth + (between * stream.NextNormal()) + (spread * stream.NextNormal());
            group += timed.OneGroup.Contains(Math.Exp(Prior.LogMean + next)) ? 1 : 0;
        }

        double slack = cases > 1000 ? 0.03 : 0.02 + LongProofs.ThreeErrors(0.9, cases);
        Assert.InRange(mean / (double)cases, 0.9 - slack, 0.9 + slack);
        Assert.InRange(group / (double)cases, 0.9 - slack, 0.9 + slack);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void Nine_intervals_of_rates_in_ten_hold_the_truth(int classes)
    {
        int cases = LongProofs.Cases(80, 2000);
        int rate = 0, own = 0, count = 0;
        for (int c = 0; c < cases; c++)
        {
            var stream = new RandomStream(84, (ulong)((c * 10) + classes));
            double truth = new BetaInput(5, 15).Draw(stream);
            double kappa = (1 / new BetaInput(1, RateRule.SpreadShape).Draw(stream)) - 1;
            var law = new BetaInput(kappa * truth, kappa * (1 - truth));
            double[] rates = [.. Enumerable.Range(0, classes).Select(_ => law.Draw(stream))];
            ClassCount[] counts = [.. rates.Select((r, i) => Drawn.Count(i, 12, Drawn.Binomial(stream, 12, r)))];
            Rated rated = RateRule.Of(0.25, counts, Drawn.NewClass, 12);
            rate += rated.Interval.Contains(truth) ? 1 : 0;
            count += rated.Count.Contains(Drawn.Binomial(stream, 12, law.Draw(stream))) ? 1 : 0;
            own += RateRule.Of(0.25, counts, new NextLesson("Larkmoor School", "class 0", 12), 12).Interval.Contains(rates[0]) ? 1 : 0;
        }

        double slack = cases > 1000 ? 0.03 : 0.02 + LongProofs.ThreeErrors(0.9, cases);
        Assert.InRange(rate / (double)cases, 0.9 - slack, 0.9 + slack);
        Assert.InRange(own / (double)cases, 0.9 - slack, 0.9 + slack);
        // Whole numbers: an interval of them holds nine in ten or more.
        Assert.InRange(count / (double)cases, 0.9 - slack, 1);
    }

    private static double ChiSquared(RandomStream stream, int degrees) =>
        Enumerable.Range(0, degrees).Sum(_ => Math.Pow(stream.NextNormal(), 2));
}
