namespace Calx.Measurement.Distributions;

/// <summary>
/// Student's t distribution, from which coverage factors come (JCGM 100:2008, G.3.2). Degrees of freedom need not be
/// whole; +∞ is the normal distribution.
/// </summary>
public static class StudentT
{
    // Above this the difference from the normal is taken from the first term of its expansion in 1/ν, the next being
    // below 1e-17; the exact way would need ever more terms.
    private const double NearlyNormal = 1e10;

    /// <summary>Probability of a value at or below t.</summary>
    /// <param name="t">The value, in standard units.</param>
    /// <param name="dof">Degrees of freedom, above 0; +∞ for the normal.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double Cumulative(double t, double dof) => UpperTail(-t, dof);

    /// <summary>Probability of a value above t, with full relative precision in the upper tail.</summary>
    /// <inheritdoc cref="Cumulative"/>
    public static double UpperTail(double t, double dof)
    {
        Probability.Number(t);
        Probability.Degrees(dof);
        double tail = TailBeyond(Math.Abs(t), dof);
        return t < 0 ? 1 - tail : tail;
    }

    /// <summary>The value that is not exceeded with probability p.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    /// <param name="dof">Degrees of freedom, above 0; +∞ for the normal.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is out of range.</exception>
    public static double Quantile(double p, double dof)
    {
        Probability.Inside(p);
        Probability.Degrees(dof);
        return p <= 0.5 ? -UpperQuantile(p, dof) : UpperQuantile(1 - p, dof);
    }

    private static double TailBeyond(double t, double dof)
    {
        if (dof >= NearlyNormal)
        {
            double normal = StandardNormal.UpperTail(t);
            return normal + (StandardNormal.Density(t) * t * ((t * t) + 1) / (4 * dof));
        }

        if (t is 0 or double.PositiveInfinity)
        {
            return t == 0 ? 0.5 : 0;
        }

        BetaPoint at = t < 1e100
            ? BetaPoint.Dividing(dof, t * t)
            : BetaPoint.AtLogOdds(Math.Log(dof) - (2 * Math.Log(t)));
        return Math.Exp(BetaFunction.LogLower(dof / 2, 0.5, at)) / 2;
    }

    private static double UpperQuantile(double upper, double dof)
    {
        if (upper == 0.5)
        {
            return 0;
        }

        if (dof >= NearlyNormal)
        {
            double z = -StandardNormal.Quantile(upper);
            return z + (z * ((z * z) + 1) / (4 * dof));
        }

        // t² / ν = (1 − x) / x for a beta variable x of shapes ν/2 and ½.
        double logOdds = BetaFunction.LogOddsOf(dof / 2, 0.5, 2 * upper, 1 - (2 * upper));
        return Math.Sqrt(dof) * Math.Exp(-logOdds / 2);
    }
}
