using System.Globalization;
using System.Text;

namespace Calx.App.Output;

/// <summary>How many places of a terminal a text takes.</summary>
internal static class TextWidth
{
    /// <summary>Counts characters; combining marks take no place, East Asian wide ones are counted as one.</summary>
    public static int Of(string text)
    {
        int places = 0;
        foreach (Rune rune in text.EnumerateRunes())
        {
            places += Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark
                or UnicodeCategory.EnclosingMark or UnicodeCategory.Format ? 0 : 1;
        }

        return places;
    }
}
