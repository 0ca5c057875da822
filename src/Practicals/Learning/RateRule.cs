using Calx.Measurement.Distributions;
using Calx.Measurement.Uncertainty;

namespace Calx.Practicals.Learning;

/// <summary>
/// How often something happens, from counts: file, school, class (docs/methods/learning.md). A school's rate has a beta law about the
/// file's; a class's has one about its school's. Classes are integrated in closed form, the school's rate and the spread between
/// classes by quadrature without random numbers.
/// </summary>
internal static class RateRule
{
    /// <summary>The file's rate counts as if it had been seen in so many groups: judgement.</summary>
    public const double FileGroups = 20;

    /// <summary>Share of classes that are like no other: a fire drill, a stand-in, records of another practical. Judgement.</summary>
    public const double OddShare = 0.05;

    /// <summary>The intraclass correlation of a fault has the law of Beta(1, 9): a tenth on average. Judgement.</summary>
    public const double SpreadShape = 9;

    public const double Coverage = 0.9;

    /// <summary>A rate of 0 or 1 in a file is taken as never seen so far, not as impossible.</summary>
    private const double LeastRate = 0.001;

    private const int Spreads = 24;

    /// <summary>The law of a rate.</summary>
    /// <param name="fileRate">The file's value, 0 to 1.</param>
    /// <param name="counts">Of all schools and classes.</param>
    /// <param name="next">For whom.</param>
    /// <param name="tries">How often it can happen in the next lesson.</param>
    public static Rated Of(double fileRate, IReadOnlyList<ClassCount> counts, NextLesson next, int tries)
    {
        double prior = Math.Clamp(fileRate, LeastRate, 1 - LeastRate);
        ClassCount[] own = [.. counts.Where(c => c.School == next.School)];
        ClassCount? same = own.Where(c => c.ClassName == next.ClassName).Select(c => (ClassCount?)c).FirstOrDefault();
        RateNodes nodes = new(prior, own);
        double[] kappas = [.. Enumerable.Range(0, Spreads).Select(Concentration)];
        double[] others = new double[Spreads];
        foreach (var school in counts.Where(c => c.School != next.School).GroupBy(c => c.School))
        {
            RateNodes theirs = new(prior, [.. school]);
            for (int j = 0; j < Spreads; j++)
            {
                others[j] += theirs.LogEvidence(kappas[j]);
            }
        }

        double[][] logs = [.. kappas.Select((k, j) => nodes.LogWeights(k, others[j]))];
        RateMixture mixture = RateMixture.Of(nodes, kappas, logs, same);
        double rate = counts.Count == 0 ? fileRate : mixture.Mean;
        int tried = own.Sum(c => c.Tried);
        return new Rated(rate, same is null ? nodes.Interval(mixture.OfSchool, Coverage) : mixture.Interval(Coverage), mixture.Count(tries, Coverage), tried, same is not null);
    }

    /// <summary>The pseudo-count of a class's beta law, at the middle of one of equally probable parts of its spread.</summary>
    private static double Concentration(int part)
    {
        double correlation = 1 - Math.Pow(1 - ((part + 0.5) / Spreads), 1 / SpreadShape);
        return (1 / correlation) - 1;
    }
}
