using Calx.Measurement.Distributions;
using Calx.Practicals.Learning;

namespace Calx.Engine.Tests.Practicals.Learning;

/// <summary>The parts that have a closed form.</summary>
public sealed class ConjugateTests
{
    [Fact]
    public void Logarithms_of_the_gamma_function_are_those_of_factorials_and_of_one_half()
    {
        // Γ(n + 1) = n!; Γ(1/2) = √π: DLMF 5.4.1 and 5.4.6.
        double log = 0;
        for (int n = 1; n <= 60; n++)
        {
            log += Math.Log(n);
            Assert.Equal(log, RisingFactorial.LogGamma(n + 1), 1e-12 * Math.Max(1, log));
        }

        Assert.Equal(0.5 * Math.Log(Math.PI), RisingFactorial.LogGamma(0.5), 1e-13);
        Assert.Equal(Math.Log(5 * 6 * 7), RisingFactorial.Log(5, Math.Log(5), 3), 1e-12);
    }

    [Fact]
    public void Four_rats_of_fourteen_have_the_published_posterior()
    {
        // A. Gelman et al., Bayesian Data Analysis, section 5.1: prior Beta(1.4, 8.6), 4 of 14 rats with a tumour, posterior
        // Beta(5.4, 18.6) with mean 0.223 and standard deviation 0.083 (from memory; 5.4/24 is 0.225).
        // An ordinary class of such a school: the ratio of likelihoods of one more rat is that posterior's mean.
        RateNode at = RateNode.AtLogOdds(Math.Log(0.14 / 0.86));
        double four = new ClassLikelihood(Drawn.Count(1, 14, 4), 10).LogOrdinary(at);
        double more = new ClassLikelihood(Drawn.Count(1, 15, 5), 10).LogOrdinary(at);
        double twoMore = new ClassLikelihood(Drawn.Count(1, 16, 6), 10).LogOrdinary(at);
        double mean = Math.Exp(more - four);
        Assert.Equal(5.4 / 24, mean, 1e-12);
        Assert.Equal(0.223, mean, 0.003);
        Assert.Equal(0.083, Math.Sqrt(Math.Exp(twoMore - four) - (mean * mean)), 0.001);
    }

    [Fact]
    public void A_class_that_is_an_even_mixture_has_even_counts()
    {
        // Bayes, 1763: with any rate from 0 to 1 as likely, every count is as likely as any other, 1/(n + 1).
        RateNode half = RateNode.AtLogOdds(0);
        for (int k = 0; k <= 12; k++)
        {
            double orders = RisingFactorial.LogGamma(13) - RisingFactorial.LogGamma(k + 1) - RisingFactorial.LogGamma(13 - k);
            var likelihood = new ClassLikelihood(Drawn.Count(1, 12, k), 2);
            Assert.Equal(0.95 / 13, Math.Exp(likelihood.LogOrdinary(half) + orders), 1e-13);
            Assert.Equal(0.05 / 13, Math.Exp(likelihood.LogOdd + orders), 1e-13);
            Assert.Equal(1.0 / 13, Math.Exp(likelihood.Log(half) + orders), 1e-13);
        }
    }

    [Fact]
    public void Without_lessons_a_school_has_the_beta_law_of_the_file()
    {
        Rated rated = RateRule.Of(0.2, [], Drawn.NewClass, 12);
        Assert.Equal(0.2, rated.Rate);
        Assert.Equal(BetaFunction.Quantile(4, 16, 0.05), rated.Interval.Low, 1e-12);
        Assert.Equal(BetaFunction.Quantile(4, 16, 0.95), rated.Interval.High, 1e-12);
    }

    [Fact]
    public void Quadrature_keeps_the_file_s_mean_where_only_other_schools_were_seen()
    {
        foreach (double rate in new[] { 0.01, 0.04, 0.2, 0.5 })
        {
            Rated rated = RateRule.Of(rate, [Drawn.Count(1, 12, 4, "Elsewhere"), Drawn.Count(2, 12, 6, "Elsewhere")], Drawn.NewClass, 12);
            Assert.Equal(rate, rated.Rate, 1e-6);
            Assert.Equal(0, rated.Tried);
        }
    }
}
