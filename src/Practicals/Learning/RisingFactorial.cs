namespace Calx.Practicals.Learning;

/// <summary>Logarithms of Γ(a + y)/Γ(a), of which beta-binomial probabilities are made; y need not be whole.</summary>
internal static class RisingFactorial
{
    /// <summary>From here on Stirling's series with three terms is right to 1e-13.</summary>
    private const double Large = 16;

    /// <summary>ln Γ(a + y) − ln Γ(a).</summary>
    /// <param name="a">Above 0, or so small that only its logarithm is known.</param>
    /// <param name="logA">ln a.</param>
    /// <param name="y">From 0.</param>
    public static double Log(double a, double logA, double y) => y == 0 ? 0 : LogGamma(a + y) - LogGamma(a + 1) + logA;

    /// <summary>ln Γ(x) by recurrence and Stirling's series (Abramowitz and Stegun 6.1.15 and 6.1.41).</summary>
    /// <param name="x">Above 0.</param>
    public static double LogGamma(double x)
    {
        double product = 1;
        while (x < Large)
        {
            product *= x;
            x++;
        }

        double square = 1 / (x * x);
        double series = ((((square / 1260) - (1.0 / 360)) * square) + (1.0 / 12)) / x;
        return ((x - 0.5) * Math.Log(x)) - x + (0.5 * Math.Log(2 * Math.PI)) + series - (((square * square * square) / 1680) / x) - Math.Log(product);
    }
}
