using Calx.Measurement.Numbers;

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
        return Math.Abs(a.Length - b.Length) <= allowed && Slips.Between(a, b) <= allowed;
    }
}
