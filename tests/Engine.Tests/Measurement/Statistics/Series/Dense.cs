namespace Calx.Engine.Tests.Measurement.Statistics.Series;

/// <summary>The slow obvious way: the covariance of all readings written out, and its Cholesky factor.</summary>
internal static class Dense
{
    public static double[,] Covariance(double[] times, double white, double shared, double sharedTime, double walkPerTime)
    {
        var matrix = new double[times.Length, times.Length];
        for (int i = 0; i < times.Length; i++)
        {
            for (int j = 0; j < times.Length; j++)
            {
                matrix[i, j] = (i == j ? white : 0)
                    + (shared * Math.Exp(-Math.Abs(times[i] - times[j]) / sharedTime))
                    + (walkPerTime * (Math.Min(times[i], times[j]) - times[0]));
            }
        }

        return matrix;
    }

    /// <summary>aᵀV⁻¹b and ln|V|.</summary>
    public static (double Product, double LogDeterminant) Of(double[,] matrix, double[] a, double[] b)
    {
        double[,] factor = Cholesky(matrix);
        double[] x = Forward(factor, a);
        double[] y = Forward(factor, b);
        return (x.Zip(y, (p, q) => p * q).Sum(), Enumerable.Range(0, a.Length).Sum(i => 2 * Math.Log(factor[i, i])));
    }

    public static double[,] Cholesky(double[,] matrix)
    {
        int count = matrix.GetLength(0);
        var factor = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = matrix[i, j];
                for (int k = 0; k < j; k++)
                {
                    sum -= factor[i, k] * factor[j, k];
                }

                factor[i, j] = i == j ? Math.Sqrt(sum) : sum / factor[j, j];
            }
        }

        return factor;
    }

    public static double[] Forward(double[,] factor, double[] right)
    {
        double[] solved = [.. right];
        for (int i = 0; i < solved.Length; i++)
        {
            for (int k = 0; k < i; k++)
            {
                solved[i] -= factor[i, k] * solved[k];
            }

            solved[i] /= factor[i, i];
        }

        return solved;
    }
}
