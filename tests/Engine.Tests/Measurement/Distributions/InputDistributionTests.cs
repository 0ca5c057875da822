using System.Globalization;
using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Measurement.Distributions;

namespace Calx.Engine.Tests.Measurement.Distributions;

/// <summary>Input distributions against moments and quantiles from scipy, or by quadrature for the curvilinear trapezoid
/// (computed/input_distributions.csv; script beside it).</summary>
public sealed class InputDistributionTests
{
    private const int Bins = 20;
    private const int Draws = 40_000;

    public static TheoryData<string> Laws => [.. Lines()];

    [Theory]
    [MemberData(nameof(Laws))]
    public void Mean_and_standard_deviation_agree_with_an_independent_library(string line)
    {
        (InputDistribution law, double[] numbers) = Read(line);
        Agree.Within(1e-12 * Math.Max(1, Math.Abs(numbers[0])), numbers[0], law.Mean);
        Agree.Relative(1e-9, numbers[1], law.StandardDeviation);
    }

    // Twenty bins of equal probability: chi-squared with 19 degrees of freedom, bound 1e-4 on either side.
    [Theory]
    [MemberData(nameof(Laws))]
    public void Draws_fall_evenly_between_the_quantiles(string line)
    {
        (InputDistribution law, double[] numbers) = Read(line);
        double[] draws = new double[Draws];
        law.Fill(new RandomStream(11, 0), draws);
        int[] counts = new int[Bins];
        foreach (double draw in draws)
        {
            counts[numbers[2..].Count(quantile => draw > quantile)]++;
        }

        const double expected = (double)Draws / Bins;
        double statistic = counts.Sum(count => (count - expected) * (count - expected) / expected);
        Assert.InRange(ChiSquared.UpperTail(statistic, Bins - 1), 1e-4, 1 - 1e-4);
    }

    [Theory]
    [MemberData(nameof(Laws))]
    public void A_block_holds_what_single_draws_would_give(string line)
    {
        InputDistribution law = Read(line).Law;
        double[] block = new double[103];
        law.Fill(new RandomStream(12, 3), block);
        var stream = new RandomStream(12, 3);
        Assert.Equal(block.Select(_ => law.Draw(stream)), block);
    }

    [Fact]
    public void The_law_of_propagation_takes_the_scale_of_a_t_with_its_degrees_of_freedom()
    {
        var law = new StudentTInput(50_000_623, 25, 18);
        Assert.Equal(25, law.StandardUncertainty);
        Assert.Equal(18, law.DegreesOfFreedom);
        Agree.Relative(1e-12, 25 * Math.Sqrt(18.0 / 16), law.StandardDeviation);
        Assert.Equal(double.PositiveInfinity, new StudentTInput(0, 1, 2).StandardDeviation);
        Assert.Equal(double.PositiveInfinity, new NormalInput(0, 1).DegreesOfFreedom);
    }

    [Fact]
    public void A_t_with_endless_degrees_of_freedom_draws_normal_values()
    {
        double[] draws = new double[100_000];
        new StudentTInput(0, 1, double.PositiveInfinity).Fill(new RandomStream(13, 0), draws);
        Agree.Within(4.5 * Math.Sqrt(96.0 / draws.Length), 3, draws.Average(draw => Math.Pow(draw, 4)));
    }

    [Fact]
    public void Parameters_that_make_no_law_are_refused_in_plain_words()
    {
        (Func<InputDistribution> Make, string Sentence)[] cases =
        [
            (() => new NormalInput(1, -1), "The standard deviation must be a finite number of 0 or more; it is -1."),
            (() => new NormalInput(double.NaN, 1), "The mean must be a finite number of at most 1e150; it is NaN."),
            (() => new RectangularInput(2, 2), "The lower limit must be below the upper limit; they are 2 and 2."),
            (() => new TriangularInput(0, 3, 2), "The most likely value must lie between the limits 0 and 2; it is 3."),
            (() => new TrapezoidalInput(0, 2, 1, 3),
                "The four corners of a trapezoidal distribution must be in rising order; they are 0, 2, 1 and 3."),
            (() => new ArcsineInput(1, 0), "The lower limit must be below the upper limit; they are 1 and 0."),
            (() => new StudentTInput(0, 0, 3), "The scale must be a finite number above 0; it is 0."),
            (() => new StudentTInput(0, 1, 0.5), "The degrees of freedom must be 1 or more; they are 0.5."),
            (() => new BetaInput(0, 1), "The first shape must be a finite number above 0; it is 0."),
            (() => new ExponentialInput(0), "The mean must be a finite number above 0; it is 0."),
            (() => new GammaInput(1, double.PositiveInfinity), "The scale must be a finite number above 0; it is Infinity."),
            (() => new CurvilinearTrapezoidInput(0, 1, 0.5),
                "How far a limit may be off must be above 0 and below half the distance of the limits, 0.5; it is 0.5."),
        ];
        foreach ((Func<InputDistribution> make, string sentence) in cases)
        {
            Assert.Equal(sentence, Assert.Throws<ArgumentException>(make).Message);
        }
    }

    private static IEnumerable<string> Lines() => File
        .ReadLines(Path.Combine(AppContext.BaseDirectory, "reference", "computed", "input_distributions.csv"))
        .Skip(2);

    private static (InputDistribution Law, double[] Numbers) Read(string line)
    {
        string[] cells = line.Split(',');
        double[] p = [.. cells[1..5].Select(cell => cell.Length == 0 ? double.NaN : Number(cell))];
        InputDistribution law = cells[0] switch
        {
            "normal" => new NormalInput(p[0], p[1]),
            "rectangular" => new RectangularInput(p[0], p[1]),
            "triangular" => new TriangularInput(p[0], p[1], p[2]),
            "trapezoidal" => new TrapezoidalInput(p[0], p[1], p[2], p[3]),
            "arcsine" => new ArcsineInput(p[0], p[1]),
            "t" => new StudentTInput(p[0], p[1], p[2]),
            "beta" => new BetaInput(p[0], p[1], p[2], p[3]),
            "exponential" => new ExponentialInput(p[0]),
            "gamma" => new GammaInput(p[0], p[1]),
            "curvilinear" => new CurvilinearTrapezoidInput(p[0], p[1], p[2]),
            _ => throw new InvalidOperationException($"No law is called {cells[0]}."),
        };
        return (law, [.. cells[5..].Select(Number)]);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
