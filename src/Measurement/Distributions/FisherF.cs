namespace Calx.Measurement.Distributions;

/// <summary>Fisher's F distribution: the ratio of two independent variances with the same expectation.</summary>
public static class FisherF
{
    /// <summary>Probability of a ratio at or below f.</summary>
    /// <param name="f">The ratio; below 0 the probability is 0.</param>
    /// <param name="numeratorDof">Degrees of freedom of the numerator, finite and above 0.</param>
    /// <param name="denominatorDof">Degrees of freedom of the denominator, above 0; +∞ where its variance is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double Cumulative(double f, double numeratorDof, double denominatorDof)
    {
        Check(numeratorDof, denominatorDof);
        Probability.Number(f);
        if (double.IsInfinity(denominatorDof))
        {
            return ChiSquared.Cumulative(f * numeratorDof, numeratorDof);
        }

        return f <= 0 ? 0
            : double.IsInfinity(f) ? 1
            : Math.Exp(BetaFunction.LogLower(
                numeratorDof / 2, denominatorDof / 2, BetaPoint.Dividing(numeratorDof * f, denominatorDof)));
    }

    /// <summary>Probability of a ratio above f, with full relative precision in the upper tail.</summary>
    /// <inheritdoc cref="Cumulative"/>
    public static double UpperTail(double f, double numeratorDof, double denominatorDof)
    {
        Check(numeratorDof, denominatorDof);
        Probability.Number(f);
        if (double.IsInfinity(denominatorDof))
        {
            return ChiSquared.UpperTail(f * numeratorDof, numeratorDof);
        }

        return f <= 0 ? 1
            : double.IsInfinity(f) ? 0
            : Math.Exp(BetaFunction.LogLower(
                denominatorDof / 2, numeratorDof / 2, BetaPoint.Dividing(denominatorDof, numeratorDof * f)));
    }

    /// <summary>The ratio that is not exceeded with probability p.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="numeratorDof">Degrees of freedom of the numerator, finite and above 0.</param>
    /// <param name="denominatorDof">Degrees of freedom of the denominator, above 0; +∞ where its variance is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double Quantile(double p, double numeratorDof, double denominatorDof)
    {
        Probability.Inside(p);
        return OfTails(p, 1 - p, numeratorDof, denominatorDof);
    }

    /// <summary>The ratio that is exceeded with probability q: keeps its digits for a q far below 1e-16.</summary>
    /// <param name="q">Above 0 and below 1.</param>
    /// <param name="numeratorDof">Degrees of freedom of the numerator, finite and above 0.</param>
    /// <param name="denominatorDof">Degrees of freedom of the denominator, above 0; +∞ where its variance is known.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double UpperQuantile(double q, double numeratorDof, double denominatorDof)
    {
        Probability.Inside(q);
        return OfTails(1 - q, q, numeratorDof, denominatorDof);
    }

    private static double OfTails(double p, double q, double numeratorDof, double denominatorDof)
    {
        Check(numeratorDof, denominatorDof);
        return double.IsInfinity(denominatorDof)
            ? 2 * GammaFunction.QuantileOfTails(numeratorDof / 2, p, q) / numeratorDof
            : denominatorDof / numeratorDof
                * Math.Exp(BetaFunction.LogOddsOf(numeratorDof / 2, denominatorDof / 2, p, q));
    }

    private static void Check(double numeratorDof, double denominatorDof)
    {
        Probability.Positive(numeratorDof);
        Probability.Degrees(denominatorDof);
    }
}
