using System.Globalization;

namespace Calx.Measurement.Uncertainty;

/// <summary>What makes a table of numbers a correlation matrix (JCGM 101:2008, 3.20 and 3.21).</summary>
internal static class CorrelationMatrix
{
    /// <summary>
    /// How far below zero the smallest eigenvalue may lie. Coefficients computed in double arithmetic from fully
    /// dependent series miss zero by some 1e-16; a matrix rounded by hand misses it by 1e-3 and is told so.
    /// </summary>
    private const double Slack = 1e-10;

    /// <summary>The first fault of the matrix as a sentence without a full stop, or null where it has none.</summary>
    public static string? FaultOf(double[,] matrix, IReadOnlyList<string> names)
    {
        int size = names.Count;
        if (matrix.GetLength(0) != size || matrix.GetLength(1) != size)
        {
            return $"the correlation matrix is not {size} by {size}, a row and a column for each input";
        }

        for (int row = 0; row < size; row++)
        {
            for (int column = 0; column <= row; column++)
            {
                if (FaultOfPair(matrix, row, column, names) is { } fault)
                {
                    return fault;
                }
            }
        }

        return IsPositiveSemidefinite(matrix)
            ? null
            : "the correlations contradict each other: no quantities can have them (the matrix has a negative eigenvalue)";
    }

    private static string? FaultOfPair(double[,] matrix, int row, int column, IReadOnlyList<string> names)
    {
        double r = matrix[row, column];
        string shown = r.ToString("G6", CultureInfo.InvariantCulture);
        if (row == column)
        {
            return r == 1 ? null : $"the correlation of {names[row]} with itself is {shown} instead of 1";
        }

        if (!(Math.Abs(r) <= 1))
        {
            return $"the correlation of {names[column]} and {names[row]} is {shown}, outside -1 to 1";
        }

        return r == matrix[column, row]
            ? null
            : $"the correlation of {names[column]} and {names[row]} is given as two different numbers";
    }

    // Cholesky's factorisation of the matrix plus a sliver of the identity exists exactly when no eigenvalue lies
    // below minus the sliver.
    private static bool IsPositiveSemidefinite(double[,] matrix)
    {
        int size = matrix.GetLength(0);
        var factor = new double[size, size];
        for (int row = 0; row < size; row++)
        {
            for (int column = 0; column < row; column++)
            {
                factor[row, column] = Remainder(matrix, factor, row, column) / factor[column, column];
            }

            double pivot = Remainder(matrix, factor, row, row) + (Slack * size);
            if (!(pivot > 0))
            {
                return false;
            }

            factor[row, row] = Math.Sqrt(pivot);
        }

        return true;
    }

    private static double Remainder(double[,] matrix, double[,] factor, int row, int column)
    {
        double remainder = matrix[row, column];
        for (int k = 0; k < column; k++)
        {
            remainder -= factor[row, k] * factor[column, k];
        }

        return remainder;
    }
}
