using MathNet.Numerics;

namespace Calx.Measurement.Distributions;

/// <summary>The normal distribution with mean 0 and standard deviation 1.</summary>
public static class StandardNormal
{
    private const double RootTwo = 1.4142135623730950488;
    private const double RootTwoPi = 2.5066282746310005024;

    // Beyond this the continued fraction of Mills' ratio takes over: the library's erfc squares z first, and the
    // rounding of the square costs z² units in the last place.
    private const double FarTail = 5;
    private const int FractionTerms = 60;

    /// <summary>Probability density at z, exact to the last digits also where it is near the smallest double.</summary>
    public static double Density(double z)
    {
        Probability.Number(z);
        if (Math.Abs(z) > 40)
        {
            return 0;
        }

        // exp(−z²/2) in two factors, so that the square of the first is exact: z splits at 1/16.
        double coarse = Math.Truncate(z * 16) / 16;
        double fine = z - coarse;
        return Math.Exp(-coarse * coarse / 2) * Math.Exp(-fine * (z + coarse) / 2) / RootTwoPi;
    }

    /// <summary>Probability of a value at or below z.</summary>
    public static double Cumulative(double z) => UpperTail(-z);

    /// <summary>Probability of a value above z, with full relative precision out to z = 37.</summary>
    public static double UpperTail(double z)
    {
        Probability.Number(z);
        return z < FarTail ? SpecialFunctions.Erfc(z / RootTwo) / 2 : Density(z) * MillsRatio(z);
    }

    /// <summary>The value that is not exceeded with probability p.</summary>
    /// <param name="p">Above 0 and below 1; down to 1e-300 the relative error is below 1e-14.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="p"/> is not inside 0 to 1.</exception>
    public static double Quantile(double p)
    {
        Probability.Inside(p);
        return p <= 0.5 ? -UpperQuantile(p) : UpperQuantile(1 - p);
    }

    private static double UpperQuantile(double upper)
    {
        double z = RootTwo * SpecialFunctions.ErfcInv(2 * upper);
        // One Newton step; near the middle it would only add the rounding of the probability.
        return z < 1 ? z : z + ((UpperTail(z) - upper) / Density(z));
    }

    // UpperTail/Density = 1/(z + 1/(z + 2/(z + 3/(z + …)))), DLMF 7.9.1, from the innermost term outwards.
    private static double MillsRatio(double z)
    {
        double inner = z;
        for (int term = FractionTerms; term >= 1; term--)
        {
            inner = z + (term / inner);
        }

        return 1 / inner;
    }
}
