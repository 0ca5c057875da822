namespace Calx.Practicals.Learning;

/// <summary>The probability of one class's count at one spread between classes, without the number of orders: beta-binomial about the
/// school's rate, or, in an odd class, with any rate from 0 to 1 as likely.</summary>
internal readonly struct ClassLikelihood
{
    private readonly ClassCount count;
    private readonly double kappa;
    private readonly double logKappa;
    private readonly double whole;

    /// <param name="count">The count.</param>
    /// <param name="kappa">The pseudo-count of the class's beta law, above 0.</param>
    public ClassLikelihood(ClassCount count, double kappa)
    {
        (this.count, this.kappa, logKappa) = (count, kappa, Math.Log(kappa));
        whole = Math.Log(1 - RateRule.OddShare) - RisingFactorial.Log(kappa, logKappa, count.Tried);
        LogOdd = Math.Log(RateRule.OddShare) + RisingFactorial.LogGamma(1 + count.Happened) + RisingFactorial.LogGamma(1 + Misses)
            - RisingFactorial.LogGamma(2 + count.Tried);
    }

    /// <summary>ln of the part of odd classes.</summary>
    public double LogOdd { get; }

    private double Misses => count.Tried - count.Happened;

    /// <summary>ln of the part of ordinary classes.</summary>
    public double LogOrdinary(in RateNode at) => whole
        + RisingFactorial.Log(kappa * at.Rate, logKappa + at.LogRate, count.Happened)
        + RisingFactorial.Log(kappa * at.Rest, logKappa + at.LogRest, Misses);

    /// <summary>ln of both together.</summary>
    public double Log(in RateNode at)
    {
        double ordinary = LogOrdinary(at);
        return Math.Max(ordinary, LogOdd) + Math.Log(1 + Math.Exp(-Math.Abs(ordinary - LogOdd)));
    }
}
