namespace Calx.Measurement.Distributions;

/// <summary>
/// Normal quantities that are correlated (JCGM 101:2008, 6.4.8): draws are made independent and mixed with Cholesky's
/// factor of the correlation matrix. The matrix may be singular, as for quantities of which one follows from the others.
/// </summary>
public sealed class CorrelatedNormals
{
    // A pivot below this is taken as 0: the quantity follows from those before it.
    private const double Slack = 1e-10;

    private readonly double[] means;
    private readonly double[] standardDeviations;
    private readonly double[,] factor;

    /// <summary>States the law.</summary>
    /// <param name="laws">Mean and standard deviation of each quantity.</param>
    /// <param name="correlation">Correlation coefficients, a row and a column for each quantity in their order.</param>
    /// <exception cref="ArgumentException">The matrix has the wrong size or has a negative eigenvalue.</exception>
    public CorrelatedNormals(IReadOnlyList<NormalInput> laws, double[,] correlation)
    {
        ArgumentNullException.ThrowIfNull(laws);
        ArgumentNullException.ThrowIfNull(correlation);
        if (correlation.GetLength(0) != laws.Count || correlation.GetLength(1) != laws.Count)
        {
            throw InputGuard.Fault($"The correlation matrix must have {laws.Count} rows and columns.");
        }

        means = [.. laws.Select(law => law.Mean)];
        standardDeviations = [.. laws.Select(law => law.StandardDeviation)];
        factor = Factor(correlation);
    }

    /// <summary>How many quantities there are.</summary>
    public int Count => means.Length;

    /// <summary>Fills a block with draws.</summary>
    /// <param name="stream">Where the random numbers come from.</param>
    /// <param name="columns">A column for each quantity, in their order.</param>
    /// <param name="count">How many draws to make in each column, from the first on.</param>
    /// <exception cref="ArgumentException">There is not a column for each quantity.</exception>
    public void Fill(RandomStream stream, ReadOnlySpan<double[]> columns, int count)
    {
        ArgumentNullException.ThrowIfNull(stream);
        if (columns.Length != Count)
        {
            throw new ArgumentException($"There are {columns.Length} columns for {Count} quantities.", nameof(columns));
        }

        foreach (double[] column in columns)
        {
            stream.FillNormal(column.AsSpan(0, count));
        }

        // From the last row up, so that a column is read before it is overwritten.
        for (int row = Count - 1; row >= 0; row--)
        {
            Mix(columns, row, count);
            Affine.Apply(columns[row].AsSpan(0, count), standardDeviations[row], means[row]);
        }
    }

    private void Mix(ReadOnlySpan<double[]> columns, int row, int count)
    {
        Span<double> target = columns[row].AsSpan(0, count);
        double own = factor[row, row];
        for (int i = 0; i < target.Length; i++)
        {
            target[i] *= own;
        }

        for (int column = 0; column < row; column++)
        {
            ReadOnlySpan<double> other = columns[column].AsSpan(0, count);
            double share = factor[row, column];
            for (int i = 0; i < target.Length; i++)
            {
                target[i] += share * other[i];
            }
        }
    }

    private static double[,] Factor(double[,] matrix)
    {
        int size = matrix.GetLength(0);
        var factor = new double[size, size];
        for (int row = 0; row < size; row++)
        {
            for (int column = 0; column < row; column++)
            {
                double pivot = factor[column, column];
                factor[row, column] = pivot == 0 ? 0 : Remainder(matrix, factor, row, column) / pivot;
            }

            double rest = Remainder(matrix, factor, row, row);
            factor[row, row] = rest >= -Slack * size
                ? rest <= Slack * size ? 0 : Math.Sqrt(rest)
                : throw InputGuard.Fault("The correlations contradict each other: no quantities can have them.");
        }

        return factor;
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
