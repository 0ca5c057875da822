namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>
/// R with its columns divided by a scale, as U S Vᵀ, by one-sided Jacobi rotations (Golub and Van Loan, Matrix Computations,
/// 8.6.3): few parameters, so that every step of a trust region costs nothing more, and small singular values keep their digits.
/// </summary>
internal sealed class SingularFactor
{
    private const int MostSweeps = 60;
    private const double Orthogonal = 1e-15;

    private readonly double[,] turned;

    public SingularFactor(double[,] upper, ReadOnlySpan<double> scale)
    {
        int count = scale.Length;
        turned = new double[count, count];
        Directions = new double[count, count];
        for (int j = 0; j < count; j++)
        {
            Directions[j, j] = 1;
            for (int i = 0; i <= j; i++)
            {
                turned[i, j] = upper[i, j] / scale[j];
            }
        }

        for (int sweep = 0; sweep < MostSweeps && Sweep(); sweep++)
        {
        }

        Values = new double[count];
        for (int j = 0; j < count; j++)
        {
            Values[j] = Math.Sqrt(Dot(j, j));
        }
    }

    /// <summary>The singular values, in no order.</summary>
    public double[] Values { get; }

    /// <summary>V: the direction of each singular value, a column each.</summary>
    public double[,] Directions { get; }

    /// <summary>Uᵀ times a vector; 0 for a singular value of 0.</summary>
    public double[] Project(ReadOnlySpan<double> vector)
    {
        var along = new double[Values.Length];
        for (int j = 0; j < along.Length; j++)
        {
            double sum = 0;
            for (int i = 0; i < vector.Length; i++)
            {
                sum += turned[i, j] * vector[i];
            }

            along[j] = Values[j] > 0 ? sum / Values[j] : 0;
        }

        return along;
    }

    private bool Sweep()
    {
        bool moved = false;
        for (int left = 0; left < Directions.GetLength(0); left++)
        {
            for (int right = left + 1; right < Directions.GetLength(0); right++)
            {
                moved |= Rotate(left, right);
            }
        }

        return moved;
    }

    private bool Rotate(int left, int right)
    {
        double a = Dot(left, left);
        double b = Dot(right, right);
        double both = Dot(left, right);
        if (Math.Abs(both) <= Orthogonal * Math.Sqrt(a) * Math.Sqrt(b))
        {
            return false;
        }

        double cotangent = (b - a) / (2 * both);
        double tangent = (cotangent < 0 ? -1 : 1) / (Math.Abs(cotangent) + Math.Sqrt(1 + (cotangent * cotangent)));
        double cosine = 1 / Math.Sqrt(1 + (tangent * tangent));
        Turn(turned, left, right, cosine, cosine * tangent);
        Turn(Directions, left, right, cosine, cosine * tangent);
        return true;
    }

    private static void Turn(double[,] matrix, int left, int right, double cosine, double sine)
    {
        for (int i = 0; i < matrix.GetLength(0); i++)
        {
            double x = matrix[i, left];
            double y = matrix[i, right];
            matrix[i, left] = (cosine * x) - (sine * y);
            matrix[i, right] = (sine * x) + (cosine * y);
        }
    }

    private double Dot(int left, int right)
    {
        double sum = 0;
        for (int i = 0; i < turned.GetLength(0); i++)
        {
            sum += turned[i, left] * turned[i, right];
        }

        return sum;
    }
}
