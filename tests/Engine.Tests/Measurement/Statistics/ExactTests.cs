using System.Globalization;
using Calx.Measurement.Statistics;
using Calx.Tests;
using CsCheck;

namespace Calx.Engine.Tests.Measurement.Statistics;

public class ExactTests
{
    private const ulong Seed = 1937;

    /// <summary>binom.test in R: tests/reference/scripts/exact.R.</summary>
    [Fact]
    public void Sign_test_is_the_binomial_test()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("computed/sign_test.csv").Rows)
        {
            double[] differences =
            [
                .. Enumerable.Repeat(0.02, (int)row.Number("rises")),
                .. Enumerable.Repeat(-0.01, (int)row.Number("falls")),
                0,
            ];
            SignTest test = Assert.IsType<SignTestResult.Tested>(SignTest.Of(differences)).Test;
            Assert.Equal(1, test.Ties);
            Agree.Relative(1e-9, row.Number("upper"), test.ProbabilityOfSoManyRises);
            Agree.Relative(1e-9, row.Number("lower"), test.ProbabilityOfSoManyFalls);
            Agree.Relative(1e-9, row.Number("two_sided"), test.TwoSidedProbability);
        }
    }

    [Fact]
    public void Twelve_rises_of_twelve_happen_by_chance_once_in_4096() =>
        Assert.Equal(
            1 / 4096.0,
            Assert.IsType<SignTestResult.Tested>(SignTest.Of([.. Enumerable.Repeat(0.1, 12)])).Test.ProbabilityOfSoManyRises,
            15);

    [Fact]
    public void Turning_all_signs_exchanges_rises_and_falls() => Gen.Double[-1, 1].Array[1, 40].Always(differences =>
    {
        if (SignTest.Of(differences) is SignTestResult.Tested { Test: var test })
        {
            var turned = Assert.IsType<SignTestResult.Tested>(SignTest.Of(Array.ConvertAll(differences, d => -d)));
            Assert.Equal(test.ProbabilityOfSoManyRises, turned.Test.ProbabilityOfSoManyFalls);
            Assert.Equal(test.TwoSidedProbability, turned.Test.TwoSidedProbability);
        }
    }, iter: 200);

    /// <summary>All sign patterns listed in R: tests/reference/scripts/exact.R.</summary>
    [Fact]
    public void Both_ways_to_count_sign_patterns_meet_the_full_list()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("computed/sign_flip.csv").Rows)
        {
            decimal[] written = Decimals(row.Text("values"));
            double[] computed = Array.ConvertAll(written, value => (double)value / 3);
            foreach (PermutationTails tails in new[] { Counted(SignFlipTest.Of(written, Seed)), Counted(SignFlipTest.Of(computed, Seed)) })
            {
                Agree.Within(1e-12, row.Number("upper"), tails.Upper);
                Agree.Within(1e-12, row.Number("lower"), tails.Lower);
                Agree.Within(1e-12, row.Number("two_sided"), tails.TwoSided);
            }
        }
    }

    [Fact]
    public void Forty_computed_differences_are_counted_and_agree_with_counting_whole_numbers()
    {
        decimal[] written = [.. Enumerable.Range(0, 40).Select(i => ((i * 37 % 23) - 9) / 100m)];
        PermutationTails whole = Counted(SignFlipTest.Of(written, Seed));
        PermutationTails halves = Counted(SignFlipTest.Of(Array.ConvertAll(written, value => (double)value), Seed));
        Agree.Relative(1e-9, whole.Upper, halves.Upper);
        Agree.Relative(1e-9, whole.TwoSided, halves.TwoSided);
    }

    [Fact]
    public void A_thousand_readings_are_counted_exactly()
    {
        // The sum of n signs of equal size is binomial, so the sign test is its closed form.
        decimal[] differences = [.. Enumerable.Repeat(0.01m, 530), .. Enumerable.Repeat(-0.01m, 470)];
        double expected = Assert.IsType<SignTestResult.Tested>(
            SignTest.Of(Array.ConvertAll(differences, value => (double)value))).Test.ProbabilityOfSoManyRises;
        Agree.Relative(1e-9, expected, Counted(SignFlipTest.Of(differences, Seed)).Upper);
    }

    [Fact]
    public void Sampled_sign_patterns_agree_with_counted_ones_within_chance()
    {
        decimal[] written = [.. Enumerable.Range(0, 60).Select(i => ((i * 37 % 41) - 16) / 100m)];
        PermutationTails exact = Counted(SignFlipTest.Of(written, Seed));
        var sampled = Assert.IsType<PermutationResult.Sampled>(
            SignFlipTest.Of(Array.ConvertAll(written, value => (double)value), Seed, 20_000));
        // Four standard errors of a chance p at 20,000 draws.
        Agree.Within(4 * Math.Sqrt(exact.Upper * (1 - exact.Upper) / 20_000), exact.Upper, sampled.Tails.Upper);
    }

    /// <summary>All divisions listed by combn in R: tests/reference/scripts/exact.R.</summary>
    [Fact]
    public void Both_ways_to_count_divisions_meet_the_full_list()
    {
        foreach (ReferenceRow row in ReferenceTable.Read("computed/two_sample.csv").Rows)
        {
            decimal[] first = Decimals(row.Text("first"));
            decimal[] second = Decimals(row.Text("second"));
            PermutationTails written = Counted(TwoSampleTest.Of(first, second, Seed));
            PermutationTails computed = Counted(TwoSampleTest.Of(
                Array.ConvertAll(first, value => (double)value / 3), Array.ConvertAll(second, value => (double)value / 3), Seed));
            foreach (PermutationTails tails in new[] { written, computed })
            {
                Agree.Within(1e-12, row.Number("upper"), tails.Upper);
                Agree.Within(1e-12, row.Number("lower"), tails.Lower);
                Agree.Within(1e-12, row.Number("two_sided"), tails.TwoSided);
            }
        }
    }

    [Fact]
    public void Sampled_divisions_agree_with_counted_ones_within_chance()
    {
        decimal[] first = [.. Enumerable.Range(0, 20).Select(i => (166 + (i * 7 % 11)) / 100m)];
        decimal[] second = [.. Enumerable.Range(0, 25).Select(i => (165 + (i * 5 % 11)) / 100m)];
        PermutationTails exact = Counted(TwoSampleTest.Of(first, second, Seed));
        var sampled = Assert.IsType<PermutationResult.Sampled>(TwoSampleTest.Of(
            Array.ConvertAll(first, value => (double)value), Array.ConvertAll(second, value => (double)value), Seed, 20_000));
        Agree.Within(4 * Math.Sqrt(exact.TwoSided * (1 - exact.TwoSided) / 20_000), exact.TwoSided, sampled.Tails.TwoSided);
    }

    [Fact]
    public void Lists_without_differences_allow_no_test()
    {
        Assert.IsType<SignTestResult.NotTested>(SignTest.Of([0, 0]));
        Assert.IsType<PermutationResult.NotTested>(SignFlipTest.Of([0.00m, 0m], Seed));
        Assert.IsType<PermutationResult.NotTested>(SignFlipTest.Of([0.0, 0.0], Seed));
        Assert.IsType<PermutationResult.NotTested>(TwoSampleTest.Of([2m, 2m], [2.0m], Seed));
        Assert.IsType<PermutationResult.NotTested>(TwoSampleTest.Of([2.0, 2.0], [2.0], Seed));
        Assert.Throws<ArgumentException>(() => SignFlipTest.Of(Array.Empty<decimal>(), Seed));
        Assert.Throws<ArgumentException>(() => TwoSampleTest.Of([1m], [], Seed));
        Assert.Throws<ArgumentException>(() => SignTest.Of([double.NaN]));
    }

    [Fact]
    public void Numbers_too_long_for_counting_whole_are_counted_as_they_are()
    {
        decimal[] long1 = [0.1234567890123456789m, -0.0000000000000000001m, 7.9m];
        Assert.Equal(0.25, Counted(SignFlipTest.Of(long1, Seed)).Upper, 12);
        Assert.Equal(0.125, Counted(SignFlipTest.Of([79228162514264337593543950335m, 4e28m, 3e28m], Seed)).Upper, 12);
    }

    private static PermutationTails Counted(PermutationResult result) => Assert.IsType<PermutationResult.Exact>(result).Tails;

    private static decimal[] Decimals(string text) =>
        [.. text.Split(' ').Select(part => decimal.Parse(part, NumberStyles.Float, CultureInfo.InvariantCulture))];
}
