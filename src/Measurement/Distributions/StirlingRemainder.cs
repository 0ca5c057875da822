namespace Calx.Measurement.Distributions;

/// <summary>
/// What Stirling's formula leaves over: δ(a) = ln Γ(a + 1) − (a + ½) ln a + a − ½ ln 2π. With it, powers and factorials
/// of large numbers are divided before they are formed, so that nothing cancels (Loader 2000).
/// </summary>
internal static class StirlingRemainder
{
    // From here on, seven terms of the asymptotic series (DLMF 5.11.1) leave less than 1e-17.
    private const double SeriesFrom = 15;

    /// <summary>δ(a) for a above 0.</summary>
    public static double Of(double a)
    {
        double sum = 0;
        for (; a < SeriesFrom; a++)
        {
            sum += ((a + 0.5) * SmallDifferences.LogOnePlus(1 / a)) - 1;
        }

        return sum + Series(a);
    }

    private static double Series(double a)
    {
        double s = 1 / (a * a);
        double inner = (1.0 / 1188) - (s * ((691.0 / 360360) - (s / 156)));
        return ((1.0 / 12) - (s * ((1.0 / 360) - (s * ((1.0 / 1260) - (s * ((1.0 / 1680) - (s * inner)))))))) / a;
    }
}
