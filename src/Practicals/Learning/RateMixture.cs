using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Practicals.Learning;

/// <summary>The law of the next class's own rate: beta laws, each with its weight.</summary>
internal sealed class RateMixture
{
    /// <summary>A part of less weight is left out.</summary>
    private const double Least = 1e-9;

    private readonly List<(double Weight, double Hits, double Misses)> parts = [];

    private RateMixture(double[] ofSchool) => OfSchool = ofSchool;

    /// <summary>Mass at each value of the school's rate.</summary>
    public double[] OfSchool { get; }

    /// <summary>Mean of the next class's rate.</summary>
    public double Mean { get; private set; }

    public static RateMixture Of(RateNodes nodes, double[] kappas, double[][] logs, ClassCount? same)
    {
        double highest = logs.Max(l => l.Max());
        double total = logs.Sum(l => l.Sum(x => Math.Exp(x - highest)));
        var mixture = new RateMixture(new double[nodes.All.Length]);
        for (int j = 0; j < kappas.Length; j++)
        {
            for (int i = 0; i < nodes.All.Length; i++)
            {
                double weight = Math.Exp(logs[j][i] - highest) / total;
                mixture.OfSchool[i] += weight;
                mixture.Take(weight, kappas[j], nodes.All[i], same);
            }
        }

        return mixture;
    }

    /// <summary>The interval of the beta law with the same mean and variance.</summary>
    public CoverageInterval Interval(double coverage)
    {
        double whole = parts.Sum(p => p.Weight);
        double mean = parts.Sum(p => p.Weight * p.Hits / (p.Hits + p.Misses)) / whole;
        double square = parts.Sum(p => p.Weight * p.Hits * (p.Hits + 1) / ((p.Hits + p.Misses) * (p.Hits + p.Misses + 1))) / whole;
        double size = (mean * (1 - mean) / (square - (mean * mean))) - 1;
        return new CoverageInterval(
            BetaFunction.Quantile(size * mean, size * (1 - mean), (1 - coverage) / 2),
            BetaFunction.Quantile(size * mean, size * (1 - mean), (1 + coverage) / 2),
            coverage);
    }

    /// <summary>Probabilities of 0 to <paramref name="tries"/> cases in the next lesson.</summary>
    public double[] Counts(int tries)
    {
        double[] counts = new double[tries + 1];
        foreach ((double weight, double hits, double misses) in parts)
        {
            double log = 0;
            for (int i = 0; i < tries; i++)
            {
                log += Math.Log((misses + i) / (hits + misses + i));
            }

            double p = weight * Math.Exp(log);
            counts[0] += p;
            for (int k = 0; k < tries; k++)
            {
                p *= (tries - k) / (k + 1.0) * (hits + k) / (misses + tries - k - 1);
                counts[k + 1] += p;
            }
        }

        return counts;
    }

    /// <summary>The least and the most cases that are to be expected.</summary>
    public CoverageInterval Count(int tries, double coverage)
    {
        double[] counts = Counts(tries);
        double whole = counts.Sum();
        return new CoverageInterval(First(counts, whole * (1 - coverage) / 2), First(counts, whole * (1 + coverage) / 2), coverage);
    }

    private static int First(double[] counts, double p)
    {
        double below = 0;
        for (int k = 0; k < counts.Length; k++)
        {
            below += counts[k];
            if (below >= p)
            {
                return k;
            }
        }

        return counts.Length - 1;
    }

    private void Take(double weight, double kappa, in RateNode at, ClassCount? same)
    {
        if (weight == 0)
        {
            return;
        }

        if (same is not ClassCount own)
        {
            Mean += weight * at.Rate;
            Add(weight, kappa * at.Rate, kappa * at.Rest);
            return;
        }

        var likelihood = new ClassLikelihood(own, kappa);
        double share = Math.Exp(likelihood.LogOdd - likelihood.Log(at));
        double misses = own.Tried - own.Happened;
        Mean += weight * (((1 - share) * ((kappa * at.Rate) + own.Happened) / (kappa + own.Tried)) + (share * (1 + own.Happened) / (2 + own.Tried)));
        Add(weight * (1 - share), (kappa * at.Rate) + own.Happened, (kappa * at.Rest) + misses);
        Add(weight * share, 1 + own.Happened, 1 + misses);
    }

    private void Add(double weight, double hits, double misses)
    {
        if (weight > Least && misses > 0)
        {
            parts.Add((weight, hits, misses));
        }
    }
}
