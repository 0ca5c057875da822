namespace Calx.Measurement.Statistics;

/// <summary>Columns made orthogonal one after another: Q and R with A = QR, Qᵀy, and what is left of y.</summary>
internal sealed class OrthogonalFactors
{
    /// <summary>A residual of this share of y or less is the rounding of 32 digits: the fit is exact.</summary>
    private const double Exact = 1e-29;

    private readonly DoubleDouble[,] upper;
    private readonly DoubleDouble[] projections;

    /// <param name="columns">The columns of A; overwritten by those of Q.</param>
    /// <param name="rest">y; overwritten by the residuals.</param>
    /// <param name="dependent">The share of a column below which it counts as dependent on those before.</param>
    public OrthogonalFactors(DoubleDouble[][] columns, DoubleDouble[] rest, double dependent)
    {
        int count = columns.Length;
        Rows = rest.Length;
        upper = new DoubleDouble[count, count];
        projections = new DoubleDouble[count];
        double whole = Dot(rest, rest).High;
        double[] lengths = Array.ConvertAll(columns, column => Dot(column, column).High);
        for (int k = 0; k < count && DependentColumn is null; k++)
        {
            DoubleDouble length = DoubleDouble.Sqrt(Dot(columns[k], columns[k]));
            if (length.High <= dependent * Math.Sqrt(lengths[k]))
            {
                DependentColumn = k;
                return;
            }

            upper[k, k] = length;
            Scale(columns[k], length);
            for (int j = k + 1; j < count; j++)
            {
                upper[k, j] = TakeOut(columns[k], columns[j]);
            }

            projections[k] = TakeOut(columns[k], rest);
        }

        double left = Dot(rest, rest).High;
        ResidualSquares = left <= Exact * Exact * whole ? 0 : left;
    }

    public int Count => projections.Length;

    public int Rows { get; }

    /// <summary>The first column that depends on those before it, counted from 0, or null where none does.</summary>
    public int? DependentColumn { get; }

    public double ResidualSquares { get; }

    /// <summary>The part of the sum of squares of y that column k added to those before it.</summary>
    public DoubleDouble SquareOf(int k) => projections[k] * projections[k];

    public double[] Solve()
    {
        var solution = new DoubleDouble[Count];
        for (int k = Count - 1; k >= 0; k--)
        {
            DoubleDouble sum = projections[k];
            for (int j = k + 1; j < Count; j++)
            {
                sum -= upper[k, j] * solution[j];
            }

            solution[k] = sum / upper[k, k];
        }

        return Array.ConvertAll(solution, value => value.High);
    }

    /// <summary>(AᵀA)⁻¹, that is R⁻¹R⁻ᵀ.</summary>
    public double[,] InverseOfNormal()
    {
        DoubleDouble[,] inverse = InverseOfUpper();
        var normal = new double[Count, Count];
        for (int i = 0; i < Count; i++)
        {
            for (int j = 0; j < Count; j++)
            {
                DoubleDouble sum = 0;
                for (int k = Math.Max(i, j); k < Count; k++)
                {
                    sum += inverse[i, k] * inverse[j, k];
                }

                normal[i, j] = sum.High;
            }
        }

        return normal;
    }

    private DoubleDouble[,] InverseOfUpper()
    {
        var inverse = new DoubleDouble[Count, Count];
        for (int j = 0; j < Count; j++)
        {
            inverse[j, j] = 1 / upper[j, j];
            for (int i = j - 1; i >= 0; i--)
            {
                DoubleDouble sum = 0;
                for (int k = i + 1; k <= j; k++)
                {
                    sum -= upper[i, k] * inverse[k, j];
                }

                inverse[i, j] = sum / upper[i, i];
            }
        }

        return inverse;
    }

    private static DoubleDouble Dot(DoubleDouble[] left, DoubleDouble[] right)
    {
        DoubleDouble sum = 0;
        for (int i = 0; i < left.Length; i++)
        {
            sum += left[i] * right[i];
        }

        return sum;
    }

    private static void Scale(DoubleDouble[] column, DoubleDouble length)
    {
        for (int i = 0; i < column.Length; i++)
        {
            column[i] /= length;
        }
    }

    private static DoubleDouble TakeOut(DoubleDouble[] unit, DoubleDouble[] from)
    {
        DoubleDouble share = Dot(unit, from);
        for (int i = 0; i < from.Length; i++)
        {
            from[i] -= share * unit[i];
        }

        return share;
    }
}
