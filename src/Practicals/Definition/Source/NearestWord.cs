namespace Calx.Practicals.Definition.Source;

/// <summary>The known word that a mistyped one probably means.</summary>
internal static class NearestWord
{
    /// <summary>Longer words are no slip of a key, and comparing them would cost their length squared.</summary>
    private const int LongestWord = 40;

    private const int MostTold = 30;

    /// <summary>The words a person may choose from, the nearest one last as a suggestion.</summary>
    public static string Choice(string word, IEnumerable<string> known)
    {
        string[] all = [.. known];
        string? near = Of(word, all);
        string more = all.Length > MostTold ? ", ..." : "";
        string expected = all.Length == 0
            ? "there is none to choose from"
            : $"expected {string.Join(", ", all.Take(MostTold))}{more}";
        return near is null ? expected : $"{expected}; did you mean {near}?";
    }

    /// <summary>The nearest known word, or null where none is near: at most a third of the letters may be wrong.</summary>
    public static string? Of(string word, IEnumerable<string> known)
    {
        string? nearest = null;
        int least = word.Length / 3 + 1;
        foreach (string candidate in known.Where(_ => word.Length <= LongestWord))
        {
            int distance = Math.Abs(candidate.Length - word.Length) < least ? Distance(word, candidate) : int.MaxValue;
            if (distance < least)
            {
                (nearest, least) = (candidate, distance);
            }
        }

        return nearest;
    }

    /// <summary>Letters to put in, leave out, change or swap with their neighbour (restricted edit distance); capitals
    /// count as their small letters.</summary>
    private static int Distance(string from, string to)
    {
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

    private static int Step(string from, string to, int[,] cost, int i, int j)
    {
        int change = cost[i - 1, j - 1] + (Same(from[i - 1], to[j - 1]) ? 0 : 1);
        int best = Math.Min(change, Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1);
        bool swapped = i > 1 && j > 1 && Same(from[i - 1], to[j - 2]) && Same(from[i - 2], to[j - 1]);
        return swapped ? Math.Min(best, cost[i - 2, j - 2] + 1) : best;
    }

    private static bool Same(char a, char b) => char.ToLowerInvariant(a) == char.ToLowerInvariant(b);
}
