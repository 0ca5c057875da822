using System.Numerics;

namespace Calx.Chemistry.Equations;

/// <summary>
/// Whole-number solutions of A x = 0 by elimination without fractions: a row is replaced by a whole-number combination
/// of two, then divided by the common divisor of its entries where they have grown. One text serves 64-bit numbers, with
/// a limit that keeps every product within them, and numbers of any length.
/// </summary>
internal static class NullSpace
{
    // Two products of numbers below it add up to less than 2^62.
    private const long LargestEntry = 1L << 30;

    /// <summary>A basis in 64-bit numbers; null where the numbers outgrow them.</summary>
    public static long[][]? Basis(ReadOnlySpan<long> cells, int columns)
        => Solve(cells.ToArray(), columns, LargestEntry);

    /// <summary>A basis in numbers of any length.</summary>
    public static BigInteger[][] LargeBasis(ReadOnlySpan<long> cells, int columns)
    {
        var large = new BigInteger[cells.Length];
        for (int i = 0; i < large.Length; i++)
        {
            large[i] = cells[i];
        }

        return Solve(large, columns, null) ?? throw new InvalidOperationException("Numbers of any length outgrew themselves.");
    }

    /// <summary>The largest number that divides both, at least 0.</summary>
    public static T CommonDivisor<T>(T a, T b)
        where T : struct, IBinaryInteger<T>
    {
        a = T.Abs(a);
        b = T.Abs(b);
        while (!T.IsZero(b))
        {
            (a, b) = (b, a % b);
        }

        return a;
    }

    // Each vector of the basis has a positive entry at its own free column and 0 at the other free columns.
    private static T[][]? Solve<T>(T[] cells, int columns, T? largest)
        where T : struct, IBinaryInteger<T>
    {
        int[] pivotOf = new int[columns];
        int rank = Reduce(cells, columns, largest, pivotOf);
        if (rank < 0)
        {
            return null;
        }

        var basis = new T[columns - rank][];
        int next = 0;
        for (int column = 0; column < columns; column++)
        {
            if (pivotOf[column] < 0)
            {
                T[]? vector = Vector(cells, columns, largest, pivotOf, column);
                if (vector is null)
                {
                    return null;
                }

                basis[next++] = vector;
            }
        }

        return basis;
    }

    // Gauss-Jordan; pivotOf[column] becomes the row whose pivot stands there, or -1. The rank, or -1 if numbers outgrew.
    private static int Reduce<T>(T[] cells, int columns, T? largest, int[] pivotOf)
        where T : struct, IBinaryInteger<T>
    {
        int rows = cells.Length / columns;
        int rank = 0;
        for (int column = 0; column < columns; column++)
        {
            int pivot = SmallestIn(cells, columns, column, rank);
            pivotOf[column] = pivot < 0 ? -1 : rank;
            if (pivot < 0)
            {
                continue;
            }

            Swap(cells, columns, pivot, rank);
            ReadOnlySpan<T> pivotRow = cells.AsSpan(rank * columns, columns);
            for (int row = 0; row < rows; row++)
            {
                Span<T> target = cells.AsSpan(row * columns, columns);
                if (row != rank && !T.IsZero(target[column]) && !Eliminate(target, pivotRow, column, largest))
                {
                    return -1;
                }
            }

            rank++;
        }

        return rank;
    }

    private static int SmallestIn<T>(T[] cells, int columns, int column, int fromRow)
        where T : struct, IBinaryInteger<T>
    {
        int best = -1;
        T least = T.Zero;
        for (int row = fromRow; row < cells.Length / columns; row++)
        {
            T size = T.Abs(cells[(row * columns) + column]);
            if (!T.IsZero(size) && (best < 0 || size < least))
            {
                (best, least) = (row, size);
            }
        }

        return best;
    }

    private static void Swap<T>(T[] cells, int columns, int a, int b)
    {
        for (int column = 0; a != b && column < columns; column++)
        {
            (cells[(a * columns) + column], cells[(b * columns) + column])
                = (cells[(b * columns) + column], cells[(a * columns) + column]);
        }
    }

    private static bool Eliminate<T>(Span<T> target, ReadOnlySpan<T> pivotRow, int column, T? largest)
        where T : struct, IBinaryInteger<T>
    {
        T divisor = CommonDivisor(pivotRow[column], target[column]);
        T keep = pivotRow[column] / divisor;
        T take = target[column] / divisor;
        T size = T.Zero;
        for (int i = 0; i < target.Length; i++)
        {
            target[i] = (target[i] * keep) - (pivotRow[i] * take);
            size = T.Max(size, T.Abs(target[i]));
        }

        return largest is not { } limit
            ? Shorten(target, limit: null)
            : size <= T.CreateChecked(1024) || Shorten(target, limit);
    }

    private static bool Shorten<T>(Span<T> row, T? limit)
        where T : struct, IBinaryInteger<T>
    {
        T divisor = T.Zero;
        foreach (T entry in row)
        {
            divisor = CommonDivisor(divisor, entry);
        }

        bool fits = true;
        for (int i = 0; i < row.Length && !T.IsZero(divisor); i++)
        {
            row[i] /= divisor;
            fits &= limit is not { } largest || T.Abs(row[i]) <= largest;
        }

        return fits;
    }

    // x at the free column is the least common multiple of the denominators, so the entries have no common divisor.
    private static T[]? Vector<T>(T[] cells, int columns, T? largest, int[] pivotOf, int free)
        where T : struct, IBinaryInteger<T>
    {
        T multiple = T.One;
        for (int column = 0; column < columns; column++)
        {
            if (pivotOf[column] >= 0)
            {
                T pivot = T.Abs(cells[(pivotOf[column] * columns) + column]);
                T denominator = pivot / CommonDivisor(pivot, cells[(pivotOf[column] * columns) + free]);
                multiple *= denominator / CommonDivisor(multiple, denominator);
                if (multiple > largest)
                {
                    return null;
                }
            }
        }

        var vector = new T[columns];
        vector[free] = multiple;
        for (int column = 0; column < columns; column++)
        {
            if (pivotOf[column] >= 0)
            {
                int row = pivotOf[column] * columns;
                vector[column] = -(cells[row + free] * multiple / cells[row + column]);
            }
        }

        return vector;
    }
}
