using System.Globalization;
using System.Security.Cryptography;

namespace Calx.App.Serving;

/// <summary>
/// A teacher's passphrase as it is kept: PBKDF2 with HMAC-SHA-512 (RFC 8018, 5.2) and a salt of its own. The number of
/// rounds stands with the hash, so that it can grow without ending what was set before.
/// </summary>
public static class Passphrase
{
    /// <summary>Fewest characters: four common words, or what resists guessing at the rate that the gate allows.</summary>
    public const int Shortest = 10;

    /// <summary>Most characters: a longer one only costs time.</summary>
    public const int Longest = 200;

    private const string Kind = "pbkdf2-sha512";
    private const int Rounds = 400_000;
    private const int SaltBytes = 16;
    private const int HashBytes = 32;

    /// <summary>Why a passphrase is not taken, or null.</summary>
    public static string? Fault(string? passphrase) => passphrase switch
    {
        null or { Length: < Shortest } => $"At least {Shortest} characters are needed; a few words are easy to keep in mind.",
        { Length: > Longest } => $"At most {Longest} characters are taken.",
        _ when passphrase.Distinct().Count() < 5 => "Too few different characters: somebody will guess it.",
        _ => null,
    };

    /// <summary>What is kept of it.</summary>
    public static string Hash(string passphrase)
    {
        byte[] salt = RandomNumberGenerator.GetBytes(SaltBytes);
        return string.Create(
            CultureInfo.InvariantCulture, $"{Kind}${Rounds}${Convert.ToBase64String(salt)}${Convert.ToBase64String(Derive(passphrase, salt, Rounds, HashBytes))}");
    }

    /// <summary>Whether a passphrase is the one of which a hash was kept.</summary>
    public static bool Fits(string passphrase, string kept)
    {
        string[] parts = kept.Split('$');
        if (parts is not [Kind, _, _, _] || passphrase.Length > Longest || !int.TryParse(parts[1], CultureInfo.InvariantCulture, out int rounds))
        {
            return false;
        }

        byte[] expected = Convert.FromBase64String(parts[3]);
        return CryptographicOperations.FixedTimeEquals(Derive(passphrase, Convert.FromBase64String(parts[2]), rounds, expected.Length), expected);
    }

    private static byte[] Derive(string passphrase, byte[] salt, int rounds, int bytes) =>
        Rfc2898DeriveBytes.Pbkdf2(passphrase, salt, rounds, HashAlgorithmName.SHA512, bytes);
}
