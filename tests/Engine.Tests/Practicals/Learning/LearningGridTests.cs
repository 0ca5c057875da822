using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Practicals.Definition;
using Calx.Practicals.Learning;

namespace Calx.Engine.Tests.Practicals.Learning;

/// <summary>Against dense grids on which nothing is in closed form: tests/reference/scripts/learning.R.</summary>
public sealed class LearningGridTests
{
    private const double Spread = 0.2;

    private static readonly Dictionary<(string Case, string Quantity), double> Grid = ReferenceTable.Read("computed/learning.csv").Rows
        .ToDictionary(r => (r.Text("case"), r.Text("quantity")), r => r.Number("value"));

    public static TheoryData<string, double, double[], double[], int> Counts => new()
    {
        { "one-class", 0.2, [12], [5], 0 },
        { "expected-count", 0.15, [12, 10], [1.7, 3.25], 0 },
        { "five-classes", 0.2, [12, 15, 10, 14, 12], [5, 4, 4, 7, 3], 0 },
        { "five-classes-known", 0.2, [12, 15, 10, 14, 12], [5, 4, 4, 7, 3], 4 },
        { "absurd-class", 0.1, [12, 15, 10, 14, 15], [1, 2, 0, 1, 15], 0 },
    };

    public static TheoryData<string, double[][], double[][]> Times => new()
    {
        { "one-lesson", [[0.35, 0.5, 0.2, 0.41, 0.33]], [[]] },
        { "three-lessons", [[0.35, 0.5, 0.2, 0.41], [0.1, 0.25, 0.3], [0.3, 0.62, 0.4, 0.45, 0.28]], [[], [], []] },
        { "bell", [[0.15, 0.2], [0.1, 0.25, 0.3]], [[0.3, 0.3, 0.3], [0.35]] },
        { "nobody-finished", [[]], [[0.4, 0.4, 0.4, 0.4]] },
        { "absurd-lesson", [[0.05, 0.1, -0.1, 0.02], [0.1, 0, -0.05], [1.8, 1.75, 1.9, 1.7]], [[], [], []] },
    };

    [Theory]
    [MemberData(nameof(Counts))]
    public void A_rate_is_that_of_a_dense_grid(string name, double file, double[] tried, double[] happened, int known)
    {
        NextLesson next = known == 0 ? Drawn.NewClass : new NextLesson("Larkmoor School", $"class {known}", 12);
        Rated rated = RateRule.Of(file, [.. tried.Select((n, i) => Drawn.Count(i + 1, (int)n, happened[i]))], next, 12);
        Assert.Equal(Grid[(name, "mean")], rated.Rate, 0.001);
        if (known == 0)
        {
            Assert.Equal(Grid[(name, "low")], rated.Interval.Low, 0.002);
            Assert.Equal(Grid[(name, "high")], rated.Interval.High, 0.002);
        }
    }

    [Theory]
    [MemberData(nameof(Times))]
    public void A_time_is_that_of_a_dense_grid(string name, double[][] done, double[][] unfinished)
    {
        StepMinutes file = WithSpread();
        var prior = new TimePrior(file);
        Assert.Equal(Spread, prior.Spread, 1e-9);
        Timed timed = TimeRule.Of(file, Drawn.Step, [.. done.Select((d, i) => Drawn.Logs(prior, i, d, unfinished[i]))], Drawn.NewClass);
        double spread = prior.Spread * Math.Log(timed.Minutes.Most / timed.Minutes.Least) / Math.Log(file.Most / file.Least);
        double mean = Math.Log(timed.Minutes.Likely) - prior.LogMean - ((Math.Log(file.Likely) - prior.LogMean) * spread / prior.Spread);
        Assert.Equal(Grid[(name, "mean")], mean, 0.003);
        Assert.Equal(Grid[(name, "spread")], spread, 0.003);
        Assert.Equal(Grid[(name, "low")], Math.Log(timed.Mean.Low / file.Mean), 0.006);
        Assert.Equal(Grid[(name, "high")], Math.Log(timed.Mean.High / file.Mean), 0.006);
    }

    /// <summary>Three times whose logarithm spreads by 0.2 under the plan's law.</summary>
    private static StepMinutes WithSpread()
    {
        (double low, double high) = (10.1, 40);
        while (high - low > 1e-11)
        {
            double middle = (low + high) / 2;
            (low, high) = new TimePrior(new StepMinutes(7, 10, middle)).Spread < Spread ? (middle, high) : (low, middle);
        }

        return new StepMinutes(7, 10, low);
    }
}
