using MathNet.Numerics;

namespace Calx.Measurement.Statistics;

/// <summary>Upper tails of the distributions that tests here refer to, and the points that cut off a given tail.</summary>
internal static class Tails
{
    /// <summary>The chance of a Student t above <paramref name="t"/>; +∞ degrees of freedom for the normal.</summary>
    public static double StudentUpper(double t, double degrees)
    {
        double upper = double.IsInfinity(degrees)
            ? 0.5 * SpecialFunctions.Erfc(Math.Abs(t) / Constants.Sqrt2)
            : 0.5 * SpecialFunctions.BetaRegularized(degrees / 2, 0.5, degrees / (degrees + (t * t)));
        return t >= 0 ? upper : 1 - upper;
    }

    /// <summary>The t that is passed with the chance <paramref name="upper"/>, which is between 0 and 1.</summary>
    public static double StudentPoint(double upper, double degrees)
    {
        if (upper > 0.5)
        {
            return -StudentPoint(1 - upper, degrees);
        }

        if (double.IsInfinity(degrees))
        {
            return Constants.Sqrt2 * SpecialFunctions.ErfcInv(2 * upper);
        }

        double share = BetaPoint(2 * upper, degrees / 2, 0.5);
        return Math.Sqrt(degrees * (1 - share) / share);
    }

    /// <summary>The chance of a Fisher F above <paramref name="f"/>.</summary>
    public static double FisherUpper(double f, double numerator, double denominator) =>
        double.IsPositiveInfinity(f)
            ? 0
            : SpecialFunctions.BetaRegularized(denominator / 2, numerator / 2, denominator / (denominator + (numerator * f)));

    /// <summary>The F that is passed with the chance <paramref name="upper"/>.</summary>
    public static double FisherPoint(double upper, double numerator, double denominator)
    {
        double share = BetaPoint(upper, denominator / 2, numerator / 2);
        return denominator * (1 - share) / (numerator * share);
    }

    /// <summary>The chance of a chi-squared above <paramref name="value"/>.</summary>
    public static double ChiSquaredUpper(double value, double degrees) =>
        value <= 0 ? 1 : SpecialFunctions.GammaUpperRegularized(degrees / 2, value / 2);

    private static double BetaPoint(double lower, double a, double b) =>
        Root.Between(x => SpecialFunctions.BetaRegularized(a, b, x) - lower, 0, 1);
}
