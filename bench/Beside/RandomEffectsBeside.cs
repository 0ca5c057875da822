using Calx.Bench.Benchmarks;
using Calx.Measurement.Statistics;

namespace Calx.Bench.Beside;

/// <summary>Restricted likelihood of ten groups of three beside lme4's refit, which leaves out the building of the model.</summary>
internal static class RandomEffectsBeside
{
    private const int Fits = 1000;

    public static bool Run(SideBySide side)
    {
        double[][][] sets = [.. Enumerable.Range(0, Fits).Select(i => ClassData.Groups((ulong)i, 10, 3))];
        return side.Compare("random effects, 10 groups of 3", "fits", new Peer("reml.R", "100", "refit"), Fits, () => sets.All(Agrees));
    }

    // Groups of one size have a closed form, the analysis of variance, where the spread between is above 0.
    private static bool Agrees(double[][] groups)
    {
        var likelihood = (GroupSpreadResult.Separated)RandomEffects.FromGroups(groups);
        var anova = (GroupSpreadResult.Separated)RandomEffects.FromGroupsByAnova(groups);
        return Math.Abs(likelihood.Spread.Between - anova.Spread.Between) < 1e-6;
    }
}
