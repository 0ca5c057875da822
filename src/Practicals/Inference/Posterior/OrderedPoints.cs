namespace Calx.Practicals.Inference.Posterior;

/// <summary>The points of a block in the order of the reading in which they differ most, so that the nearest of a point are
/// found beside it and not among all.</summary>
internal sealed class OrderedPoints
{
    private readonly int[] points;
    private readonly double[] along;
    private readonly double[] scaled;
    private readonly int n;

    /// <summary>Orders them.</summary>
    /// <param name="block">The block.</param>
    /// <param name="masses">Readings, point by point, of all blocks.</param>
    /// <param name="scales">What a difference in each reading counts.</param>
    public OrderedPoints(HiddenBlock block, double[] masses, double[] scales)
    {
        n = scales.Length;
        int widest = 0;
        double range = -1;
        for (int i = 0; i < n; i++)
        {
            double lowest = double.PositiveInfinity;
            double highest = double.NegativeInfinity;
            for (int point = block.First; point < block.First + block.Count; point++)
            {
                double value = scales[i] * masses[(point * n) + i];
                lowest = Math.Min(lowest, value);
                highest = Math.Max(highest, value);
            }

            if (highest - lowest > range)
            {
                (widest, range) = (i, highest - lowest);
            }
        }

        points = [.. Enumerable.Range(block.First, block.Count)];
        along = [.. points.Select(p => scales[widest] * masses[(p * n) + widest])];
        // Equal ones in the order of the points: a sort by itself may put them in any.
        Array.Sort(along.Zip(points).ToArray(), points);
        along = [.. points.Select(p => scales[widest] * masses[(p * n) + widest])];
        scaled = new double[points.Length * n];
        for (int place = 0; place < points.Length; place++)
        {
            for (int i = 0; i < n; i++)
            {
                scaled[(place * n) + i] = scales[i] * masses[(points[place] * n) + i];
            }
        }
    }

    /// <summary>The point at a place of the order.</summary>
    public int PointAt(int place) => points[place];

    /// <summary>Square of how far two places are apart in the one reading: never more than the whole way.</summary>
    public double Along(int place, int other)
    {
        double away = along[place] - along[other];
        return away * away;
    }

    /// <summary>Square of how far two places are apart.</summary>
    public double SquareWay(int place, int other)
    {
        double sum = 0;
        for (int i = 0; i < n; i++)
        {
            double away = scaled[(place * n) + i] - scaled[(other * n) + i];
            sum += away * away;
        }

        return sum;
    }
}
