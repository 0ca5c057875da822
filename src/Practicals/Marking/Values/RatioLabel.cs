namespace Calx.Practicals.Marking.Values;

/// <summary>Whether a ratio is written the other way round than asked for, and says so: <c>O : Mg = 0.89</c> where Mg : O was asked.</summary>
internal static class RatioLabel
{
    /// <summary>Whether what stands before the equals sign names the two sides of the label in the other order.</summary>
    public static bool IsOtherWay(string label, string said)
    {
        if (Sides(label) is not (string left, string right) || Sides(said) is not (string first, string second))
        {
            return false;
        }

        return string.Equals(first, right, StringComparison.Ordinal) && string.Equals(second, left, StringComparison.Ordinal);
    }

    /// <summary>The words on both sides of a colon: the last before it and the first behind.</summary>
    private static (string Left, string Right)? Sides(string text)
    {
        int colon = text.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
        {
            return null;
        }

        string[] before = text[..colon].Split(' ', StringSplitOptions.RemoveEmptyEntries), behind = text[(colon + 1)..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return before.Length == 0 || behind.Length == 0 ? null : (before[^1], behind[0]);
    }
}
