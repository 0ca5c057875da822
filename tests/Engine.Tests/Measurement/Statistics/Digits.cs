namespace Calx.Engine.Tests.Measurement.Statistics;

/// <summary>Log relative error: how many digits of a certified value were found (NIST, statistical reference datasets).</summary>
internal static class Digits
{
    /// <summary>Certified values are printed with 15 digits, so no more can be agreed.</summary>
    public const double Most = 15;

    public static double Agreed(double found, double certified)
    {
        if (found.Equals(certified))
        {
            return Most;
        }

        double error = certified == 0 ? Math.Abs(found) : Math.Abs((found - certified) / certified);
        return error == 0 ? Most : Math.Clamp(-Math.Log10(error), 0, Most);
    }
}
