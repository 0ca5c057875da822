namespace Calx.Chemistry.Amounts;

/// <summary>Bayes' rule over whole-number compositions and 'none of these'.</summary>
internal static class WholeNumberPosterior
{
    /// <summary>One composition before the weighing.</summary>
    /// <param name="Formula">Its text.</param>
    /// <param name="Numbers">How many of each part, the first above 0.</param>
    /// <param name="LogWeight">Logarithm of its prior weight, not normalised.</param>
    public sealed record Entry(string Formula, int[] Numbers, double LogWeight);

    public static FormulaRanking Rank(MeasuredAmounts measured, IReadOnlyList<Entry> entries, double noneOfThese)
    {
        var likelihood = new CompositionLikelihood(measured);
        var fits = new CompositionLikelihood.Fit[entries.Count];
        for (int i = 0; i < fits.Length; i++)
        {
            if (likelihood.Of(entries[i].Numbers) is not { } fit)
            {
                return new FormulaRanking.Undetermined(
                    "the masses carry no uncertainty; state the balance's resolution, so that it can be said how many formulas fit");
            }

            fits[i] = fit;
        }

        double[] logPrior = Normalised(entries, noneOfThese);
        double logNone = Math.Log(noneOfThese) + likelihood.LogLikelihoodOfAnyComposition();
        double[] logJoint = [.. fits.Select((fit, i) => logPrior[i] + fit.LogLikelihood)];
        double top = Math.Max(logNone, logJoint.Max());
        double evidence = logJoint.Append(logNone).Sum(log => Math.Exp(log - top));
        double bestFit = fits.Max(fit => fit.LogLikelihood);
        // Sorted by logarithms, which still differ where the probabilities are too small to; ties stay in the order in
        // which the compositions were listed, so that the answer is always the same.
        IEnumerable<FormulaCandidate> candidates = Enumerable.Range(0, entries.Count)
            .OrderByDescending(i => logJoint[i])
            .Select(i => new FormulaCandidate(
                entries[i].Formula,
                entries[i].Numbers,
                Math.Exp(logJoint[i] - top) / evidence,
                Math.Exp(logPrior[i]),
                Math.Exp(fits[i].LogLikelihood - bestFit),
                fits[i].ChiSquared));
        return new FormulaRanking.Ranked([.. candidates], Math.Exp(logNone - top) / evidence);
    }

    private static double[] Normalised(IReadOnlyList<Entry> entries, double noneOfThese)
    {
        double top = entries.Max(entry => entry.LogWeight);
        double logTotal = top + Math.Log(entries.Sum(entry => Math.Exp(entry.LogWeight - top)));
        double logSome = Math.Log(1 - noneOfThese);
        return [.. entries.Select(entry => entry.LogWeight - logTotal + logSome)];
    }
}
