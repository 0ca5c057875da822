namespace Calx.Measurement.Distributions;

/// <summary>
/// The regularised incomplete beta function I(a, b, x), which is the distribution function of a beta variable and
/// underlies Student's t and Fisher's F. Continued fraction of DiDonato and Morris by the modified Lentz method; the factor
/// before it by Loader's saddle-point form.
/// </summary>
public static class BetaFunction
{
    private const double Tiny = 1e-300;
    private const double Precision = 2e-16;
    private const int MostTerms = 5_000_000;
    private const double LogTwoPi = 1.8378770664093454836;

    /// <summary>I(a, b, x): the probability that a beta variable is at most x.</summary>
    /// <param name="a">First shape, finite and above 0.</param>
    /// <param name="b">Second shape, finite and above 0.</param>
    /// <param name="x">0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double RegularizedIncomplete(double a, double b, double x)
    {
        Probability.Positive(a);
        Probability.Positive(b);
        if (!(x >= 0 && x <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(x), x, "A number from 0 to 1 is needed.");
        }

        return x is 0 or 1 ? x : Math.Exp(LogLower(a, b, BetaPoint.At(x)));
    }

    /// <summary>The x with I(a, b, x) = p.</summary>
    /// <param name="a">First shape, finite and above 0.</param>
    /// <param name="b">Second shape, finite and above 0.</param>
    /// <param name="p">Above 0 and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double Quantile(double a, double b, double p)
    {
        Probability.Positive(a);
        Probability.Positive(b);
        Probability.Inside(p);
        return BetaPoint.AtLogOdds(LogOddsOf(a, b, p, 1 - p)).X;
    }

    /// <summary>Logarithm of the odds x/(1 − x) at which the tails are p below and q above; the smaller is used.</summary>
    internal static double LogOddsOf(double a, double b, double p, double q) => p <= q
        ? SolveLower(a, b, p)
        : -SolveLower(b, a, q);

    /// <summary>ln I(a, b, x).</summary>
    internal static double LogLower(double a, double b, BetaPoint at)
    {
        if (at.X * b <= at.Y * a)
        {
            return LogFactor(a, b, at) + Math.Log(Fraction(a, b, at));
        }

        double upper = Math.Exp(LogFactor(a, b, at)) * Fraction(b, a, at.Mirrored);
        return SmallDifferences.LogOnePlus(-Math.Min(upper, 1));
    }

    private static double SolveLower(double a, double b, double p)
    {
        return TailEquation.Solve(LogAndSlope, Math.Log(p), Math.Log(a / b));

        (double Log, double Slope) LogAndSlope(double logOdds)
        {
            BetaPoint at = BetaPoint.AtLogOdds(logOdds);
            double log = LogLower(a, b, at);
            return (log, Math.Exp(LogFactor(a, b, at) - log));
        }
    }

    // ln of x^a (1 − x)^b / B(a, b), which is also the density of the log odds.
    private static double LogFactor(double a, double b, BetaPoint at)
    {
        double n = a + b;
        double excess = (at.X * b) - (at.Y * a);
        double left = SmallDifferences.Deviance(excess / a, at.LogX + Math.Log(n / a));
        double right = SmallDifferences.Deviance(-excess / b, at.LogY + Math.Log(n / b));
        double remainders = StirlingRemainder.Of(n) - StirlingRemainder.Of(a) - StirlingRemainder.Of(b);
        return ((Math.Log(a) + Math.Log(b / n) - LogTwoPi) / 2) + remainders - (a * left) - (b * right);
    }

    // DiDonato and Morris 1992 (Algorithm 708), equation 9: I = factor / (β1 + α2/(β2 + α3/(β3 + …))). Unlike shorter
    // fractions it takes the distance λ from the mean as given, so that nothing cancels when a is large.
    private static double Fraction(double a, double b, BetaPoint at)
    {
        double lambda = (a * at.Y) - (b * at.X);
        double fraction = AwayFromZero(a / (a + 1) * (lambda + 1));
        double c = fraction;
        double d = 0;
        for (int n = 1; n <= MostTerms; n++)
        {
            double end = a + (2.0 * n) - 1;
            double alpha = (a + n - 1) / end * ((a + b + n - 1) / end) * n * (b - n) * at.X * at.X;
            double beta = n + (n * (b - n) * at.X / end) + ((a + n) / (end + 2) * (lambda + 1 + (n * (1 + at.Y))));
            d = 1 / AwayFromZero(beta + (alpha * d));
            c = AwayFromZero(beta + (alpha / c));
            fraction *= c * d;
            if (Math.Abs((c * d) - 1) <= Precision)
            {
                return 1 / fraction;
            }
        }

        throw new ArithmeticException($"Incomplete beta: a = {a}, b = {b}, x = {at.X} did not settle in {MostTerms} terms.");
    }

    private static double AwayFromZero(double value) => Math.Abs(value) < Tiny ? Tiny : value;
}
