namespace Calx.Papers.Charts;

/// <summary>Labels down the right side of a chart, moved apart so that none covers another.</summary>
internal static class LabelColumn
{
    /// <summary>The places nearest to the wanted ones with at least <paramref name="gap"/> between neighbours, all between
    /// <paramref name="top"/> and <paramref name="bottom"/> as far as they fit.</summary>
    public static double[] Spread(IReadOnlyList<double> wanted, double gap, double top, double bottom) =>
        Spread(wanted, [.. wanted.Select(_ => gap)], top - (gap / 2), bottom + (gap / 2));

    /// <summary>The same for labels of different heights, each placed by its middle; <paramref name="top"/> and
    /// <paramref name="bottom"/> are for their edges.</summary>
    public static double[] Spread(IReadOnlyList<double> wanted, IReadOnlyList<double> heights, double top, double bottom)
    {
        int[] order = [.. Enumerable.Range(0, wanted.Count).OrderBy(i => wanted[i]).ThenBy(i => i)];
        double[] placed = [.. order.Select(i => wanted[i])];
        for (int i = 0; i < placed.Length; i++)
        {
            placed[i] = Math.Max(placed[i], i == 0 ? top + (heights[order[0]] / 2) : placed[i - 1] + Apart(i - 1));
        }

        // What was pushed past the bottom is pushed back up.
        for (int i = placed.Length - 1; i >= 0; i--)
        {
            placed[i] = Math.Min(placed[i], i == placed.Length - 1 ? bottom - (heights[order[i]] / 2) : placed[i + 1] - Apart(i));
        }

        double[] result = new double[wanted.Count];
        for (int i = 0; i < order.Length; i++)
        {
            result[order[i]] = placed[i];
        }

        return result;

        double Apart(int i) => (heights[order[i]] + heights[order[i + 1]]) / 2;
    }
}
