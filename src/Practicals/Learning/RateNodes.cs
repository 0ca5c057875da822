using Calx.Measurement.Uncertainty;

namespace Calx.Practicals.Learning;

/// <summary>Values of a school's rate at which its posterior is weighed: log odds t = t₀ + c·sinh u, close together where the
/// posterior is narrow and far enough out for a prior that almost excludes the thing.</summary>
internal sealed class RateNodes
{
    private const double Step = 0.12;

    private readonly ClassCount[] counts;
    private readonly double prior;
    private readonly double[] logMeasures;
    private readonly double[] odds;

    public RateNodes(double prior, ClassCount[] counts)
    {
        this.counts = counts;
        this.prior = prior;
        double tried = RateRule.FileGroups + counts.Sum(c => c.Tried);
        double middle = ((RateRule.FileGroups * prior) + counts.Sum(c => c.Happened)) / tried;
        double centre = Math.Log(middle / (1 - middle));
        double scale = Math.Clamp(1 / Math.Sqrt(tried * middle * (1 - middle)), 0.02, 1);
        // Beyond this the prior's mass is under 1e-15.
        double reach = 20 + (40 / (RateRule.FileGroups * Math.Min(prior, 1 - prior)));
        int half = (int)Math.Ceiling(Math.Asinh(reach / scale) / Step);
        odds = new double[(2 * half) + 1];
        All = new RateNode[odds.Length];
        logMeasures = new double[odds.Length];
        for (int i = 0; i < odds.Length; i++)
        {
            double u = (i - half) * Step;
            odds[i] = centre + (scale * Math.Sinh(u));
            All[i] = RateNode.AtLogOdds(odds[i]);
            logMeasures[i] = Math.Log(Math.Cosh(u))
                + (RateRule.FileGroups * ((prior * All[i].LogRate) + ((1 - prior) * All[i].LogRest)));
        }
    }

    public RateNode[] All { get; }

    /// <summary>ln of each node's weight at one spread, up to a constant.</summary>
    public double[] LogWeights(double kappa, double add)
    {
        ClassLikelihood[] classes = [.. counts.Select(c => new ClassLikelihood(c, kappa))];
        double[] logs = new double[All.Length];
        for (int i = 0; i < logs.Length; i++)
        {
            logs[i] = logMeasures[i] + add;
            foreach (ClassLikelihood one in classes)
            {
                logs[i] += one.Log(All[i]);
            }
        }

        return logs;
    }

    /// <summary>ln of how well a spread explains the counts, up to a constant.</summary>
    public double LogEvidence(double kappa)
    {
        double[] logs = LogWeights(kappa, 0);
        double highest = logs.Max();
        return highest + Math.Log(logs.Sum(l => Math.Exp(l - highest)));
    }

    /// <summary>Where the middle of the nodes' mass lies.</summary>
    public CoverageInterval Interval(double[] mass, double coverage) => counts.Length == 0
        ? new CoverageInterval(Prior((1 - coverage) / 2), Prior((1 + coverage) / 2), coverage)
        : new CoverageInterval(Quantile(mass, (1 - coverage) / 2), Quantile(mass, (1 + coverage) / 2), coverage);

    private double Prior(double p) =>
        Measurement.Distributions.BetaFunction.Quantile(RateRule.FileGroups * prior, RateRule.FileGroups * (1 - prior), p);

    private double Quantile(double[] mass, double p)
    {
        double below = 0;
        double last = 0;
        for (int i = 0; i < mass.Length; i++)
        {
            // Half of a node's mass lies on either side of it.
            double here = below + (mass[i] / 2);
            if (here >= p)
            {
                double part = i == 0 || here == last ? 1 : (p - last) / (here - last);
                double at = i == 0 ? odds[0] : odds[i - 1] + (part * (odds[i] - odds[i - 1]));
                return RateNode.AtLogOdds(at).Rate;
            }

            (below, last) = (below + mass[i], here);
        }

        return All[^1].Rate;
    }
}
