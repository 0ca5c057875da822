using System.Security.Cryptography;

namespace Calx.Records.Lessons;

/// <summary>Codes for doors: without vowels, so that no word comes out, and without letters that are taken for others when they are
/// read off a projector or said aloud (I, L, O, Q, U, V, Y).</summary>
internal static class DoorCode
{
    public const int Letters = 6;

    public const int StationLetters = 8;

    private const string Alphabet = "BCDFGHJKMNPRSTWXZ";

    public static string Draw(int letters) => RandomNumberGenerator.GetString(Alphabet, letters);

    /// <summary>As it was drawn: people type small letters, blanks and hyphens.</summary>
    public static string Typed(string text) => string.Concat(text.Where(char.IsAsciiLetter)).ToUpperInvariant();
}
