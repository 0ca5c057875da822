namespace Calx.Practicals.Learning;

/// <summary>A value of a rate, with what is needed of it even where it is too near 0 or 1 for a double.</summary>
/// <param name="Rate">The rate.</param>
/// <param name="Rest">1 less the rate.</param>
/// <param name="LogRate">ln of the rate.</param>
/// <param name="LogRest">ln of the rest.</param>
internal readonly record struct RateNode(double Rate, double Rest, double LogRate, double LogRest)
{
    /// <summary>The rate with these log odds.</summary>
    public static RateNode AtLogOdds(double odds)
    {
        double small = Math.Exp(-Math.Abs(odds));
        double far = Math.Log(1 + small);
        (double near, double tail) = (1 / (1 + small), small / (1 + small));
        return odds >= 0
            ? new RateNode(near, tail, -far, -odds - far)
            : new RateNode(tail, near, odds - far, -far);
    }
}
