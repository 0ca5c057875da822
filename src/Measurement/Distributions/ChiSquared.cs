namespace Calx.Measurement.Distributions;

/// <summary>The chi-squared distribution: a sum of squares of independent standard normal values.</summary>
public static class ChiSquared
{
    /// <summary>Probability of a value at or below x.</summary>
    /// <param name="x">The value; below 0 the probability is 0.</param>
    /// <param name="dof">Degrees of freedom, finite and above 0, not necessarily whole.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double Cumulative(double x, double dof)
    {
        Check(x, dof);
        return x <= 0 ? 0 : GammaFunction.LowerRegularized(dof / 2, x / 2);
    }

    /// <summary>Probability of a value above x, with full relative precision in the upper tail.</summary>
    /// <inheritdoc cref="Cumulative"/>
    public static double UpperTail(double x, double dof)
    {
        Check(x, dof);
        return x <= 0 ? 1 : GammaFunction.UpperRegularized(dof / 2, x / 2);
    }

    /// <summary>The value that is not exceeded with probability p.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="dof">Degrees of freedom, finite and above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double Quantile(double p, double dof)
    {
        Probability.Inside(p);
        Probability.Positive(dof);
        return 2 * GammaFunction.QuantileOfTails(dof / 2, p, 1 - p);
    }

    /// <summary>The value that is exceeded with probability q: keeps its digits for a q far below 1e-16.</summary>
    /// <param name="q">Above 0 and below 1.</param>
    /// <param name="dof">Degrees of freedom, finite and above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double UpperQuantile(double q, double dof)
    {
        Probability.Inside(q);
        Probability.Positive(dof);
        return 2 * GammaFunction.QuantileOfTails(dof / 2, 1 - q, q);
    }

    private static void Check(double x, double dof)
    {
        Probability.Number(x);
        Probability.Positive(dof);
    }
}
