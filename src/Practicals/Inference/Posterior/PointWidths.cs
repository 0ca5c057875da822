namespace Calx.Practicals.Inference.Posterior;

/// <summary>
/// Each point stands for its surroundings: with a fine balance its neighbours are further off than the readings scatter, and
/// a reading would fall between them. So a point is as wide as the way to its nearest neighbours of the same set of faults,
/// weighing by weighing; beside the scatter of a coarse balance that is nothing.
/// </summary>
internal static class PointWidths
{
    private const int Neighbours = 3;

    /// <summary>Half the mean square way to the nearest neighbours, in the square of each reading's unit: point by point, reading by
    /// reading. Ways are told apart by <paramref name="scales"/>, 1 for a mass in g.</summary>
    public static void Fill(
        double[] widths, IReadOnlyList<HiddenBlock> blocks, double[] intercepts, double[] slopes, double[] amounts, double[] scales)
    {
        double[] masses = [.. intercepts];
        for (int i = 0; i < masses.Length; i++)
        {
            for (int a = 0; a < amounts.Length; a++)
            {
                masses[i] += slopes[(i * amounts.Length) + a] * amounts[a];
            }
        }

        Parallel.ForEach(blocks, block => OfBlock(block, masses, widths, scales));
    }

    private static void OfBlock(HiddenBlock block, double[] masses, double[] widths, double[] scales)
    {
        int n = scales.Length;
        var ordered = new OrderedPoints(block, masses, scales);
        Span<double> ways = stackalloc double[Neighbours];
        Span<int> nearest = stackalloc int[Neighbours];
        for (int place = 0; place < block.Count; place++)
        {
            int point = ordered.PointAt(place);
            ways.Fill(double.PositiveInfinity);
            nearest.Fill(point);
            // Outwards from the point; a side is done with where it is farther along one reading alone than the nearest are in all.
            int before = place - 1;
            int behind = place + 1;
            while (true)
            {
                double left = before >= 0 ? ordered.Along(place, before) : double.PositiveInfinity;
                double right = behind < block.Count ? ordered.Along(place, behind) : double.PositiveInfinity;
                if (Math.Min(left, right) >= ways[Neighbours - 1])
                {
                    break;
                }

                int other = left <= right ? before-- : behind++;
                Note(ordered.PointAt(other), ordered.SquareWay(place, other), ways, nearest);
            }

            foreach (int other in nearest)
            {
                for (int i = 0; i < n; i++)
                {
                    double away = masses[(point * n) + i] - masses[(other * n) + i];
                    widths[(point * n) + i] += away * away / (2 * Neighbours);
                }
            }
        }
    }

    /// <summary>Puts a point among the nearest, the farthest of them falling out.</summary>
    private static void Note(int other, double way, Span<double> ways, Span<int> nearest)
    {
        for (int k = ways.Length - 1; k >= 0 && way < ways[k]; k--)
        {
            if (k + 1 < ways.Length)
            {
                ways[k + 1] = ways[k];
                nearest[k + 1] = nearest[k];
            }

            ways[k] = way;
            nearest[k] = other;
        }
    }
}
