namespace Calx.Papers.Charts;

/// <summary>Labels that stand like flags on poles: each starts at its pole and runs to the right. Those further left stand
/// higher, so that no pole goes through another's text.</summary>
internal static class Flags
{
    /// <summary>From one level to the next.</summary>
    public const double LevelHeight = 17;

    /// <summary>From a pole to its text.</summary>
    public const double Beside = 4;

    /// <summary>Free space behind a text, also where another font than that of charts is a little wider.</summary>
    private const double Behind = 18;

    /// <summary>On which level each stands, 0 nearest to what it names.</summary>
    /// <param name="poles">Where the poles stand, rising.</param>
    /// <param name="widths">Widths of the texts.</param>
    public static int[] Levels(IReadOnlyList<double> poles, IReadOnlyList<double> widths)
    {
        int[] levels = new int[poles.Count];
        for (int i = poles.Count - 1; i >= 0; i--)
        {
            double end = poles[i] + Beside + widths[i] + Behind;
            for (int j = i + 1; j < poles.Count && poles[j] <= end; j++)
            {
                levels[i] = Math.Max(levels[i], levels[j] + 1);
            }
        }

        return levels;
    }
}
