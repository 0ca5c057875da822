using System.Globalization;

namespace Calx.Papers.Documents.Word;

/// <summary>Lengths as a word processor's file gives them.</summary>
internal static class WordLength
{
    /// <summary>Twentieths of a point of a length in mm.</summary>
    public static int Twips(double millimetres) => (int)Math.Round(millimetres * 1440 / 25.4);

    /// <summary>The same as text.</summary>
    public static string Text(double millimetres) => Twips(millimetres).ToString(CultureInfo.InvariantCulture);

    /// <summary>English metric units, as pictures have them, of a length in mm.</summary>
    public static long Emu(double millimetres) => (long)Math.Round(millimetres * 36000);
}
