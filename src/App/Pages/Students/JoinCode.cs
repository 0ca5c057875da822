namespace Calx.App.Pages.Students;

/// <summary>A code as somebody typed it from the board.</summary>
public static class JoinCode
{
    /// <summary>More than any code has, with blanks between all letters.</summary>
    private const int Longest = 40;

    /// <summary>Digits that are taken for letters on a projector. Codes have no digits, so nothing is lost by it.</summary>
    private static readonly Dictionary<char, char> LookAlikes = new() { ['8'] = 'B', ['5'] = 'S', ['2'] = 'Z', ['6'] = 'G' };

    /// <summary>In the letters in which codes are drawn: small letters, blanks, hyphens and look-alikes are forgiven.</summary>
    public static string Of(string typed) => string.Concat(
        typed.Take(Longest).Where(char.IsAsciiLetterOrDigit).Select(c => LookAlikes.GetValueOrDefault(c, char.ToUpperInvariant(c))));
}
