using Calx.Measurement.Distributions;

namespace Calx.Chemistry.Amounts;

/// <summary>
/// How probable measured amounts n ~ N(true, Σ) are under a composition, the true total mass μ being anything above 0
/// with equal weight: L(w) = ∫₀^∞ N(n; μ w, Σ) dμ, where w is moles of each part per gram of compound.
/// </summary>
/// <remarks>
/// For whole numbers c the integral is closed. With the differences yᵢ = nᵢ − (cᵢ/c₀) n₀, which do not depend on μ,
/// L = N(y; 0, Cov y)/w₀ · Φ(n₀ given y, over its standard deviation). It does not change when c is multiplied, nor
/// with the choice of the part 0, and works where Σ itself is singular, as when one mass is known exactly.
/// </remarks>
internal sealed class CompositionLikelihood(MeasuredAmounts measured)
{
    private const double LogTwoPi = 1.83787706640934548356;

    // A composition this hopeless has no probability beside any other; a logarithm of 0 would spoil the comparison.
    private const double LeastProbability = 1e-300;

    private readonly int others = measured.Estimates.Length - 1;

    /// <summary>Logarithm of the likelihood and the squared distance of the data from the composition.</summary>
    /// <param name="LogLikelihood">ln L, L per mol^k times g.</param>
    /// <param name="ChiSquared">yᵀ (Cov y)⁻¹ y: about the number of parts less one where the composition is true.</param>
    public readonly record struct Fit(double LogLikelihood, double ChiSquared);

    /// <summary>The fit of whole numbers, the first above 0; null where the data leave no spread.</summary>
    public Fit? Of(IReadOnlyList<int> numbers)
    {
        double[] ratios = [.. numbers.Select(number => number / (double)numbers[0])];
        if (Cholesky.Factor(CovarianceOfDifferences(ratios)) is not { } factor)
        {
            return null;
        }

        double[] differences = new double[others];
        double[] withFirst = new double[others];
        for (int i = 0; i < others; i++)
        {
            differences[i] = measured.Estimates[i + 1] - (ratios[i + 1] * measured.Estimates[0]);
            withFirst[i] = measured.Covariance[0, i + 1] - (ratios[i + 1] * measured.Covariance[0, 0]);
        }

        Cholesky.SolveLower(factor, differences);
        Cholesky.SolveLower(factor, withFirst);
        double chiSquared = Dot(differences, differences);
        double logDensity = -((chiSquared + (others * LogTwoPi)) / 2) - LogDeterminant(factor);
        double gramsPerFirstMole = ratios.Zip(measured.MolarMasses, (ratio, mass) => ratio * mass).Sum();
        double first = measured.Estimates[0] - Dot(withFirst, differences);
        double variance = measured.Covariance[0, 0] - Dot(withFirst, withFirst);
        return new Fit(logDensity + Math.Log(gramsPerFirstMole) + LogPositive(first, variance), chiSquared);
    }

    /// <summary>
    /// ln L where the compound may have any composition, its mass fractions uniform on all that add up to 1: over the
    /// true amounts x that is (k − 1)! ΠM/(total mass)^(k−1), averaged over N(n, Σ) where all are above 0.
    /// </summary>
    public double LogLikelihoodOfAnyComposition()
    {
        double[] masses = measured.MolarMasses;
        double mean = new NormalLattice(measured.Estimates, measured.Covariance).Mean(amounts =>
            Array.Exists(amounts, amount => amount <= 0) ? 0 : Math.Pow(Dot(amounts, masses), -others));
        double logConstant = masses.Sum(Math.Log) + Enumerable.Range(1, others).Sum(i => Math.Log(i));
        return Math.Log(mean) + logConstant;
    }

    private static double Dot(double[] left, double[] right) => left.Zip(right, (a, b) => a * b).Sum();

    private static double LogDeterminant(double[,] factor) =>
        Enumerable.Range(0, factor.GetLength(0)).Sum(i => Math.Log(factor[i, i]));

    private static double LogPositive(double mean, double variance) => variance > 0
        ? Math.Log(Math.Max(LeastProbability, StandardNormal.Cumulative(mean / Math.Sqrt(variance))))
        : mean > 0 ? 0 : Math.Log(LeastProbability);

    private double[,] CovarianceOfDifferences(double[] ratios)
    {
        double[,] s = measured.Covariance;
        double[,] covariance = new double[others, others];
        for (int i = 1; i <= others; i++)
        {
            for (int j = 1; j <= others; j++)
            {
                covariance[i - 1, j - 1] = s[i, j] - (ratios[i] * s[0, j]) - (ratios[j] * s[0, i])
                    + (ratios[i] * ratios[j] * s[0, 0]);
            }
        }

        return covariance;
    }
}
