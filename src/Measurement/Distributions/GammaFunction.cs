namespace Calx.Measurement.Distributions;

/// <summary>
/// The regularised incomplete gamma functions: P(a, x), the probability that a gamma variable of shape a and scale 1 is
/// at most x, and Q = 1 − P. Series DLMF 8.7.1 below the mode, continued fraction DLMF 8.9.2 above it; the factor
/// before them by Loader's saddle-point form.
/// </summary>
public static class GammaFunction
{
    private const double Tiny = 1e-300;
    private const double Precision = 2e-16;
    private const int MostTerms = 5_000_000;
    private const double LogTwoPi = 1.8378770664093454836;

    /// <summary>P(a, x).</summary>
    /// <param name="a">Shape, finite and above 0.</param>
    /// <param name="x">0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double LowerRegularized(double a, double x) => IsEnd(a, x, out double lower)
        ? lower
        : Math.Exp(LogLower(a, x, Math.Log(x)));

    /// <summary>Q(a, x), with full relative precision in the upper tail.</summary>
    /// <inheritdoc cref="LowerRegularized"/>
    public static double UpperRegularized(double a, double x) => IsEnd(a, x, out double lower)
        ? 1 - lower
        : Math.Exp(LogUpper(a, x, Math.Log(x)));

    /// <summary>The x with P(a, x) = p.</summary>
    /// <param name="a">Shape, finite and above 0.</param>
    /// <param name="p">Above 0 and below 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double Quantile(double a, double p)
    {
        Probability.Positive(a);
        Probability.Inside(p);
        return QuantileOfTails(a, p, 1 - p);
    }

    /// <summary>The x with p below and q above; the smaller of the two is used.</summary>
    internal static double QuantileOfTails(double a, double p, double q)
    {
        // Far out the upper tail falls as e^(−x), doubly fast in ln x: there the search begins at x = −ln q.
        double logX = p <= q
            ? TailEquation.Solve(Lower, Math.Log(p), Math.Log(a))
            : TailEquation.Solve(Upper, Math.Log(q), Math.Log(Math.Max(a, -Math.Log(q))));
        return Math.Exp(logX);

        (double Log, double Slope) Lower(double logX)
        {
            double log = LogLower(a, Math.Exp(logX), logX);
            return (log, Math.Exp(LogFactor(a, Math.Exp(logX), logX) - log));
        }

        (double Log, double Slope) Upper(double logX)
        {
            double log = LogUpper(a, Math.Exp(logX), logX);
            return (log, -Math.Exp(LogFactor(a, Math.Exp(logX), logX) - log));
        }
    }

    private static bool IsEnd(double a, double x, out double lower)
    {
        Probability.Positive(a);
        if (!(x >= 0))
        {
            throw new ArgumentOutOfRangeException(nameof(x), x, "A number of 0 or more is needed.");
        }

        lower = x == 0 ? 0 : 1;
        return x == 0 || double.IsInfinity(x);
    }

    private static double LogLower(double a, double x, double logX) => x < a + 1
        ? LogFactor(a, x, logX) + Math.Log(Series(a, x) / a)
        : SmallDifferences.LogOnePlus(-Math.Exp(LogUpper(a, x, logX)));

    private static double LogUpper(double a, double x, double logX) => x < a + 1
        ? SmallDifferences.LogOnePlus(-Math.Min(Math.Exp(LogLower(a, x, logX)), 1))
        : LogFactor(a, x, logX) + Math.Log(Fraction(a, x));

    // ln of x^a e^(−x) / Γ(a), which is also the density of ln x.
    private static double LogFactor(double a, double x, double logX)
    {
        double deviance = SmallDifferences.Deviance((x - a) / a, logX - Math.Log(a));
        return ((Math.Log(a) - LogTwoPi) / 2) - StirlingRemainder.Of(a) - (a * deviance);
    }

    private static double Series(double a, double x)
    {
        double term = 1;
        double sum = 1;
        for (int n = 1; n <= MostTerms; n++)
        {
            term *= x / (a + n);
            sum += term;
            if (term < sum * Precision)
            {
                return sum;
            }
        }

        throw new ArithmeticException($"Incomplete gamma: a = {a}, x = {x} did not settle in {MostTerms} terms.");
    }

    private static double Fraction(double a, double x)
    {
        double b = x + 1 - a;
        double c = 1 / Tiny;
        double d = 1 / b;
        double fraction = d;
        for (int n = 1; n <= MostTerms; n++)
        {
            double numerator = -n * (n - a);
            b += 2;
            d = 1 / AwayFromZero((numerator * d) + b);
            c = AwayFromZero(b + (numerator / c));
            fraction *= d * c;
            if (Math.Abs((d * c) - 1) <= Precision)
            {
                return fraction;
            }
        }

        throw new ArithmeticException($"Incomplete gamma: a = {a}, x = {x} did not settle in {MostTerms} terms.");
    }

    private static double AwayFromZero(double value) => Math.Abs(value) < Tiny ? Tiny : value;
}
