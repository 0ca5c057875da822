namespace Calx.Measurement.Statistics.Nonlinear;

/// <summary>
/// The derivatives J of the free parameters as J = QR, by Householder's reflections, and the residuals turned by Qᵀ: what
/// lies within the reach of the parameters (<see cref="Reach"/>) and the sum of squares of what does not.
/// </summary>
internal sealed class TriangularFactor
{
    // The square of a shorter column is no number any more; such a parameter changes nothing.
    private const double Nothing = 1e-140;

    public TriangularFactor(FitPoint point, IReadOnlyList<int> free)
    {
        int rows = point.Residuals.Length;
        Count = free.Count;
        double[][] columns = [.. free.Select(k => point.Derivatives.AsSpan(k * rows, rows).ToArray())];
        double[] right = [.. point.Residuals];
        Upper = new double[Count, Count];
        ColumnNorms = Array.ConvertAll(columns, column => Norm(column));
        for (int k = 0; k < Count && k < rows; k++)
        {
            Upper[k, k] = Reflect(columns, right, k);
            for (int j = k + 1; j < Count; j++)
            {
                Upper[k, j] = columns[j][k];
            }
        }

        Reach = right[..Math.Min(Count, rows)];
        RestOfSquares = 0;
        foreach (double value in right.AsSpan(Reach.Length))
        {
            RestOfSquares += value * value;
        }
    }

    public int Count { get; }

    public double[,] Upper { get; }

    public double[] ColumnNorms { get; }

    public double[] Reach { get; }

    /// <summary>The sum of squares that no step removes, as far as the curve is straight.</summary>
    public double RestOfSquares { get; }

    /// <summary>The sum of squares after a step, as far as the curve is straight.</summary>
    public double SquaresAfter(ReadOnlySpan<double> step)
    {
        double sum = RestOfSquares;
        for (int i = 0; i < Reach.Length; i++)
        {
            double left = Reach[i];
            for (int j = i; j < Count; j++)
            {
                left -= Upper[i, j] * step[j];
            }

            sum += left * left;
        }

        return sum;
    }

    // Reflects column k onto its first place from k on, and all later columns with it. Returns the diagonal of R.
    private static double Reflect(double[][] columns, double[] right, int k)
    {
        Span<double> mirror = columns[k].AsSpan(k);
        double length = Norm(mirror);
        if (length < Nothing)
        {
            return 0;
        }

        double diagonal = mirror[0] > 0 ? -length : length;
        mirror[0] -= diagonal;
        // The mirror's square is 2 · length · |first|, so its product with another column over half of that is the share.
        double half = -diagonal * mirror[0];
        for (int j = k + 1; j < columns.Length; j++)
        {
            Turn(mirror, half, columns[j].AsSpan(k));
        }

        Turn(mirror, half, right.AsSpan(k));
        return diagonal;
    }

    private static void Turn(ReadOnlySpan<double> mirror, double half, Span<double> column)
    {
        double share = 0;
        for (int i = 0; i < mirror.Length; i++)
        {
            share += mirror[i] * column[i];
        }

        share /= half;
        for (int i = 0; i < mirror.Length; i++)
        {
            column[i] -= share * mirror[i];
        }
    }

    /// <summary>The Euclidean length, also where the squares of the numbers would be too large or too small.</summary>
    public static double Norm(ReadOnlySpan<double> values)
    {
        double largest = 0;
        foreach (double value in values)
        {
            largest = Math.Max(largest, Math.Abs(value));
        }

        if (largest is 0 or double.PositiveInfinity)
        {
            return largest;
        }

        double sum = 0;
        foreach (double value in values)
        {
            double part = value / largest;
            sum += part * part;
        }

        return largest * Math.Sqrt(sum);
    }
}
