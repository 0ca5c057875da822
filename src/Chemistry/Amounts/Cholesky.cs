namespace Calx.Chemistry.Amounts;

/// <summary>Lower triangular factors of small covariance matrices.</summary>
internal static class Cholesky
{
    // A pivot this far below its diagonal element is what rounding leaves of an exact relation.
    private const double Negligible = 1e-13;

    /// <summary>The factor of a positive definite matrix, or null where some combination has no variance.</summary>
    public static double[,]? Factor(double[,] matrix) => Decompose(matrix, out bool fullRank) is var factor && fullRank
        ? factor
        : null;

    /// <summary>A factor whose columns are 0 where nothing is left to vary.</summary>
    public static double[,] SemidefiniteFactor(double[,] matrix) => Decompose(matrix, out _);

    /// <summary>Solves factor · x = right, in place.</summary>
    public static void SolveLower(double[,] factor, double[] right)
    {
        for (int i = 0; i < right.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                right[i] -= factor[i, j] * right[j];
            }

            right[i] /= factor[i, i];
        }
    }

    private static double[,] Decompose(double[,] matrix, out bool fullRank)
    {
        int size = matrix.GetLength(0);
        double[,] factor = new double[size, size];
        fullRank = true;
        for (int column = 0; column < size; column++)
        {
            double pivot = Remainder(matrix, factor, column, column);
            if (!(pivot > Negligible * matrix[column, column]))
            {
                fullRank = false;
                continue;
            }

            factor[column, column] = Math.Sqrt(pivot);
            for (int row = column + 1; row < size; row++)
            {
                factor[row, column] = Remainder(matrix, factor, row, column) / factor[column, column];
            }
        }

        return factor;
    }

    private static double Remainder(double[,] matrix, double[,] factor, int row, int column)
    {
        double left = matrix[row, column];
        for (int k = 0; k < column; k++)
        {
            left -= factor[row, k] * factor[column, k];
        }

        return left;
    }
}
