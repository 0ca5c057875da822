using System.Globalization;
using Calx.Engine.Tests.Measurement.Statistics;
using Calx.Measurement.Distributions;

namespace Calx.Engine.Tests.Measurement.Distributions;

/// <summary>The generator against its published values and against the laws it must follow. Seeds are fixed; a bound of
/// 4.5 standard errors would be passed by chance once in 150 000.</summary>
public sealed class RandomStreamTests
{
    private const double Errors = 4.5;

    [Fact]
    public void The_generator_gives_the_published_integers()
    {
        // xoshiro256** from the state 1, 2, 3, 4: values in the tests of many libraries, quoted from memory and
        // reproduced by scripts/random_stream.py.
        RandomStream stream = RandomStream.FromState([1, 2, 3, 4]);
        ulong[] published =
        [
            11520, 0, 1509978240, 1215971899390074240, 1216172134540287360,
            607988272756665600, 16172922978634559625, 8476171486693032832, 10595114339597558777, 2904607092377533576,
        ];
        Assert.Equal(published, published.Select(_ => stream.NextUInt64()));
    }

    [Fact]
    public void Seeds_and_streams_start_where_an_independent_program_starts_them()
    {
        string path = Path.Combine(AppContext.BaseDirectory, "reference", "computed", "random_stream.csv");
        foreach (string line in File.ReadLines(path).Skip(2))
        {
            ulong[] numbers = [.. line.Split(',').Select(cell => ulong.Parse(cell, CultureInfo.InvariantCulture))];
            var stream = new RandomStream(numbers[0], numbers[1]);
            Assert.Equal(numbers[2..], Enumerable.Range(0, 4).Select(_ => stream.NextUInt64()));
        }
    }

    [Fact]
    public void A_block_holds_what_single_draws_would_give()
    {
        var blocks = new RandomStream(5, 6);
        var single = new RandomStream(5, 6);
        double[] numbers = new double[1001];
        blocks.Fill(numbers);
        Assert.Equal(numbers.Select(_ => single.NextDouble()), numbers);
        blocks.FillNormal(numbers);
        Assert.Equal(numbers.Select(_ => single.NextNormal()), numbers);
    }

    [Fact]
    public void Numbers_fill_200_equal_bins_evenly()
    {
        double[] numbers = new double[200_000];
        new RandomStream(1, 0).Fill(numbers);
        Assert.All(numbers, number => Assert.InRange(number, double.Epsilon, 1 - 1e-16));
        AssertEven(numbers.Select(number => (int)(number * 200)), numbers.Length, 200);
    }

    [Fact]
    public void Normal_draws_fill_bins_of_equal_probability_evenly()
    {
        double[] draws = new double[400_000];
        new RandomStream(2, 0).FillNormal(draws);
        AssertEven(draws.Select(draw => (int)(StandardNormal.Cumulative(draw) * 500)), draws.Length, 500);
    }

    [Fact]
    public void Normal_draws_have_the_moments_of_the_law()
    {
        double[] draws = new double[1_000_000];
        new RandomStream(3, 0).FillNormal(draws);
        double root = Math.Sqrt(draws.Length);
        // Moments 0, 1, 0, 3 and 15, with variances 1, 2, 15, 96 and 10170 (the moments of order 2k less the squares).
        (int Power, double Mean, double Variance)[] law = [(1, 0, 1), (2, 1, 2), (3, 0, 15), (4, 3, 96), (6, 15, 10170)];
        foreach ((int power, double mean, double variance) in law)
        {
            Agree.Within(Errors * Math.Sqrt(variance) / root, mean, draws.Average(draw => Math.Pow(draw, power)));
        }
    }

    [Fact]
    public void Normal_draws_beyond_the_last_layer_follow_the_tail()
    {
        double[] draws = new double[4_000_000];
        new RandomStream(4, 0).FillNormal(draws);
        foreach (double limit in (double[])[3, 3.6541528853610088, 4, 4.5])
        {
            double expected = draws.Length * 2 * StandardNormal.UpperTail(limit);
            Agree.Within(Errors * Math.Sqrt(expected), expected, draws.Count(draw => Math.Abs(draw) > limit));
        }
    }

    [Fact]
    public void Streams_of_one_seed_are_not_correlated()
    {
        const int length = 100_000;
        double[] first = new double[length];
        new RandomStream(7, 0).FillNormal(first);
        for (ulong stream = 1; stream <= 5; stream++)
        {
            double[] other = new double[length];
            new RandomStream(7, stream).FillNormal(other);
            Agree.Within(Errors / Math.Sqrt(length), 0, first.Zip(other, (a, b) => a * b).Average());
        }
    }

    [Fact]
    public void Whole_numbers_are_equally_likely_also_for_ranges_that_divide_no_power_of_two()
    {
        var stream = new RandomStream(8, 0);
        AssertEven(Enumerable.Range(0, 70_000).Select(_ => stream.NextInt(7)), 70_000, 7);
        Assert.Equal(0, stream.NextInt(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => stream.NextInt(0));
    }

    [Fact]
    public void Every_order_of_four_things_is_equally_likely()
    {
        var stream = new RandomStream(9, 0);
        int[] orders = new int[48_000];
        for (int i = 0; i < orders.Length; i++)
        {
            int[] things = [0, 1, 2, 3];
            stream.Shuffle<int>(things);
            int rest = things[1] - (things[1] > things[0] ? 1 : 0);
            orders[i] = (things[0] * 6) + (rest * 2) + (things[2] < things[3] ? 0 : 1);
        }

        AssertEven(orders, orders.Length, 24);
    }

    // Chi-squared of equally likely bins: mean k − 1, variance 2 (k − 1).
    private static void AssertEven(IEnumerable<int> bins, int count, int binCount)
    {
        int[] counts = new int[binCount];
        foreach (int bin in bins)
        {
            counts[bin]++;
        }

        double expected = (double)count / binCount;
        double statistic = counts.Sum(found => (found - expected) * (found - expected) / expected);
        Assert.InRange(ChiSquared.UpperTail(statistic, binCount - 1), 1e-4, 1 - 1e-4);
    }
}
