namespace Calx.Practicals.Readings;

/// <summary>Whether two words are the same but for a slip of the keyboard.</summary>
internal static class Spelling
{
    /// <summary>Whether two sets of words pair off, each pair the same or a slip apart.</summary>
    public static bool PairOff(string[] a, string[] b)
    {
        if (a.Length != b.Length || a.Length == 0)
            return false;
        List<string> left = [.. b];
        foreach (string word in a)
        {
            int at = left.IndexOf(word);
            if (at < 0)
                at = left.FindIndex(other => IsSlip(word, other));
            if (at < 0)
                return false;
            left.RemoveAt(at);
        }
        return true;
    }

    // One slip from four letters on, two from eight: a shorter word with a slip is another word (Mg, MgO).
    private static bool IsSlip(string a, string b)
    {
        int longer = Math.Max(a.Length, b.Length);
        int allowed = longer >= 8 ? 2 : longer >= 4 ? 1 : 0;
        return longer <= 40 && Math.Abs(a.Length - b.Length) <= allowed && Distance(a, b) <= allowed;
    }

    // Letters put in, left out, changed, or two neighbours swapped (restricted edit distance).
    private static int Distance(string a, string b)
    {
        int[,] d = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (int j = 0; j <= b.Length; j++)
            d[0, j] = j;
        for (int i = 1; i <= a.Length; i++)
        {
            for (int j = 1; j <= b.Length; j++)
            {
                int change = d[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                d[i, j] = Math.Min(change, 1 + Math.Min(d[i - 1, j], d[i, j - 1]));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], 1 + d[i - 2, j - 2]);
            }
        }
        return d[a.Length, b.Length];
    }
}
