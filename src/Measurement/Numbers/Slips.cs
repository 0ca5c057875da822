namespace Calx.Measurement.Numbers;

/// <summary>How far a mistyped word is from a known one: for the suggestion behind a fault.</summary>
public static class Slips
{
    /// <summary>Longer words are no slip of a key, and comparing them would cost their length squared.</summary>
    public const int LongestWord = 40;

    /// <summary>
    /// Letters to put in, leave out, change, or swap with their neighbour to turn one word into the other (restricted
    /// edit distance); capitals count as their small letters.
    /// </summary>
    /// <returns>0 for equal words; <see cref="int.MaxValue"/> where either is longer than <see cref="LongestWord"/>.</returns>
    public static int Between(string from, string to)
    {
        ArgumentNullException.ThrowIfNull(from);
        ArgumentNullException.ThrowIfNull(to);
        if (from.Length > LongestWord || to.Length > LongestWord)
        {
            return int.MaxValue;
        }

        int[,] cost = new int[from.Length + 1, to.Length + 1];
        for (int i = 0; i <= from.Length; i++)
        {
            for (int j = 0; j <= to.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0 ? i + j : Step(from, to, cost, i, j);
            }
        }

        return cost[from.Length, to.Length];
    }

    /// <summary>The nearest known word, the first of equals, or null where none is near: at most a third of the letters
    /// may be wrong.</summary>
    public static string? Nearest(string word, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(word);
        ArgumentNullException.ThrowIfNull(known);
        string? nearest = null;
        int least = (word.Length / 3) + 1;
        foreach (string candidate in known.Where(c => Math.Abs(c.Length - word.Length) < least))
        {
            int slips = Between(word, candidate);
            if (slips < least)
            {
                (nearest, least) = (candidate, slips);
            }
        }

        return nearest;
    }

    private static int Step(string from, string to, int[,] cost, int i, int j)
    {
        int change = cost[i - 1, j - 1] + (Same(from[i - 1], to[j - 1]) ? 0 : 1);
        int best = Math.Min(change, Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1);
        bool swapped = i > 1 && j > 1 && Same(from[i - 1], to[j - 2]) && Same(from[i - 2], to[j - 1]);
        return swapped ? Math.Min(best, cost[i - 2, j - 2] + 1) : best;
    }

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
