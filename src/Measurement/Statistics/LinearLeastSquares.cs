namespace Calx.Measurement.Statistics;

/// <summary>
/// Least squares with several columns or powers of x. Computed in 32 digits by orthogonalising the columns, with y as the
/// last of them (Björck, BIT 7 (1967) 1), because powers of x are nearly dependent and doubles then leave few digits.
/// </summary>
public static class LinearLeastSquares
{
    /// <summary>A column that keeps no more than this share of itself beside those before it is taken as dependent.</summary>
    private const double Dependent = 1e-14;

    /// <summary>Fits y = b₀ + b₁x + … + b_k x^k.</summary>
    /// <param name="x">The places.</param>
    /// <param name="y">The heights, as many.</param>
    /// <param name="degree">k, 1 or more.</param>
    /// <exception cref="ArgumentException">No points, unequal lengths, or a number not finite.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="degree"/> is below 1.</exception>
    public static LinearFitResult Polynomial(ReadOnlySpan<double> x, ReadOnlySpan<double> y, int degree)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(degree, 1);
        Require.Finite(x, 1);
        var columns = new DoubleDouble[degree + 1][];
        columns[0] = Ones(x.Length);
        for (int power = 1; power <= degree; power++)
        {
            columns[power] = [.. columns[power - 1]];
            for (int i = 0; i < x.Length; i++)
            {
                columns[power][i] *= x[i];
            }
        }

        return Solve(columns, y, true);
    }

    /// <summary>Fits y = b₁c₁ + … + b_k c_k to columns, with b₀ before them where wanted.</summary>
    /// <param name="columns">One or more columns, each as long as <paramref name="y"/>.</param>
    /// <param name="y">The heights.</param>
    /// <param name="withIntercept">Whether a constant b₀ is fitted too.</param>
    /// <exception cref="ArgumentException">No columns or rows, unequal lengths, or a number not finite.</exception>
    public static LinearFitResult Fit(IReadOnlyList<double[]> columns, ReadOnlySpan<double> y, bool withIntercept)
    {
        ArgumentNullException.ThrowIfNull(columns);
        if (columns.Count == 0)
        {
            throw new ArgumentException("At least one column is needed.", nameof(columns));
        }

        List<DoubleDouble[]> all = withIntercept ? [Ones(y.Length)] : [];
        foreach (double[] column in columns)
        {
            Require.Finite(column, 1, nameof(columns));
            all.Add(Array.ConvertAll(column, value => (DoubleDouble)value));
        }

        return Solve([.. all], y, withIntercept);
    }

    private static LinearFitResult Solve(DoubleDouble[][] columns, ReadOnlySpan<double> y, bool withIntercept)
    {
        Require.Finite(y, 1);
        foreach (DoubleDouble[] column in columns)
        {
            Require.SameLength(y, column.Length);
        }

        if (y.Length <= columns.Length)
        {
            return new LinearFitResult.NotFitted(
                $"{y.Length} points cannot judge {columns.Length} coefficients: at least {columns.Length + 1} are needed");
        }

        DoubleDouble[] rest = Array.ConvertAll(y.ToArray(), value => (DoubleDouble)value);
        var factors = new OrthogonalFactors(columns, rest, Dependent);
        return factors.DependentColumn is { } dependent
            ? new LinearFitResult.NotFitted($"column {dependent} is a combination of those before it")
            : new LinearFitResult.Fitted(new LinearFit(factors, withIntercept));
    }

    private static DoubleDouble[] Ones(int length)
    {
        var ones = new DoubleDouble[length];
        Array.Fill(ones, 1);
        return ones;
    }
}
