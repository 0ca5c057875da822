namespace Calx.Practicals.Inference;

/// <summary>
/// The row space of a matrix whose rows say how each reading is made of the unknown masses. A quantity can be found
/// from the readings exactly when its gradient is a combination of these rows.
/// </summary>
/// <remarks>
/// Rows are small whole numbers (a part is on the pan or it is not), so Gaussian elimination with full pivoting stays
/// exact or nearly so; <see cref="Tolerance"/> separates rounding from a true remainder. A few dozen rows at most.
/// </remarks>
internal sealed class RowSpace
{
    /// <summary>A remainder below this share of the row's largest entry is rounding: entries are of order 1.</summary>
    private const double Tolerance = 1e-9;

    private readonly List<double[]> reduced = [];      // independent rows, each 1 at its pivot and 0 at the others'
    private readonly List<double[]> origins = [];      // how each reduced row is combined from the rows added
    private readonly List<int> pivots = [];
    private readonly int width;

    /// <summary>An empty space over <paramref name="width"/> unknowns.</summary>
    public RowSpace(int width) => this.width = width;

    /// <summary>How many rows were added and kept.</summary>
    public int Rank => reduced.Count;

    /// <summary>Adds a row unless the rows already there determine it.</summary>
    /// <returns>Whether it was added: false means that it brings nothing new.</returns>
    public bool TryAdd(ReadOnlySpan<double> row)
    {
        double[] rest = row.ToArray();
        double[] origin = new double[Rank + 1];
        origin[Rank] = 1;
        Eliminate(rest, origin, sign: -1);
        int pivot = LargestEntry(rest);
        if (Math.Abs(rest[pivot]) <= Tolerance)
        {
            return false;
        }

        double factor = 1 / rest[pivot];
        Scale(rest, factor);
        Scale(origin, factor);
        for (int k = 0; k < Rank; k++)
        {
            double share = reduced[k][pivot];
            reduced[k] = Less(reduced[k], rest, share);
            origins[k] = Less(origins[k], origin, share);
        }

        reduced.Add(rest);
        origins.Add(origin);
        pivots.Add(pivot);
        return true;
    }

    /// <summary>
    /// The weights, one a row added and in that order, whose combination of the rows is <paramref name="target"/>.
    /// </summary>
    /// <returns>False where no combination of the rows gives it.</returns>
    public bool TryExpress(ReadOnlySpan<double> target, out double[] weights)
    {
        double[] rest = target.ToArray();
        weights = new double[Rank];
        Eliminate(rest, weights, sign: 1);
        double largest = Math.Max(1, Math.Abs(target[LargestEntry(target)]));
        return Math.Abs(rest[LargestEntry(rest)]) <= Tolerance * largest;
    }

    /// <summary>
    /// One point of the unknowns that gives the readings: unknowns that no reading fixes are 0. Entry [i] holds the
    /// weights of the readings in unknown i. Anything identifiable has the same value at every such point.
    /// </summary>
    public double[][] ParticularSolution()
    {
        double[][] solution = new double[width][];
        for (int unknown = 0; unknown < width; unknown++)
        {
            int row = pivots.IndexOf(unknown);
            solution[unknown] = row < 0 ? new double[Rank] : Padded(origins[row]);
        }

        return solution;
    }

    private void Eliminate(double[] rest, double[] weights, int sign)
    {
        for (int k = 0; k < Rank; k++)
        {
            double share = rest[pivots[k]];
            if (share == 0)
            {
                continue;
            }

            for (int j = 0; j < width; j++)
            {
                rest[j] -= share * reduced[k][j];
            }

            for (int j = 0; j < origins[k].Length; j++)
            {
                weights[j] += sign * share * origins[k][j];
            }
        }
    }

    private double[] Padded(double[] origin)
    {
        double[] padded = new double[Rank];
        origin.CopyTo(padded, 0);
        return padded;
    }

    private static double[] Less(double[] row, double[] other, double share)
    {
        double[] result = new double[Math.Max(row.Length, other.Length)];
        row.CopyTo(result, 0);
        for (int j = 0; j < other.Length; j++)
        {
            result[j] -= share * other[j];
        }

        return result;
    }

    private static void Scale(double[] row, double factor)
    {
        for (int j = 0; j < row.Length; j++)
        {
            row[j] *= factor;
        }
    }

    private static int LargestEntry(ReadOnlySpan<double> row)
    {
        int largest = 0;
        for (int j = 1; j < row.Length; j++)
        {
            largest = Math.Abs(row[j]) > Math.Abs(row[largest]) ? j : largest;
        }

        return largest;
    }
}
