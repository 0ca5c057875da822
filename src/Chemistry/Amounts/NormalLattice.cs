namespace Calx.Chemistry.Amounts;

/// <summary>
/// Evenly spread draws from a multivariate normal, always the same ones: a Kronecker lattice (fractional parts of
/// multiples of square roots of primes) turned normal by pairs (Box and Muller 1958). For smooth expectations in a few
/// dimensions 8192 points give two to three digits, which is more than a prior deserves.
/// </summary>
internal sealed class NormalLattice
{
    public const int Points = 8192;

    private static readonly double[] Roots = Array.ConvertAll([2, 3, 5, 7, 11, 13, 17, 19, 23, 29], n => Math.Sqrt(n));

    private readonly double[] mean;
    private readonly double[,] factor;

    /// <summary>The law to draw from: at most ten quantities; a covariance without full rank is allowed.</summary>
    public NormalLattice(double[] mean, double[,] covariance)
    {
        this.mean = mean;
        factor = Cholesky.SemidefiniteFactor(covariance);
    }

    /// <summary>Mean of a function over the draws.</summary>
    public double Mean(Func<double[], double> function)
    {
        double[] draw = new double[mean.Length];
        double[] standard = new double[mean.Length + 1];
        double sum = 0;
        for (int point = 0; point < Points; point++)
        {
            Fill(standard, point);
            Transform(standard, draw);
            sum += function(draw);
        }

        return sum / Points;
    }

    private static void Fill(double[] standard, int point)
    {
        for (int i = 0; i + 1 < standard.Length; i += 2)
        {
            double radius = Math.Sqrt(-2 * Math.Log(Fraction(point, i)));
            (double sine, double cosine) = Math.SinCos(2 * Math.PI * Fraction(point, i + 1));
            standard[i] = radius * cosine;
            standard[i + 1] = radius * sine;
        }
    }

    private static double Fraction(int point, int axis)
    {
        double multiple = (point + 0.5) * Roots[axis];
        return multiple - Math.Floor(multiple);
    }

    private void Transform(double[] standard, double[] draw)
    {
        for (int i = 0; i < draw.Length; i++)
        {
            draw[i] = mean[i];
            for (int j = 0; j <= i; j++)
            {
                draw[i] += factor[i, j] * standard[j];
            }
        }
    }
}
