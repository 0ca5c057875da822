namespace Calx.Measurement.Distributions;

/// <summary>
/// A place between 0 and 1 with its distance from either end, and their logarithms: 1e-300 from 1 is as well
/// represented as 1e-300 from 0.
/// </summary>
internal readonly record struct BetaPoint(double X, double Y, double LogX, double LogY)
{
    /// <summary>The place x.</summary>
    public static BetaPoint At(double x) => new(x, 1 - x, Math.Log(x), SmallDifferences.LogOnePlus(-x));

    /// <summary>The place whose odds x/(1 − x) have the given logarithm.</summary>
    public static BetaPoint AtLogOdds(double logOdds)
    {
        double small = Math.Exp(-Math.Abs(logOdds));
        double logLarge = -SmallDifferences.LogOnePlus(small);
        double logSmall = logLarge - Math.Abs(logOdds);
        return logOdds < 0
            ? new BetaPoint(small / (1 + small), 1 / (1 + small), logSmall, logLarge)
            : new BetaPoint(1 / (1 + small), small / (1 + small), logLarge, logSmall);
    }

    /// <summary>The place that divides two amounts above 0: x = first / (first + second).</summary>
    public static BetaPoint Dividing(double first, double second)
    {
        double sum = first + second;
        return sum > 1e-290 && sum < 1e290 && first > sum * 1e-290 && second > sum * 1e-290
            ? new BetaPoint(first / sum, second / sum, Math.Log(first / sum), Math.Log(second / sum))
            : AtLogOdds(Math.Log(first) - Math.Log(second));
    }

    /// <summary>The same place seen from the other end.</summary>
    public BetaPoint Mirrored => new(Y, X, LogY, LogX);
}
